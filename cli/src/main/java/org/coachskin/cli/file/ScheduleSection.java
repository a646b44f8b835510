package org.coachskin.cli.file;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.coachskin.Source;
import org.coachskin.Standing;
import org.coachskin.laminate.Compatibility;
import org.coachskin.laminate.LayUp;
import org.coachskin.laminate.Ply;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.Cloth;
import org.coachskin.material.Foam;
import org.coachskin.material.MaterialLibrary;
import org.coachskin.material.Resin;
import org.coachskin.material.Weave;
import org.coachskin.units.Dimension;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** What is laid: foam, resin, way of working, seal coat, outside, inside. */
final class ScheduleSection {

    static final List<String> PLY = List.of("cloth", "ply", "angle");

    /** Plies in one line of a file. */
    private static final int MOST = 40;

    private static final Pattern COUNT = Pattern.compile("^(\\d+)\\s*[x\u00d7]\\s+(.*)$");

    private final Section root;
    private final Findings findings;
    private final MaterialSection materials;
    private final MaterialLibrary library;
    private final List<PanelFile.Assumption> assumptions;

    ScheduleSection(
            Section root, MaterialSection materials, List<PanelFile.Assumption> assumptions) {
        this.root = root;
        this.findings = root.findings();
        this.materials = materials;
        this.library = materials.library();
        this.assumptions = assumptions;
    }

    Optional<Schedule> read() {
        Optional<Resin> resin = resin();
        LayUp way = layUp();
        List<Schedule.Item> outside = plies("outside");
        List<Schedule.Item> inside = plies("inside");
        LayUp layUp = shares(way, outside, inside);
        Optional<Schedule.Board> board = root.has("foam") ? board() : Optional.empty();
        Schedule.SealCoatMass coat = sealCoat(root.has("foam"));
        if (outside.isEmpty() && inside.isEmpty() && findings.isEmpty()) {
            root.missing(
                    "Nothing is laid: outside and inside are both empty.",
                    "Write   outside:   and under it   - twill glass 300 g/m^2");
        }
        if (resin.isEmpty() || !findings.isEmpty() || (root.has("foam") && board.isEmpty())) {
            return Optional.empty();
        }
        if (!root.has("foam")) {
            List<Schedule.Item> all = new ArrayList<>(inside);
            Collections.reverse(all);
            all.addAll(outside);
            outside = all;
            inside = List.of();
        }
        Schedule.@Nullable Board foam = board.orElse(null);
        Schedule schedule =
                new Schedule(
                        outside,
                        inside,
                        foam,
                        resin.get(),
                        layUp,
                        coat,
                        root.flag("wet on wet", false));
        refuse(schedule);
        return Optional.of(schedule);
    }

    private void refuse(Schedule schedule) {
        Compatibility.of(schedule).stream()
                .filter(finding -> finding.severity() == Compatibility.Severity.REFUSED)
                .forEach(
                        finding ->
                                findings.add(
                                        root.keyNode("resin"),
                                        finding.reason(),
                                        "Write   resin: epoxy    or another foam:   kind: polyurethane"));
    }

    private Optional<Resin> resin() {
        if (!root.has("resin")) {
            root.missing("The resin is missing.", "Write   resin: epoxy");
            return Optional.empty();
        }
        Section keys = root;
        String key = "resin";
        if (root.node("resin").orElseThrow() instanceof MappingNode map) {
            keys = new Section(findings, map).allowing(List.of("name"), List.of("cured", "warmed"));
            key = "name";
            if (!keys.has("name")) {
                keys.missing("The resin's name is missing.", "Write   resin: epoxy");
            }
        }
        Optional<String> name = keys.text(key);
        Optional<Resin> resin = name.flatMap(library::resin);
        if (name.isPresent() && resin.isEmpty()) {
            findings.add(
                    keys.keyNode(key),
                    "No resin of that name is known.",
                    "Write   "
                            + key
                            + ": "
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
        }
        Numbers n = new Numbers(root);
        double share = n.or("glass share", Dimension.SHARE, 0.2, 0.75, layUp.glassShare());
        double voids = n.or("voids", Dimension.SHARE, 0, 0.15, layUp.voids());
        if (!n.complete() || !(root.has("glass share") || root.has("voids"))) {
            return layUp;
        }
        LayUp own = layUp.withGlassShare(share);
        return new LayUp(
                own.name(),
                share,
                own.matShare(),
                own.spread(),
                voids,
                new Source("your coupon", "", Standing.MEASURED));
    }

    /**
     * Notes which glass shares of the cloth and mat that are laid nobody gave; a share given for
     * skins of mat alone is that of mat.
     */
    private LayUp shares(LayUp layUp, List<Schedule.Item> outside, List<Schedule.Item> inside) {
        List<Boolean> mats =
                Stream.concat(outside.stream(), inside.stream())
                        .filter(Schedule.Wet.class::isInstance)
                        .map(item -> ((Schedule.Wet) item).cloth().weave() == Weave.MAT)
                        .toList();
        boolean given = root.has("glass share");
        if (given && !mats.isEmpty() && !mats.contains(false)) {
            return new LayUp(
                    layUp.name(),
                    layUp.glassShare(),
                    layUp.glassShare(),
                    layUp.spread(),
                    layUp.voids(),
                    layUp.source());
        }
        List<String> words = new ArrayList<>();
        if (mats.contains(false) && !given && !root.has("method")) {
            words.add(
                    "glass is "
                            + percent(layUp.glassShare())
                            + " of the weight of wetted cloth ("
                            + layUp.name()
                            + ")");
        }
        if (mats.contains(true)) {
            words.add("glass is " + percent(layUp.matShare()) + " of the weight of wetted mat");
        }
        if (!words.isEmpty()) {
            assumptions.add(new PanelFile.Assumption("method", String.join(", ", words)));
        }
        return layUp;
    }

    private static String percent(double share) {
        return Math.round(100 * share) + " %";
    }

    private Optional<Schedule.Board> board() {
        List<String> known = new ArrayList<>(FoamSection.KEYS);
        known.add("thickness");
        Optional<Section> keys = root.map("foam").map(section -> section.allowing(known));
        if (keys.isEmpty()) {
            return Optional.empty();
        }
        Optional<Foam> foam = materials.foams().read(keys.get());
        Numbers n = new Numbers(keys.get());
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
                                "seal coat 300 g/m^2 on each face that is glassed [common practice, no source: weigh a scrap]"));
            }
            return usual;
        }
        Node node = root.node("seal coat").orElseThrow();
        if (node instanceof MappingNode) {
            Section keys =
                    root.map("seal coat")
                            .orElseThrow()
                            .allowing(List.of("outside", "inside"), List.of());
            Numbers n = new Numbers(keys);
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
        for (String key : List.of(face, face + " add")) {
            if (root.node(key).filter(ScheduleSection::isBareFace).isPresent()) {
                continue;
            }
            if (root.has(key) && root.list(key).stream().allMatch(Yaml::isNothing)) {
                findings.add(
                        root.keyNode(key),
                        "The skin is empty.",
                        "Write   " + key + ": [twill glass 300 g/m^2]   or   " + key + ": none");
                continue;
            }
            root.list(key).forEach(node -> items.addAll(items(node, key)));
        }
        return items;
    }

    private static boolean isBareFace(Node node) {
        return node instanceof ScalarNode scalar && scalar.getValue().strip().equals("none");
    }

    private List<Schedule.Item> items(Node node, String face) {
        double angle = 0;
        Node name = node;
        if (node instanceof MappingNode map) {
            Section keys = new Section(findings, map).allowing(PLY);
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
            count = counted.group(1).length() > 3 ? MOST + 1 : Integer.parseInt(counted.group(1));
            name = counted.group(2);
            if (count < 1 || count > MOST) {
                findings.add(
                        node,
                        "From 1 to " + MOST + " plies can be laid by hand.",
                        "Write   2 x " + name);
                return List.of();
            }
        }
        Optional<Ply> ply = materials.ply(name);
        if (ply.isPresent()) {
            return Collections.nCopies(count, new Schedule.Given(ply.get(), angle));
        }
        Optional<Cloth> cloth = cloth(name);
        if (cloth.isEmpty()) {
            findings.add(
                    node,
                    "No cloth of that name is known.",
                    "Write   "
                            + SoldCloth.nearest(library, name)
                            + (SoldCloth.of(name).filter(SoldCloth::isMatByTheYard).isPresent()
                                    ? "\nMat is sold by the square foot: is   oz/ft^2   meant?"
                                    : "")
                            + "\nOr give your own under  my cloths.  List:  coachskin materials cloth");
            return List.of();
        }
        return Collections.nCopies(count, new Schedule.Wet(cloth.get(), angle));
    }

    /** Returns the cloth of that name, or one whose name says the same, and notes that. */
    private Optional<Cloth> cloth(String name) {
        Optional<Cloth> named = library.cloth(name);
        if (named.isPresent()) {
            return named;
        }
        Optional<Cloth> cloth = SoldCloth.of(name).flatMap(sold -> sold.in(library));
        cloth.ifPresent(
                each ->
                        assumptions.add(
                                new PanelFile.Assumption(
                                        "cloth", "\"" + name + "\" is " + each.name())));
        return cloth;
    }
}
