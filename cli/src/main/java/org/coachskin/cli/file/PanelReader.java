package org.coachskin.cli.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coachskin.check.Job;
import org.coachskin.check.Limits;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.MaterialLibrary;
import org.coachskin.panel.Crown;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Support;
import org.coachskin.units.Dimension;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** The whole file to jobs. */
final class PanelReader {

    /** Keys that this version works out, in the order in which a file is usually written. */
    static final List<String> KNOWN =
            List.of(
                    "name",
                    "width",
                    "length",
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
                    "held",
                    "loads",
                    "limits",
                    "criterion",
                    "variants",
                    "my cloths",
                    "my resins",
                    "my fibres",
                    "my plies");

    /** Keys whose meaning is settled but that this version cannot work out: said, never ignored. */
    static final List<String> LATER =
            List.of(
                    "corner radius",
                    "outline",
                    "openings",
                    "zones",
                    "lip",
                    "stages",
                    "prices",
                    "my tests");

    /** What a variant may say beside the keys of the file. */
    private static final List<String> VARIANT = List.of("outside add", "inside add");

    private final Findings findings;
    private final Section root;
    private final List<PanelFile.Assumption> assumptions = new ArrayList<>();

    PanelReader(Findings findings, MappingNode root) {
        this.findings = findings;
        this.root = new Section(findings, root).allowing(KNOWN, LATER);
    }

    PanelFile read() {
        MaterialSection materials = new MaterialSection(findings);
        MaterialLibrary library = materials.library(root, MaterialLibrary.standard());
        String name = root.has("name") ? root.text("name").orElse("panel") : "panel";
        Map<String, Job> jobs = new LinkedHashMap<>();
        job(root, name, library, materials, assumptions)
                .ifPresent(job -> jobs.put(PanelFile.AS_DRAWN, job));
        if (root.has("variants")) {
            root.map("variants")
                    .ifPresent(
                            variants ->
                                    variants.entries()
                                            .forEach(
                                                    (variant, node) ->
                                                            variant(
                                                                            variant, node, name,
                                                                            library, materials)
                                                                    .ifPresent(
                                                                            job ->
                                                                                    jobs.put(
                                                                                            variant,
                                                                                            job))));
        }
        findings.stopIfAny();
        return new PanelFile(name, library, jobs, assumptions);
    }

    private Optional<Job> variant(
            String variant,
            Node node,
            String name,
            MaterialLibrary library,
            MaterialSection materials) {
        Optional<Section> section = root.asMap(node, variant);
        if (section.isEmpty()) {
            return Optional.empty();
        }
        List<String> known = new ArrayList<>(KNOWN);
        known.addAll(VARIANT);
        Section over = section.get().allowing(known, LATER);
        Section merged = root.with(over);
        if (over.has("foam") && root.has("foam")) {
            // Only what differs stands in a variant, also inside the foam.
            merged = merged.withMap("foam", root);
        }
        return job(merged, name + ", " + variant, library, materials, new ArrayList<>());
    }

    private Optional<Job> job(
            Section keys,
            String name,
            MaterialLibrary library,
            MaterialSection materials,
            List<PanelFile.Assumption> granted) {
        MaterialSection.Numbers n = new MaterialSection.Numbers(keys);
        double width = n.need("width", Dimension.LENGTH, 0.05, 6);
        double length = n.need("length", Dimension.LENGTH, 0.05, 6);
        Crown crown = n.complete() ? crown(keys, width, length, granted) : Crown.FLAT;
        held(keys);
        Optional<Schedule> schedule = new ScheduleSection(keys, library, materials, granted).read();
        List<LoadCase> loads =
                n.complete() ? new LoadSection(keys, width, length, granted).read() : List.of();
        Limits limits = new LimitSection(keys, granted).read();
        return schedule.isPresent() && findings.isEmpty() && !loads.isEmpty()
                ? Optional.of(
                        Job.of(
                                name,
                                width,
                                length,
                                crown,
                                new Support.WholeRim(),
                                schedule.get(),
                                loads,
                                limits))
                : Optional.empty();
    }

    private Crown crown(
            Section keys, double width, double length, List<PanelFile.Assumption> granted) {
        if (!keys.has("crown")) {
            granted.add(new PanelFile.Assumption("crown", "flat (a crown would stiffen it)"));
            return Crown.FLAT;
        }
        Optional<Section> section =
                keys.map("crown")
                        .map(
                                part ->
                                        part.allowing(
                                                List.of(
                                                        "across",
                                                        "along",
                                                        "radius across",
                                                        "radius along"),
                                                List.of()));
        if (section.isEmpty()) {
            return Crown.FLAT;
        }
        MaterialSection.Numbers n = new MaterialSection.Numbers(section.get());
        double across = curvature(section.get(), n, "across", width);
        double along = curvature(section.get(), n, "along", length);
        return n.complete() ? new Crown(across, along) : Crown.FLAT;
    }

    /** A crown steeper than this is no shallow shell: rise over side. */
    private static final double STEEPEST = 0.2;

    private double curvature(Section keys, MaterialSection.Numbers n, String side, double span) {
        if (keys.has("radius " + side)) {
            double radius = n.need("radius " + side, Dimension.LENGTH, 0.05, 1000);
            if (radius < span * 0.625) {
                findings.add(
                        keys.keyNode("radius " + side),
                        "The crown is steeper than a fifth of its side: no longer a shallow panel.",
                        "Divide the panel, or give a larger radius.");
            }
            return 1 / radius;
        }
        double rise = n.or(side, Dimension.LENGTH, 0, 2, 0);
        if (rise > STEEPEST * span) {
            findings.add(
                    keys.keyNode(side),
                    "The crown rises more than a fifth of its side: no longer a shallow panel.",
                    "Divide the panel, or give a smaller rise.");
        }
        return Crown.ofRise(rise, span, 0, span).across();
    }

    private void held(Section keys) {
        if (!keys.has("held")) {
            keys.missing(
                    "held",
                    "What holds the panel is missing.",
                    "Write   held: all edges   to see it as if its whole rim were carried.");
            return;
        }
        Node node = keys.node("held").orElseThrow();
        if (node instanceof ScalarNode scalar) {
            if (scalar.getValue().strip().equals("all edges")) {
                return;
            }
            findings.add(node, "\"held\" is not understood.", "Write   held: all edges");
            return;
        }
        findings.addLater(
                keys.keyNode("held"),
                "Hinges, a latch and a rubber seal cannot be worked out yet.",
                "Write   held: all edges   to see the panel as if its whole rim were carried.");
    }
}
