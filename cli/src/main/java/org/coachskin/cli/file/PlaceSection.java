package org.coachskin.cli.file;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.coachskin.laminate.Patch;
import org.coachskin.units.Dimension;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;

/** Where on the panel something presses, as a tape measures it. */
final class PlaceSection {

    /** Places that have a name; beside an edge, a patch touches it. */
    static final List<String> PLACES =
            List.of("middle", "left edge", "right edge", "front edge", "rear edge");

    static final List<String> TAPE = List.of("from left", "from front");

    /** A patch may reach over the rim by no more than rounding [m]. */
    private static final double ROUNDING = 1e-9;

    private final double width;
    private final double length;

    PlaceSection(double width, double length) {
        this.width = width;
        this.length = length;
    }

    /**
     * The centre of a patch.
     *
     * @param x from the left edge [m]
     * @param y from the front edge [m]
     */
    record At(double x, double y) {}

    At middle() {
        return new At(width / 2, length / 2);
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
            return n.complete() ? inside(name, keys, patch, new At(x, y)) : Optional.empty();
        }
        String word = keys.text("at").orElse("");
        if (word.equals("softest place")) {
            keys.findings()
                    .addLater(
                            keys.keyNode("at"),
                            "The softest place cannot be searched for yet.",
                            "Write   at: middle   which is the softest place of a panel carried all round.");
            return Optional.empty();
        }
        At middle = middle();
        At named =
                switch (word) {
                    case "middle" -> middle;
                    case "left edge" -> new At(patch.halfX(), middle.y);
                    case "right edge" -> new At(width - patch.halfX(), middle.y);
                    case "front edge" -> new At(middle.x, patch.halfY());
                    case "rear edge" -> new At(middle.x, length - patch.halfY());
                    default -> new At(Double.NaN, Double.NaN);
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

    private Optional<At> inside(String name, Section keys, Patch patch, At at) {
        Side across = new Side("left", "right", "wide", width, patch.halfX(), at.x);
        Side along = new Side("front", "rear", "long", length, patch.halfY(), at.y);
        boolean within = true;
        for (Side side : List.of(across, along)) {
            if (side.past() > ROUNDING) {
                keys.findings().add(keys.keyNode("at"), side.what(name), side.fix());
                within = false;
            }
        }
        return within ? Optional.of(at) : Optional.empty();
    }

    /**
     * A patch against the two edges of one direction.
     *
     * @param low name of the edge that the tape starts from
     * @param high name of the other edge
     * @param adjective what the direction is called
     * @param side of the panel [m]
     * @param half of the patch [m]
     * @param at centre of the patch [m]
     */
    private record Side(
            String low, String high, String adjective, double side, double half, double at) {

        boolean isHigh() {
            return at > side / 2;
        }

        /** How far the patch hangs over [m]. */
        double past() {
            return half + Math.abs(at - side / 2) - side / 2;
        }

        String what(String name) {
            return String.format(
                    Locale.ROOT,
                    "The %s is %s %s and would hang %s over the %s edge (the panel is %s %s).",
                    name,
                    mm(2 * half),
                    adjective,
                    mm(past()),
                    isHigh() ? high : low,
                    mm(side),
                    adjective);
        }

        String fix() {
            if (2 * half > side) {
                return "It is larger than the panel: give it a smaller patch.";
            }
            return String.format(
                    Locale.ROOT,
                    "Write   from %s: %s   or %s, or say   at: %s edge",
                    low,
                    mm(isHigh() ? side - half : half),
                    isHigh() ? "less" : "more",
                    isHigh() ? high : low);
        }

        private static String mm(double length) {
            return Math.round(1000 * length) + " mm";
        }
    }
}
