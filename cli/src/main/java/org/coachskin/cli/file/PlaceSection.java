package org.coachskin.cli.file;

import java.util.List;
import java.util.Optional;
import org.coachskin.laminate.Patch;
import org.coachskin.units.Dimension;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;

/** Where on the panel something presses, as a tape measures it. */
final class PlaceSection {

    /** Places that have a name; beside an edge, a patch touches it. */
    static final List<String> PLACES =
            List.of(
                    "middle",
                    "softest place",
                    "left edge",
                    "right edge",
                    "front edge",
                    "rear edge");

    /** Places to each side among which one is looked for where a patch lies on the panel. */
    private static final int GRID = 24;

    static final List<String> TAPE = List.of("from left", "from front");

    private final Ground ground;
    private final double width;
    private final double length;

    PlaceSection(Ground ground) {
        this.ground = ground;
        this.width = ground.width();
        this.length = ground.length();
    }

    /**
     * The centre of a patch.
     *
     * @param x from the left edge [m]
     * @param y from the front edge [m]
     * @param softest whether the softest place is meant; the place is then any on the panel
     */
    record At(double x, double y, boolean softest) {}

    At middle() {
        return new At(width / 2, length / 2, false);
    }

    /**
     * Returns the centre of the patch called {@code name}; the middle where {@code at} is absent.
     */
    Optional<At> read(String name, Section keys, Patch patch) {
        Optional<Node> at = keys.node("at");
        if (at.isEmpty()) {
            return inside(name, keys, patch, middle());
        }
        if (at.get() instanceof MappingNode map) {
            Section tape = new Section(keys.findings(), map).allowing(TAPE);
            Numbers n = new Numbers(tape);
            double x = n.or("from left", Dimension.LENGTH, -20, 20, width / 2);
            double y = n.or("from front", Dimension.LENGTH, -20, 20, length / 2);
            return n.complete() ? inside(name, keys, patch, new At(x, y, false)) : Optional.empty();
        }
        String word = keys.text("at").orElse("");
        if (word.equals("softest place")) {
            return somewhere(name, keys, patch);
        }
        At middle = middle();
        At named =
                switch (word) {
                    case "middle" -> middle;
                    case "left edge" -> new At(patch.halfX(), middle.y, false);
                    case "right edge" -> new At(width - patch.halfX(), middle.y, false);
                    case "front edge" -> new At(middle.x, patch.halfY(), false);
                    case "rear edge" -> new At(middle.x, length - patch.halfY(), false);
                    default -> new At(Double.NaN, Double.NaN, false);
                };
        if (Double.isNaN(named.x)) {
            keys.findings()
                    .add(
                            keys.keyNode("at"),
                            "\"" + word + "\" is no place.",
                            "Write one of: "
                                    + String.join(", ", PLACES)
                                    + ";   or   {from left: 300 mm, from front: 200 mm}");
            return Optional.empty();
        }
        return inside(name, keys, patch, named);
    }

    /** Returns a place from which the softest one can be looked for. */
    private Optional<At> somewhere(String name, Section keys, Patch patch) {
        At middle = middle();
        if (ground.missed(patch, middle.x, middle.y).isEmpty()) {
            return Optional.of(new At(middle.x, middle.y, true));
        }
        for (int i = 0; i <= GRID; i++) {
            for (int j = 0; j <= GRID; j++) {
                double x = patch.halfX() + (width - 2 * patch.halfX()) * i / GRID;
                double y = patch.halfY() + (length - 2 * patch.halfY()) * j / GRID;
                if (ground.missed(patch, x, y).isEmpty()) {
                    return Optional.of(new At(x, y, true));
                }
            }
        }
        keys.findings()
                .add(
                        keys.keyNode("at"),
                        "There is no room for the " + name + " anywhere on the panel.",
                        "Give it a smaller   patch:");
        return Optional.empty();
    }

    private Optional<At> inside(String name, Section keys, Patch patch, At at) {
        boolean within = true;
        for (Side side : Side.both(ground, patch.halfX(), patch.halfY(), at.x, at.y)) {
            if (side.past() > Ground.ROUNDING) {
                keys.findings()
                        .add(
                                keys.keyNode("at"),
                                side.what(name),
                                side.isTooLarge()
                                        ? "It is larger than the panel: give it a smaller patch."
                                        : side.fix() + ", or say   at: " + side.edge() + " edge");
                within = false;
            }
        }
        Optional<String> missed = within ? ground.missed(patch, at.x, at.y) : Optional.empty();
        missed.ifPresent(
                where ->
                        keys.findings()
                                .add(
                                        keys.keyNode("at"),
                                        "The " + name + " would press partly " + where + ".",
                                        "Say where it presses:   "
                                                + name
                                                + ": {at: {from left: ..., from front: ...}}"));
        return within && missed.isEmpty() ? Optional.of(at) : Optional.empty();
    }
}
