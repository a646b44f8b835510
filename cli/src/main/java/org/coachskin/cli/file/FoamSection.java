package org.coachskin.cli.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.coachskin.Source;
import org.coachskin.material.Foam;
import org.coachskin.material.MaterialLibrary;
import org.coachskin.material.Strength;
import org.coachskin.units.Dimension;

/** A foam: a kind and a density of the tables, constants of one's own, or both. */
final class FoamSection {

    /** Kinds that the tables hold. */
    static final List<String> KINDS =
            List.of("polyurethane", "polyisocyanurate", "PVC", "XPS", "EPS");

    /** What a foam of one's own may say. */
    static final List<String> KEYS =
            List.of(
                    "kind",
                    "density",
                    "E in plane",
                    "E through the thickness",
                    "G",
                    "nu",
                    "shear strength",
                    "crush strength",
                    "tensile strength",
                    "expansion");

    /** Without a kind of the tables there is nothing to fall back on. */
    private static final List<String> NEEDED =
            List.of(
                    "E through the thickness",
                    "G",
                    "shear strength",
                    "crush strength",
                    "tensile strength");

    private static final double USUAL_NU = 0.3;

    /** Thermal expansion of rigid foam where none is given [1/K] [common practice, no source]. */
    private static final double USUAL_EXPANSION = 60e-6;

    private final MaterialLibrary library;
    private final Map<String, Foam> own;

    FoamSection(MaterialLibrary library, Map<String, Foam> own) {
        this.library = library;
        this.own = own;
    }

    /** Returns the foam that the panel is made of. */
    Optional<Foam> read(Section keys) {
        Optional<String> kind = keys.text("kind");
        if (kind.isEmpty()) {
            if (!keys.has("kind")) {
                keys.missing("The foam's kind is missing.", "Write   kind: polyurethane");
            }
            return Optional.empty();
        }
        Foam given = own.get(kind.get());
        if (given == null) {
            return read(kind.get(), keys);
        }
        KEYS.stream()
                .filter(key -> !key.equals("kind") && keys.has(key))
                .forEach(
                        key ->
                                keys.findings()
                                        .add(
                                                keys.keyNode(key),
                                                "The foam \""
                                                        + given.name()
                                                        + "\" is one of your own and whole.",
                                                "Write   " + key + "   under   my foams"));
        return Optional.of(given);
    }

    /** Returns a foam by these keys, called {@code name} where they do not name a kind. */
    Optional<Foam> read(String name, Section keys) {
        String kindText = keys.has("kind") ? keys.text("kind").orElse(name) : name;
        Optional<Foam.Kind> kind = kind(kindText);
        if (kind.isEmpty() && NEEDED.stream().noneMatch(keys::has)) {
            unknown(kindText, keys);
            new Numbers(keys).or("density", Dimension.DENSITY, 8, 700, 0);
            return Optional.empty();
        }
        Numbers n = new Numbers(keys);
        double density = n.need("density", Dimension.DENSITY, 8, 700);
        Optional<Foam> table =
                n.complete()
                        ? kind.flatMap(k -> library.foam(k, density))
                        : kind.map(k -> library.foams().get(0));
        if (kind.isPresent()
                && n.complete()
                && table.isEmpty()
                && !NEEDED.stream().allMatch(keys::has)) {
            tooFar(kind.get(), density, keys);
            return Optional.empty();
        }
        double through = modulus(n, "E through the thickness", table.map(Foam::eThrough));
        boolean onlyThrough = keys.has("E through the thickness") || table.isEmpty();
        double inPlane =
                modulus(
                        n,
                        "E in plane",
                        onlyThrough ? Optional.of(through) : table.map(Foam::eInPlane));
        double g = modulus(n, "G", table.map(Foam::g));
        double nu = n.or("nu", Dimension.RATIO, 0, 0.49, table.map(Foam::nu).orElse(USUAL_NU));
        Optional<Strength> shear = strength(n, keys, "shear strength", table.map(Foam::shear));
        Optional<Strength> crush = strength(n, keys, "crush strength", table.map(Foam::crush));
        Optional<Strength> pull = strength(n, keys, "tensile strength", table.map(Foam::tension));
        double expansion =
                n.or(
                        "expansion",
                        Dimension.EXPANSION,
                        0,
                        1e-3,
                        table.map(Foam::expansion).orElse(USUAL_EXPANSION));
        if (!n.complete() || shear.isEmpty() || crush.isEmpty() || pull.isEmpty()) {
            return Optional.empty();
        }
        boolean given = KEYS.stream().skip(2).anyMatch(keys::has);
        Foam scatter = table.orElse(library.foams().get(0));
        return Optional.of(
                new Foam(
                        name,
                        kind.orElse(Foam.Kind.OTHER),
                        density,
                        inPlane,
                        through,
                        g,
                        nu,
                        shear.get(),
                        crush.get(),
                        pull.get(),
                        expansion,
                        scatter.densitySpread(),
                        scatter.modulusSpread(),
                        given ? Source.YOURS : scatter.source()));
    }

    /** Returns the kind of the tables that is called so. */
    static Optional<Foam.Kind> kind(String name) {
        return KINDS.stream()
                .filter(each -> each.equalsIgnoreCase(name))
                .findFirst()
                .map(each -> Foam.Kind.valueOf(each.toUpperCase(Locale.ROOT)));
    }

    private void unknown(String kind, Section keys) {
        List<String> names = new ArrayList<>(KINDS);
        names.addAll(own.keySet());
        keys.findings()
                .add(
                        keys.keyNode("kind"),
                        "No foam is called \"" + kind + "\".",
                        "Write   kind: "
                                + MaterialLibrary.nearest(kind, names)
                                + "   or one of: "
                                + String.join(", ", names)
                                + "\nOr give your own under  my foams.");
    }

    private void tooFar(Foam.Kind kind, double density, Section keys) {
        List<Foam> rows = library.foams(kind);
        double lightest = rows.get(0).density();
        double heaviest = rows.get(rows.size() - 1).density();
        keys.findings()
                .add(
                        keys.keyNode("density"),
                        String.format(
                                Locale.ROOT,
                                "%s is known from %.0f to %.0f kg/m^3; this density is too far from it to guess.",
                                rows.get(0).name(),
                                lightest,
                                heaviest),
                        String.format(
                                Locale.ROOT,
                                "Weigh a square block:  density: %.0f kg/m^3\nOr give its own %s.",
                                density < lightest ? lightest : heaviest,
                                String.join(", ", NEEDED)));
    }

    private static double modulus(Numbers n, String key, Optional<Double> otherwise) {
        return otherwise.isPresent()
                ? n.or(key, Dimension.STRESS, 1e5, 1e10, otherwise.get())
                : n.need(key, Dimension.STRESS, 1e5, 1e10);
    }

    private static Optional<Strength> strength(
            Numbers n, Section keys, String key, Optional<Strength> otherwise) {
        if (otherwise.isPresent() && !keys.has(key)) {
            return otherwise;
        }
        double value = n.need(key, Dimension.STRESS, 1e3, 1e9);
        return Double.isNaN(value)
                ? Optional.empty()
                : Optional.of(MaterialSection.given(value, Strength.Level.MEAN));
    }
}
