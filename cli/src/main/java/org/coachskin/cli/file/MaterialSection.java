package org.coachskin.cli.file;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coachskin.Source;
import org.coachskin.laminate.Ply;
import org.coachskin.laminate.PlyStrength;
import org.coachskin.material.Cloth;
import org.coachskin.material.Fibre;
import org.coachskin.material.Foam;
import org.coachskin.material.MaterialLibrary;
import org.coachskin.material.Resin;
import org.coachskin.material.Strength;
import org.coachskin.material.Weave;
import org.coachskin.units.Dimension;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * Materials that a file adds to the tables: {@code my cloths}, {@code my resins}, {@code my plies},
 * {@code my fibres}.
 */
final class MaterialSection {

    private static final List<String> WEAVES =
            List.of("plain", "twill", "satin", "woven roving", "stitched", "mat");

    private static final List<Weave> WEAVE_OF =
            List.of(Weave.PLAIN, Weave.TWILL, Weave.SATIN, Weave.ROVING, Weave.STITCHED, Weave.MAT);

    private static final List<String> FIBRE =
            List.of("E1", "E2", "G12", "nu12", "nu23", "density", "alpha1", "alpha2", "tension");

    private static final List<String> RESIN =
            List.of(
                    "kind",
                    "E",
                    "nu",
                    "density",
                    "tension",
                    "failure strain",
                    "expansion",
                    "softening",
                    "shrinkage");

    private static final List<String> PLY =
            List.of(
                    "E1",
                    "E2",
                    "nu12",
                    "G12",
                    "G13",
                    "G23",
                    "thickness",
                    "density",
                    "alpha1",
                    "alpha2",
                    "tension 1",
                    "compression 1",
                    "tension 2",
                    "compression 2",
                    "shear 12",
                    "strengths are");

    private final Findings findings;

    MaterialSection(Findings findings) {
        this.findings = findings;
    }

    /** Returns {@code library} with the file's own fibres, cloths and resins. */
    MaterialLibrary library(Section root, MaterialLibrary library) {
        MaterialLibrary all = library;
        for (Map.Entry<String, Node> entry : entries(root, "my fibres").entrySet()) {
            Optional<Fibre> fibre = fibre(entry.getKey(), entry.getValue());
            all = fibre.isPresent() ? all.withFibre(fibre.get()) : all;
        }
        for (Map.Entry<String, Node> entry : entries(root, "my cloths").entrySet()) {
            Optional<Cloth> cloth = cloth(entry.getKey(), entry.getValue(), all);
            all = cloth.isPresent() ? all.withCloth(cloth.get()) : all;
        }
        for (Map.Entry<String, Node> entry : entries(root, "my resins").entrySet()) {
            Optional<Resin> resin = resin(entry.getKey(), entry.getValue(), all);
            all = resin.isPresent() ? all.withResin(resin.get()) : all;
        }
        return all;
    }

    private Map<String, Node> entries(Section root, String key) {
        return root.has(key) ? root.map(key).map(Section::entries).orElse(Map.of()) : Map.of();
    }

    private Optional<Fibre> fibre(String name, Node node) {
        Optional<Section> section = findingsSection(node, name, FIBRE);
        if (section.isEmpty()) {
            return Optional.empty();
        }
        Numbers n = new Numbers(section.get());
        double e1 = n.need("E1", Dimension.STRESS, 1e9, 1e12);
        double e2 = n.need("E2", Dimension.STRESS, 1e8, 1e12);
        double g12 = n.need("G12", Dimension.STRESS, 1e8, 1e12);
        double density = n.need("density", Dimension.DENSITY, 500, 5000);
        double tension = n.need("tension", Dimension.STRESS, 1e7, 1e10);
        double nu12 = n.or("nu12", Dimension.SHARE, 0, 0.5, 0.25);
        double nu23 = n.or("nu23", Dimension.SHARE, 0, 0.9, 0.3);
        double alpha1 = n.or("alpha1", Dimension.EXPANSION, -1e-5, 1e-3, 0);
        double alpha2 = n.or("alpha2", Dimension.EXPANSION, -1e-5, 1e-3, 1e-5);
        return n.complete()
                ? Optional.of(
                        new Fibre(
                                name,
                                e1,
                                e2,
                                g12,
                                nu12,
                                nu23,
                                density,
                                alpha1,
                                alpha2,
                                mean(tension),
                                Source.YOURS))
                : Optional.empty();
    }

    private Optional<Cloth> cloth(String name, Node node, MaterialLibrary library) {
        Optional<Section> section =
                findingsSection(
                        node, name, List.of("mass", "weave", "warp share", "fibre", "like"));
        if (section.isEmpty()) {
            return Optional.empty();
        }
        Section keys = section.get();
        Numbers n = new Numbers(keys);
        double mass = n.need("mass", Dimension.AREAL_MASS, 0.015, 3);
        double share = n.or("warp share", Dimension.SHARE, 0, 1, 0.5);
        String weave = keys.text("weave").orElse("plain");
        if (!WEAVES.contains(weave)) {
            findings.add(
                    keys.keyNode("weave"),
                    "No weave is called \"" + weave + "\".",
                    "Write one of: " + String.join(", ", WEAVES));
            return Optional.empty();
        }
        String fibreName = keys.text("fibre").orElse("glass");
        Optional<Fibre> fibre = library.fibre(fibreName);
        if (fibre.isEmpty()) {
            findings.add(
                    keys.keyNode("fibre"),
                    "No fibre is called \"" + fibreName + "\".",
                    "Write   fibre: glass   or give your own under   my fibres");
            return Optional.empty();
        }
        int index = WEAVES.indexOf(weave);
        int floats = List.of(2, 4, 8, 2, 1, 1).get(index);
        return n.complete()
                ? Optional.of(
                        new Cloth(
                                name,
                                WEAVE_OF.get(index),
                                fibre.get(),
                                mass,
                                share,
                                floats,
                                List.of(),
                                0.03,
                                Source.YOURS))
                : Optional.empty();
    }

    private Optional<Resin> resin(String name, Node node, MaterialLibrary library) {
        Optional<Section> section = findingsSection(node, name, RESIN);
        if (section.isEmpty()) {
            return Optional.empty();
        }
        Section keys = section.get();
        Numbers n = new Numbers(keys);
        String kind = keys.text("kind").orElse("epoxy");
        Optional<Resin> base = library.resin(kind);
        if (base.isEmpty()) {
            findings.add(
                    keys.keyNode("kind"),
                    "No resin is called \"" + kind + "\".",
                    "Write   kind: " + library.nearestResin(kind));
            return Optional.empty();
        }
        Resin b = base.get();
        double e = n.or("E", Dimension.STRESS, 1e8, 1e10, b.e());
        double nu = n.or("nu", Dimension.SHARE, 0, 0.49, b.nu());
        double density = n.or("density", Dimension.DENSITY, 800, 2500, b.density());
        double tension = n.or("tension", Dimension.STRESS, 1e6, 3e8, b.tension().value());
        double strain = n.or("failure strain", Dimension.SHARE, 0.001, 0.5, b.failureStrain());
        double expansion = n.or("expansion", Dimension.EXPANSION, 1e-6, 1e-3, b.expansion());
        double softening = n.or("softening", Dimension.TEMPERATURE, 280, 600, b.softening());
        double shrinkage = n.or("shrinkage", Dimension.SHARE, 0, 0.2, b.shrinkage());
        return n.complete()
                ? Optional.of(
                        new Resin(
                                name,
                                b.kind(),
                                e,
                                nu,
                                density,
                                mean(tension),
                                strain,
                                expansion,
                                softening,
                                shrinkage,
                                b.modulusSpread(),
                                Source.YOURS))
                : Optional.empty();
    }

    /** Returns the ply given outright under {@code my plies}, if there is one of that name. */
    Optional<Ply> ply(Section root, String name) {
        Node node = entries(root, "my plies").get(name);
        if (node == null) {
            return Optional.empty();
        }
        Optional<Section> section = findingsSection(node, name, PLY);
        if (section.isEmpty()) {
            return Optional.empty();
        }
        Section keys = section.get();
        Numbers n = new Numbers(keys);
        double e1 = n.need("E1", Dimension.STRESS, 1e7, 1e12);
        double e2 = n.or("E2", Dimension.STRESS, 1e7, 1e12, e1);
        double nu12 = n.need("nu12", Dimension.SHARE, 0, 0.9);
        double g12 = n.need("G12", Dimension.STRESS, 1e6, 1e12);
        double g13 = n.or("G13", Dimension.STRESS, 1e6, 1e12, g12);
        double g23 = n.or("G23", Dimension.STRESS, 1e6, 1e12, g13);
        double thickness = n.need("thickness", Dimension.LENGTH, 2e-5, 0.02);
        double density = n.need("density", Dimension.DENSITY, 300, 9000);
        double alpha1 = n.or("alpha1", Dimension.EXPANSION, -1e-5, 1e-3, 1.6e-5);
        double alpha2 = n.or("alpha2", Dimension.EXPANSION, -1e-5, 1e-3, alpha1);
        double pull1 = n.need("tension 1", Dimension.STRESS, 1e5, 1e10);
        double push1 = n.need("compression 1", Dimension.STRESS, 1e5, 1e10);
        double pull2 = n.or("tension 2", Dimension.STRESS, 1e5, 1e10, pull1);
        double push2 = n.or("compression 2", Dimension.STRESS, 1e5, 1e10, push1);
        double shear = n.need("shear 12", Dimension.STRESS, 1e5, 1e10);
        Strength.Level level =
                keys.text("strengths are").orElse("mean").equals("minimum")
                        ? Strength.Level.MINIMUM
                        : Strength.Level.MEAN;
        if (!n.complete()) {
            return Optional.empty();
        }
        if (nu12 * nu12 >= e1 / e2) {
            findings.add(
                    keys.keyNode("nu12"),
                    "nu12 is too large for these E1 and E2: it must be below sqrt(E1/E2).",
                    "Are E1 and E2 exchanged?");
            return Optional.empty();
        }
        PlyStrength strength =
                new PlyStrength(
                        given(pull1, level),
                        given(push1, level),
                        given(pull2, level),
                        given(push2, level),
                        given(shear, level));
        return Optional.of(
                new Ply(
                        name,
                        e1,
                        e2,
                        nu12,
                        g12,
                        g13,
                        g23,
                        thickness,
                        density,
                        alpha1,
                        alpha2,
                        strength,
                        Source.YOURS));
    }

    /**
     * Returns the foam of the section {@code foam}: a kind and a density, with constants of its own
     * where given.
     */
    Optional<Foam> foam(Section keys, MaterialLibrary library) {
        Optional<String> kindText = keys.text("kind");
        if (kindText.isEmpty()) {
            keys.missing("kind", "The foam's kind is missing.", "Write   kind: polyurethane");
            return Optional.empty();
        }
        Optional<Foam.Kind> kind = kind(kindText.get());
        if (kind.isEmpty()) {
            findings.add(
                    keys.keyNode("kind"),
                    "No foam is called \"" + kindText.get() + "\".",
                    "Write   kind: "
                            + MaterialLibrary.nearest(kindText.get(), KINDS)
                            + "   or one of: "
                            + String.join(", ", KINDS));
            return Optional.empty();
        }
        Numbers n = new Numbers(keys);
        double density = n.need("density", Dimension.DENSITY, 8, 700);
        if (!n.complete()) {
            return Optional.empty();
        }
        Foam base =
                library.foam(
                                kind.get() == Foam.Kind.OTHER ? Foam.Kind.POLYURETHANE : kind.get(),
                                density)
                        .orElseThrow();
        double through =
                n.or("E through the thickness", Dimension.STRESS, 1e5, 1e10, base.eThrough());
        double inPlane =
                n.or(
                        "E in plane",
                        Dimension.STRESS,
                        1e5,
                        1e10,
                        keys.has("E through the thickness") ? through : base.eInPlane());
        double g = n.or("G", Dimension.STRESS, 1e5, 1e10, base.g());
        double nu = n.or("nu", Dimension.SHARE, 0, 0.49, base.nu());
        Strength shear = strength(n, keys, "shear strength", base.shear());
        Strength crush = strength(n, keys, "crush strength", base.crush());
        Strength tension = strength(n, keys, "tensile strength", base.tension());
        boolean own =
                keys.has("G") || keys.has("E through the thickness") || keys.has("E in plane");
        return n.complete()
                ? Optional.of(
                        new Foam(
                                kindText.get(),
                                kind.get(),
                                density,
                                inPlane,
                                through,
                                g,
                                nu,
                                shear,
                                crush,
                                tension,
                                base.expansion(),
                                base.densitySpread(),
                                base.modulusSpread(),
                                own ? Source.YOURS : base.source()))
                : Optional.empty();
    }

    static final List<String> KINDS =
            List.of("polyurethane", "polyisocyanurate", "PVC", "XPS", "EPS");

    private static Optional<Foam.Kind> kind(String text) {
        return KINDS.stream()
                .filter(kind -> kind.equalsIgnoreCase(text))
                .findFirst()
                .map(kind -> Foam.Kind.valueOf(kind.toUpperCase(java.util.Locale.ROOT)));
    }

    private static Strength strength(Numbers n, Section keys, String key, Strength otherwise) {
        double value = n.or(key, Dimension.STRESS, 1e3, 1e9, otherwise.value());
        return keys.has(key) ? given(value, Strength.Level.MEAN) : otherwise;
    }

    private Optional<Section> findingsSection(Node node, String name, List<String> known) {
        Optional<Section> section =
                node instanceof org.snakeyaml.engine.v2.nodes.MappingNode map
                        ? Optional.of(new Section(findings, map).allowing(known, List.of()))
                        : Optional.empty();
        if (section.isEmpty()) {
            findings.add(
                    node,
                    "\"" + name + "\" wants keys of its own.",
                    "Give: " + String.join(", ", known));
        }
        return section;
    }

    private static Strength mean(double value) {
        return given(value, Strength.Level.MEAN);
    }

    private static Strength given(double value, Strength.Level level) {
        return new Strength(
                Double.isFinite(value) ? value : 1, level, Strength.Event.BREAKING, Source.YOURS);
    }

    /** Numbers of a section, and whether all that were needed came. */
    static final class Numbers {
        private final Section keys;
        private boolean complete = true;

        Numbers(Section keys) {
            this.keys = keys;
        }

        double need(String key, Dimension dimension, double low, double high) {
            if (!keys.has(key)) {
                keys.missing(
                        key,
                        "\"" + key + "\" is missing here.",
                        "Write   "
                                + key
                                + ": ... "
                                + org.coachskin.units.Unit.of(dimension).get(0).symbol());
                complete = false;
                return Double.NaN;
            }
            return value(key, dimension, low, high);
        }

        double or(String key, Dimension dimension, double low, double high, double otherwise) {
            return keys.has(key) ? value(key, dimension, low, high) : otherwise;
        }

        private double value(String key, Dimension dimension, double low, double high) {
            OptionalDouble value = keys.quantity(key, dimension, low, high);
            complete = complete && value.isPresent();
            return value.orElse(Double.NaN);
        }

        boolean complete() {
            return complete;
        }
    }
}
