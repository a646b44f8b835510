package org.coachskin.cli.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.coachskin.check.Job;
import org.coachskin.check.Limits;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.MaterialLibrary;
import org.coachskin.panel.Crown;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Support;
import org.coachskin.panel.TurnedEdge;
import org.coachskin.panel.ZoneRecipe;
import org.coachskin.units.Dimension;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;

/** The whole file to jobs. */
final class PanelReader {

    /** What a variant may change; each key of the file but the names of things. */
    private static final List<String> PANEL =
            List.of(
                    "width",
                    "length",
                    "corner radius",
                    "outline",
                    "crown",
                    "foam",
                    "resin",
                    "method",
                    "glass share",
                    "voids",
                    "seal coat",
                    "wet on wet",
                    "outside",
                    "inside",
                    "openings",
                    "zones",
                    "lip",
                    "turned",
                    "held",
                    "loads",
                    "limits",
                    "criterion");

    /** Keys of a variant. */
    static final List<String> VARIANT = join(PANEL, List.of("outside add", "inside add"));

    /** Keys of a file that this version works out. */
    static final List<String> KNOWN =
            join(
                    join(List.of("name"), PANEL),
                    join(List.of("variants", "materials"), MaterialSection.KEYS));

    /** Keys whose meaning is settled but that this version cannot work out: said, never ignored. */
    static final List<String> LATER = List.of("stages", "prices", "my tests");

    static final List<String> CROWN = List.of("across", "along", "radius across", "radius along");

    /** A crown steeper than this is no shallow shell: rise over side. */
    private static final double STEEPEST = 0.2;

    private final Findings findings;
    private final Section root;
    private final MaterialSection materials = new MaterialSection(MaterialLibrary.standard());

    PanelReader(Findings findings, MappingNode root) {
        this.findings = findings;
        this.root = new Section(findings, root).allowing(KNOWN, LATER);
    }

    private static List<String> join(List<String> first, List<String> then) {
        return Stream.concat(first.stream(), then.stream()).toList();
    }

    PanelFile read() {
        materials.add(root);
        String name = name();
        List<PanelFile.Assumption> assumptions = new ArrayList<>();
        Map<String, Job> jobs = new LinkedHashMap<>();
        job(root, name, assumptions).ifPresent(job -> jobs.put(PanelFile.AS_DRAWN, job));
        if (root.has("variants")) {
            root.map("variants")
                    .map(Section::entries)
                    .orElse(Map.of())
                    .forEach(
                            (variant, node) ->
                                    variant(variant, node, name)
                                            .ifPresent(job -> jobs.put(variant, job)));
        }
        findings.stopIfAny();
        return new PanelFile(name, materials.library(), jobs, assumptions, findings.text());
    }

    private String name() {
        return root.has("name") ? root.text("name").orElse("panel") : "panel";
    }

    PanelFile.Laid laid() {
        materials.add(root);
        String name = name();
        Optional<Schedule> schedule =
                new ScheduleSection(root, materials, new ArrayList<>()).read();
        List<PanelFile.Turned> turned = new TurnedSection(root, new ArrayList<>()).words();
        findings.stopIfAny();
        return new PanelFile.Laid(name, schedule.orElseThrow(), turned);
    }

    private Optional<Job> variant(String variant, Node node, String name) {
        if (variant.equals(PanelFile.AS_DRAWN)) {
            findings.add(
                    node,
                    "\"" + variant + "\" is the panel without any variant.",
                    "Give the variant another name.");
        }
        Optional<Section> section = root.asMap(node, variant);
        if (section.isEmpty()) {
            return Optional.empty();
        }
        Section over = section.get().allowing(VARIANT, LATER);
        Section merged = root.with(over);
        if (over.has("foam") && root.has("foam")) {
            // Only what differs stands in a variant, also inside the foam.
            merged = merged.withMap("foam", root);
        }
        return job(merged, name + ", " + variant, new ArrayList<>());
    }

    private Optional<Job> job(Section keys, String name, List<PanelFile.Assumption> granted) {
        Numbers n = new Numbers(keys);
        double width = n.need("width", Dimension.LENGTH, 0.05, 6);
        double length = n.need("length", Dimension.LENGTH, 0.05, 6);
        Crown crown = n.complete() ? crown(keys, width, length, granted) : Crown.FLAT;
        Optional<Schedule> schedule = new ScheduleSection(keys, materials, granted).read();
        if (!n.complete()) {
            // Without a size nothing can be placed; the rest is looked at all the same.
            HeldSection.look(keys);
            Ground roomy = Ground.rectangle(orRoomy(width), orRoomy(length));
            new LoadSection(keys, roomy, granted).read();
            new LimitSection(keys, granted).read();
            return Optional.empty();
        }
        Ground ground = new GroundSection(keys).read(width, length);
        Optional<Support> support = new HeldSection(keys, ground, granted).read();
        ZoneSection laid = new ZoneSection(keys, ground, materials, granted);
        List<ZoneRecipe> zones = laid.read();
        List<TurnedEdge> turned =
                new TurnedSection(keys, granted).read(ground.openings(), schedule);
        List<LoadCase> loads = new LoadSection(keys, ground, granted).read();
        Limits limits = new LimitSection(keys, granted).read();
        if (schedule.isEmpty() || support.isEmpty() || loads.isEmpty() || !findings.isEmpty()) {
            return Optional.empty();
        }
        Panel panel =
                new Panel(
                        name,
                        width,
                        length,
                        crown,
                        schedule.get().laminate(),
                        support.get(),
                        ground.outline(),
                        ground.openings(),
                        List.of(),
                        turned);
        Job job = Job.of(panel, schedule.get(), zones, loads, limits);
        laid.bevels().check(job.panel());
        return Optional.of(job);
    }

    /** Mistakes in the loads are told also where a side is wrong: no patch hangs over 40 m. */
    private static double orRoomy(double side) {
        return Double.isNaN(side) ? 40 : side;
    }

    private Crown crown(
            Section keys, double width, double length, List<PanelFile.Assumption> granted) {
        if (!keys.has("crown")) {
            granted.add(new PanelFile.Assumption("crown", "flat (a crown would stiffen it)"));
            return Crown.FLAT;
        }
        Optional<Section> section = keys.map("crown").map(part -> part.allowing(CROWN));
        if (section.isEmpty()) {
            return Crown.FLAT;
        }
        return new Crown(
                curvature(section.get(), "across", width),
                curvature(section.get(), "along", length));
    }

    /** Returns the curvature of one side [1/m]; 0 where it is wrong and noted. */
    private double curvature(Section keys, String side, double span) {
        String radiusKey = "radius " + side;
        if (keys.has(side) && keys.has(radiusKey)) {
            findings.add(
                    keys.keyNode(radiusKey),
                    "\"" + side + "\" and \"" + radiusKey + "\" say the same thing twice.",
                    "Keep one of the two.");
            return 0;
        }
        Numbers n = new Numbers(keys);
        double steepest = Crown.ofRise(STEEPEST * span, span, 0, span).across();
        double rise = n.or(side, Dimension.LENGTH, 0, 2, 0);
        double radius = n.or(radiusKey, Dimension.LENGTH, 0.05, 1000, Double.POSITIVE_INFINITY);
        if (!n.complete()) {
            return 0;
        }
        double curvature = keys.has(side) ? Crown.ofRise(rise, span, 0, span).across() : 1 / radius;
        if (rise > STEEPEST * span || curvature > steepest) {
            findings.add(
                    keys.keyNode(keys.has(side) ? side : radiusKey),
                    "The crown rises by more than a fifth of its side: no longer a shallow panel.",
                    "Divide the panel, or write   "
                            + (keys.has(side)
                                    ? side + ": " + Format.plain(STEEPEST * span, Dimension.LENGTH)
                                    : radiusKey
                                            + ": "
                                            + Format.plain(1 / steepest, Dimension.LENGTH))
                            + (keys.has(side) ? "   or less" : "   or more"));
            return 0;
        }
        return curvature;
    }
}
