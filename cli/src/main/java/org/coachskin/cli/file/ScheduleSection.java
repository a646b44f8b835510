package org.coachskin.cli.file;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.coachskin.Source;
import org.coachskin.Standing;
import org.coachskin.laminate.Compatibility;
import org.coachskin.laminate.LayUp;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.Foam;
import org.coachskin.material.MaterialLibrary;
import org.coachskin.material.Resin;
import org.coachskin.material.Weave;
import org.coachskin.units.Dimension;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;

/** What is laid: foam, resin, way of working, seal coat, outside, inside. */
final class ScheduleSection {

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
        PlyList plies = new PlyList(findings, materials, assumptions);
        List<Schedule.Item> outside = plies.face(root, "outside");
        List<Schedule.Item> inside = plies.face(root, "inside");
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
}
