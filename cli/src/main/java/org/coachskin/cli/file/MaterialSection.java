package org.coachskin.cli.file;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.coachskin.InputException;
import org.coachskin.Source;
import org.coachskin.laminate.Ply;
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
 * Materials of one's own, beside the tables or in place of them: in the panel file, or in a file
 * that it names under {@code materials}.
 */
final class MaterialSection {

    /** Keys of materials, in the order in which one may stand on another. */
    static final List<String> KEYS =
            List.of("my fibres", "my cloths", "my resins", "my foams", "my plies");

    static final List<String> WEAVES =
            List.of("plain", "twill", "satin", "woven roving", "stitched", "mat");

    private static final List<Weave> WEAVE_OF =
            List.of(Weave.PLAIN, Weave.TWILL, Weave.SATIN, Weave.ROVING, Weave.STITCHED, Weave.MAT);

    /** Yarns over which a yarn of that weave goes before it dives. */
    private static final List<Integer> FLOATS = List.of(2, 4, 8, 2, 1, 1);

    static final List<String> CLOTH = List.of("mass", "weave", "warp share", "fibre");

    static final List<String> FIBRE =
            List.of("E1", "E2", "G12", "nu12", "nu23", "density", "alpha1", "alpha2", "tension");

    static final List<String> RESIN =
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

    private MaterialLibrary library;
    private final Map<String, Foam> foams = new LinkedHashMap<>();
    private final Map<String, Ply> plies = new LinkedHashMap<>();

    /** Starts from {@code library}. */
    MaterialSection(MaterialLibrary library) {
        this.library = library;
    }

    /** Takes in the materials of a file, after those of the file it names. */
    void add(Section root) {
        root.node("materials").ifPresent(node -> addFile(root, node));
        take(root);
    }

    private void take(Section root) {
        each(root, "my fibres", FIBRE, this::fibre);
        each(root, "my cloths", CLOTH, this::cloth);
        each(root, "my resins", RESIN, this::resin);
        each(
                root,
                "my foams",
                FoamSection.KEYS,
                (name, keys) ->
                        new FoamSection(library, Map.of())
                                .read(name, keys)
                                .ifPresent(foam -> foams.put(name, foam)));
        each(
                root,
                "my plies",
                PlySection.KEYS,
                (name, keys) -> PlySection.read(name, keys).ifPresent(ply -> plies.put(name, ply)));
    }

    private void addFile(Section root, Node node) {
        Optional<String> name = root.scalar(node, "materials");
        if (name.isEmpty()) {
            return;
        }
        Findings findings = root.findings();
        Path path = findings.path().resolveSibling(name.get());
        Findings part = Findings.ofPart(path);
        try {
            take(new Section(part, Yaml.read(TextFile.read(path, part), part)).allowing(KEYS));
        } catch (InputException e) {
            // What was found goes to the findings of the panel file, below.
        }
        findings.addAll(part, node);
    }

    private static void each(
            Section root, String key, List<String> known, BiConsumer<String, Section> read) {
        if (root.has(key)) {
            root.map(key)
                    .map(Section::entries)
                    .orElse(Map.of())
                    .forEach(
                            (name, node) ->
                                    root.asMap(node, name)
                                            .map(keys -> keys.allowing(known))
                                            .ifPresent(keys -> read.accept(name, keys)));
        }
    }

    MaterialLibrary library() {
        return library;
    }

    /** Returns the ply given outright under that name. */
    Optional<Ply> ply(String name) {
        return Optional.ofNullable(plies.get(name));
    }

    FoamSection foams() {
        return new FoamSection(library, foams);
    }

    private void fibre(String name, Section keys) {
        Numbers n = new Numbers(keys);
        double e1 = n.need("E1", Dimension.STRESS, 1e9, 1e12);
        double e2 = n.need("E2", Dimension.STRESS, 1e8, 1e12);
        double g12 = n.need("G12", Dimension.STRESS, 1e8, 1e12);
        double density = n.need("density", Dimension.DENSITY, 500, 5000);
        double tension = n.need("tension", Dimension.STRESS, 1e7, 1e10);
        double nu12 = n.or("nu12", Dimension.RATIO, 0, 0.5, 0.25);
        double nu23 = n.or("nu23", Dimension.RATIO, 0, 0.9, 0.3);
        double alpha1 = n.or("alpha1", Dimension.EXPANSION, -1e-5, 1e-3, 0);
        double alpha2 = n.or("alpha2", Dimension.EXPANSION, -1e-5, 1e-3, 1e-5);
        if (n.complete()) {
            Strength pull = given(tension, Strength.Level.MEAN);
            library =
                    library.withFibre(
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
                                    pull,
                                    Source.YOURS));
        }
    }

    private void cloth(String name, Section keys) {
        Numbers n = new Numbers(keys);
        double mass = n.need("mass", Dimension.AREAL_MASS, 0.015, 3);
        double share = n.or("warp share", Dimension.SHARE, 0, 1, 0.5);
        String weave = keys.text("weave").orElse("plain");
        int index = WEAVES.indexOf(weave);
        if (index < 0) {
            keys.findings()
                    .add(
                            keys.keyNode("weave"),
                            "No weave is called \"" + weave + "\".",
                            "Write   weave: "
                                    + MaterialLibrary.nearest(weave, WEAVES)
                                    + "   or one of: "
                                    + String.join(", ", WEAVES));
        }
        String fibreName = keys.text("fibre").orElse("glass");
        Optional<Fibre> fibre = library.fibre(fibreName);
        if (fibre.isEmpty()) {
            keys.findings()
                    .add(
                            keys.keyNode("fibre"),
                            "No fibre is called \"" + fibreName + "\".",
                            "Write   fibre: glass   or give your own under   my fibres");
        }
        if (n.complete() && index >= 0 && fibre.isPresent()) {
            library =
                    library.withCloth(
                            new Cloth(
                                    name,
                                    WEAVE_OF.get(index),
                                    fibre.get(),
                                    mass,
                                    share,
                                    FLOATS.get(index),
                                    List.of(),
                                    0.03,
                                    Source.YOURS));
        }
    }

    private void resin(String name, Section keys) {
        Numbers n = new Numbers(keys);
        String kind = keys.text("kind").orElse("epoxy");
        Optional<Resin> base = library.resin(kind);
        if (base.isEmpty()) {
            keys.findings()
                    .add(
                            keys.keyNode("kind"),
                            "No resin is called \"" + kind + "\".",
                            "Write   kind: " + library.nearestResin(kind));
            return;
        }
        Resin b = base.get();
        double e = n.or("E", Dimension.STRESS, 1e8, 1e10, b.e());
        double nu = n.or("nu", Dimension.RATIO, 0, 0.49, b.nu());
        double density = n.or("density", Dimension.DENSITY, 800, 2500, b.density());
        double tension = n.or("tension", Dimension.STRESS, 1e6, 3e8, b.tension().value());
        double strain = n.or("failure strain", Dimension.SHARE, 0.001, 0.5, b.failureStrain());
        double expansion = n.or("expansion", Dimension.EXPANSION, 1e-6, 1e-3, b.expansion());
        double softening = n.or("softening", Dimension.TEMPERATURE, 280, 600, b.softening());
        double shrinkage = n.or("shrinkage", Dimension.SHARE, 0, 0.2, b.shrinkage());
        if (n.complete()) {
            Strength pull = keys.has("tension") ? given(tension, Strength.Level.MEAN) : b.tension();
            library =
                    library.withResin(
                            new Resin(
                                    name,
                                    b.kind(),
                                    e,
                                    nu,
                                    density,
                                    pull,
                                    strain,
                                    expansion,
                                    softening,
                                    shrinkage,
                                    b.modulusSpread(),
                                    Source.YOURS));
        }
    }

    /** Returns a breaking strength of one's own [Pa]. */
    static Strength given(double value, Strength.Level level) {
        return new Strength(value, level, Strength.Event.BREAKING, Source.YOURS);
    }
}
