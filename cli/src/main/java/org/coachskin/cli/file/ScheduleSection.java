package org.coachskin.cli.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.coachskin.Source;
import org.coachskin.Standing;
import org.coachskin.laminate.LayUp;
import org.coachskin.laminate.Ply;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.Cloth;
import org.coachskin.material.Foam;
import org.coachskin.material.MaterialLibrary;
import org.coachskin.material.Resin;
import org.coachskin.units.Dimension;
import org.coachskin.units.Unit;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;

/** What is laid: foam, resin, way of working, seal coat, outside, inside. */
final class ScheduleSection {

    private static final List<String> FOAM =
            List.of(
                    "kind",
                    "density",
                    "thickness",
                    "E in plane",
                    "E through the thickness",
                    "G",
                    "nu",
                    "shear strength",
                    "crush strength",
                    "tensile strength");

    private static final Pattern COUNT = Pattern.compile("^(\\d+)\\s*[x\u00d7]\\s+(.*)$");

    private static final Pattern MASS =
            Pattern.compile("([\\d.]+)\\s*(gsm|g/m2|g/m\u00b2|oz/yd2|oz)\\s*$");

    private final Section root;
    private final Findings findings;
    private final MaterialLibrary library;
    private final MaterialSection materials;
    private final List<PanelFile.Assumption> assumptions;

    ScheduleSection(
            Section root,
            MaterialLibrary library,
            MaterialSection materials,
            List<PanelFile.Assumption> assumptions) {
        this.root = root;
        this.findings = root.findings();
        this.library = library;
        this.materials = materials;
        this.assumptions = assumptions;
    }

    Optional<Schedule> read() {
        Optional<Resin> resin = resin();
        LayUp layUp = layUp();
        List<Schedule.Item> outside = plies("outside");
        List<Schedule.Item> inside = plies("inside");
        Optional<Schedule.Board> board = root.has("foam") ? board() : Optional.empty();
        Schedule.SealCoatMass coat = sealCoat(root.has("foam"));
        if (outside.isEmpty() && inside.isEmpty() && findings.isEmpty()) {
            root.missing(
                    "outside",
                    "Nothing is laid: outside and inside are both empty.",
                    "Write   outside:   and under it   - twill glass 300 g/m^2");
        }
        if (resin.isEmpty() || !findings.isEmpty() || (root.has("foam") && board.isEmpty())) {
            return Optional.empty();
        }
        if (!root.has("foam")) {
            List<Schedule.Item> all = new ArrayList<>(inside);
            java.util.Collections.reverse(all);
            all.addAll(outside);
            outside = all;
            inside = List.of();
        }
        Schedule.@Nullable Board foam = board.orElse(null);
        refuseDissolving(resin.get(), foam);
        return Optional.of(
                new Schedule(
                        outside,
                        inside,
                        foam,
                        resin.get(),
                        layUp,
                        coat,
                        root.flag("wet on wet", false)));
    }

    private void refuseDissolving(Resin resin, Schedule.@Nullable Board board) {
        if (board == null || !resin.kind().styrene()) {
            return;
        }
        Foam.Kind kind = board.foam().kind();
        if (kind == Foam.Kind.XPS || kind == Foam.Kind.EPS) {
            findings.add(
                    root.keyNode("resin"),
                    "The styrene in wet "
                            + resin.name()
                            + " dissolves polystyrene foam, through any paint.",
                    "Write   resin: epoxy    or another foam:   kind: polyurethane");
        }
    }

    private Optional<Resin> resin() {
        if (!root.has("resin")) {
            root.missing("resin", "The resin is missing.", "Write   resin: epoxy");
            return Optional.empty();
        }
        Optional<String> name = root.text("resin");
        Optional<Resin> resin = name.flatMap(library::resin);
        if (name.isPresent() && resin.isEmpty()) {
            findings.add(
                    root.keyNode("resin"),
                    "No resin of that name is known.",
                    "Write   resin: "
                            + library.nearestResin(name.get())
                            + "\nOr give your own under  my resins.  List:  coachskin materials resin");
        }
        return resin;
    }

    private LayUp layUp() {
        LayUp layUp = LayUp.USUAL;
        Optional<String> name = root.text("method");
        if (name.isPresent()) {
            Optional<LayUp> known =
                    LayUp.KNOWN.stream()
                            .filter(way -> way.name().equalsIgnoreCase(name.get()))
                            .findFirst();
            if (known.isEmpty()) {
                List<String> names = LayUp.KNOWN.stream().map(LayUp::name).toList();
                findings.add(
                        root.keyNode("method"),
                        "No way of working is called that.",
                        "Write   method: "
                                + MaterialLibrary.nearest(name.get(), names)
                                + "   or one of: "
                                + String.join(", ", names));
            }
            layUp = known.orElse(layUp);
        } else if (!root.has("glass share")) {
            assumptions.add(
                    new PanelFile.Assumption(
                            "method", "half of each skin's weight is glass (brush and squeegee)"));
        }
        double share =
                new MaterialSection.Numbers(root)
                        .or("glass share", Dimension.SHARE, 0.2, 0.75, layUp.glassShare());
        double voids =
                new MaterialSection.Numbers(root)
                        .or("voids", Dimension.SHARE, 0, 0.15, layUp.voids());
        if (!root.has("glass share") && !root.has("voids")) {
            return layUp;
        }
        if (Double.isNaN(share) || Double.isNaN(voids)) {
            return layUp;
        }
        return new LayUp(
                layUp.name(),
                share,
                layUp.spread(),
                voids,
                new Source("your coupon", "", Standing.MEASURED));
    }

    private Optional<Schedule.Board> board() {
        Optional<Section> keys = root.map("foam").map(section -> section.allowing(FOAM, List.of()));
        if (keys.isEmpty()) {
            return Optional.empty();
        }
        Optional<Foam> foam = materials.foam(keys.get(), library);
        MaterialSection.Numbers n = new MaterialSection.Numbers(keys.get());
        double thickness = n.need("thickness", Dimension.LENGTH, 0.001, 0.15);
        return foam.isPresent() && n.complete()
                ? Optional.of(
                        new Schedule.Board(foam.get(), thickness, Schedule.Board.USUAL_SPREAD))
                : Optional.empty();
    }

    private Schedule.SealCoatMass sealCoat(boolean hasFoam) {
        Schedule.SealCoatMass usual = Schedule.SealCoatMass.USUAL;
        Source weighed = new Source("your scrap", "", Standing.MEASURED);
        if (!root.has("seal coat")) {
            if (hasFoam) {
                assumptions.add(
                        new PanelFile.Assumption(
                                "seal coat",
                                "seal coat 300 g/m^2 on each face [common practice, no source: weigh a scrap]"));
            }
            return usual;
        }
        Node node = root.node("seal coat").orElseThrow();
        if (node instanceof MappingNode) {
            Section keys =
                    root.map("seal coat")
                            .orElseThrow()
                            .allowing(List.of("outside", "inside"), List.of());
            MaterialSection.Numbers n = new MaterialSection.Numbers(keys);
            double outside = n.or("outside", Dimension.AREAL_MASS, 0, 2, usual.outside());
            double inside = n.or("inside", Dimension.AREAL_MASS, 0, 2, usual.inside());
            return n.complete() ? new Schedule.SealCoatMass(outside, inside, 0.3, weighed) : usual;
        }
        double both =
                root.quantity("seal coat", Dimension.AREAL_MASS, 0, 2).orElse(usual.outside());
        return new Schedule.SealCoatMass(both, both, 0.3, weighed);
    }

    /** Plies of one face, with those that a variant adds. */
    private List<Schedule.Item> plies(String face) {
        List<Schedule.Item> items = new ArrayList<>();
        for (Node node : root.list(face)) {
            items.addAll(items(node, face));
        }
        for (Node node : root.list(face + " add")) {
            items.addAll(items(node, face));
        }
        return items;
    }

    private List<Schedule.Item> items(Node node, String face) {
        double angle = 0;
        Node name = node;
        if (node instanceof MappingNode map) {
            Section keys =
                    new Section(findings, map)
                            .allowing(List.of("cloth", "ply", "angle"), List.of());
            Optional<Node> given = keys.node("cloth").or(() -> keys.node("ply"));
            if (given.isEmpty()) {
                findings.add(
                        node,
                        "The cloth of this ply is missing.",
                        "Write   {cloth: twill glass 300 g/m^2, angle: 45 deg}");
                return List.of();
            }
            name = given.get();
            angle = keys.quantity("angle", Dimension.ANGLE, -2 * Math.PI, 2 * Math.PI).orElse(0);
        }
        Optional<String> text = root.scalar(name, face);
        return text.isEmpty() ? List.of() : items(name, text.get(), angle);
    }

    private List<Schedule.Item> items(Node node, String text, double angle) {
        Matcher counted = COUNT.matcher(text);
        int count = 1;
        String name = text;
        if (counted.matches()) {
            count =
                    Integer.parseInt(
                            counted.group(1).substring(0, Math.min(3, counted.group(1).length())));
            name = counted.group(2);
            if (count < 1 || count > 40) {
                findings.add(node, "So many plies are not laid by hand.", "Write   2 x " + name);
                return List.of();
            }
        }
        Optional<Ply> ply = materials.ply(root, name);
        if (ply.isPresent()) {
            return java.util.Collections.nCopies(count, new Schedule.Given(ply.get(), angle));
        }
        Optional<Cloth> cloth = library.cloth(name);
        if (cloth.isEmpty()) {
            cloth = library.cloth(inFull(name));
        }
        if (cloth.isEmpty()) {
            findings.add(
                    node,
                    "No cloth of that name is known.",
                    "Write   "
                            + library.nearestCloth(inFull(name))
                            + "\nOr give your own under  my cloths.  List:  coachskin materials cloth");
            return List.of();
        }
        return java.util.Collections.nCopies(count, new Schedule.Wet(cloth.get(), angle));
    }

    /** A name with its mass in g/m^2: 10 oz is 339 g/m^2, 300 gsm is 300 g/m^2. */
    private static String inFull(String name) {
        Matcher mass = MASS.matcher(name);
        if (!mass.find()) {
            return name;
        }
        String symbol = mass.group(2).equals("oz") ? "oz/yd^2" : mass.group(2);
        double grams =
                Unit.of(Dimension.AREAL_MASS, symbol)
                                .orElseThrow()
                                .toSi(Double.parseDouble(mass.group(1)))
                        * 1000;
        return name.substring(0, mass.start()) + Math.round(grams) + " g/m^2";
    }
}
