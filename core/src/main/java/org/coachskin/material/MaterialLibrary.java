package org.coachskin.material;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.coachskin.Source;
import org.coachskin.Standing;
import org.coachskin.Table;

/**
 * The tables of what a maker can buy, with additions of one's own. Immutable.
 *
 * <p>Names are found whatever their case and spacing.
 */
public final class MaterialLibrary {

    /** Scatter of foam density from block to block [-] [common practice, no source]. */
    private static final double DENSITY_SPREAD = 0.08;

    /**
     * Scatter of foam modulus beside what its density explains [-] [common practice, no source].
     */
    private static final double MODULUS_SPREAD = 0.09;

    /** How far beyond its lightest and heaviest row a table of foam is trusted [-] [judgement]. */
    private static final double BEYOND = 1.0 / 3;

    private final Map<String, Fibre> fibres;
    private final Map<String, Cloth> cloths;
    private final Map<String, Resin> resins;
    private final List<Foam> foams;

    private MaterialLibrary(
            Map<String, Fibre> fibres,
            Map<String, Cloth> cloths,
            Map<String, Resin> resins,
            List<Foam> foams) {
        this.fibres = fibres;
        this.cloths = cloths;
        this.resins = resins;
        this.foams = List.copyOf(foams);
    }

    /** Returns the library's own tables. */
    public static MaterialLibrary standard() {
        return Holder.STANDARD;
    }

    private static final class Holder {
        static final MaterialLibrary STANDARD = read();
    }

    private static MaterialLibrary read() {
        Map<String, Fibre> fibres = new LinkedHashMap<>();
        Table t = Table.read(MaterialLibrary.class, "fibres.csv");
        for (int i = 0; i < t.size(); i++) {
            Source source = t.source(i);
            fibres.put(
                    key(t.text(i, "name")),
                    new Fibre(
                            t.text(i, "name"),
                            t.number(i, "E1"),
                            t.number(i, "E2"),
                            t.number(i, "G12"),
                            t.number(i, "nu12"),
                            t.number(i, "nu23"),
                            t.number(i, "density"),
                            t.number(i, "alpha1"),
                            t.number(i, "alpha2"),
                            mean(t.number(i, "tension"), source),
                            source));
        }
        Fibre glass = fibres.values().iterator().next();
        Map<String, Cloth> cloths = new LinkedHashMap<>();
        t = Table.read(MaterialLibrary.class, "cloths.csv");
        for (int i = 0; i < t.size(); i++) {
            List<Double> widths = new ArrayList<>();
            for (String width : t.text(i, "widths").split(" ", -1)) {
                widths.add(Double.parseDouble(width));
            }
            Cloth cloth =
                    new Cloth(
                            t.text(i, "name"),
                            weave(t.text(i, "weave")),
                            glass,
                            t.number(i, "areal mass"),
                            t.number(i, "warp share"),
                            (int) t.number(i, "float"),
                            widths,
                            t.number(i, "mass spread"),
                            t.source(i));
            cloths.put(key(cloth.name()), cloth);
        }
        Map<String, Resin> resins = new LinkedHashMap<>();
        t = Table.read(MaterialLibrary.class, "resins.csv");
        for (int i = 0; i < t.size(); i++) {
            Source source = t.source(i);
            Resin resin =
                    new Resin(
                            t.text(i, "name"),
                            Resin.Kind.valueOf(
                                    t.text(i, "kind").toUpperCase(Locale.ROOT).replace(' ', '_')),
                            t.number(i, "E"),
                            t.number(i, "nu"),
                            t.number(i, "density"),
                            mean(t.number(i, "tension"), source),
                            t.number(i, "failure strain"),
                            t.number(i, "expansion"),
                            t.number(i, "softening"),
                            t.number(i, "shrinkage"),
                            t.number(i, "modulus spread"),
                            source);
            resins.put(key(resin.name()), resin);
        }
        List<Foam> foams = new ArrayList<>();
        t = Table.read(MaterialLibrary.class, "foams.csv");
        for (int i = 0; i < t.size(); i++) {
            Source source = t.source(i);
            String kind = t.text(i, "kind");
            foams.add(
                    new Foam(
                            kind,
                            Foam.Kind.valueOf(kind.toUpperCase(Locale.ROOT)),
                            t.number(i, "density"),
                            t.number(i, "E in plane"),
                            t.number(i, "E through"),
                            t.number(i, "G"),
                            t.number(i, "nu"),
                            mean(t.number(i, "shear"), source),
                            mean(t.number(i, "crush"), source),
                            mean(t.number(i, "tension"), source),
                            t.number(i, "expansion"),
                            DENSITY_SPREAD,
                            MODULUS_SPREAD,
                            source));
        }
        return new MaterialLibrary(fibres, cloths, resins, foams);
    }

    static Strength mean(double value, Source source) {
        return new Strength(value, Strength.Level.MEAN, Strength.Event.BREAKING, source);
    }

    private static Weave weave(String words) {
        return Arrays.stream(Weave.values())
                .filter(weave -> weave.words().equals(words))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no weave " + words));
    }

    static String key(String name) {
        StringBuilder key = new StringBuilder();
        name.toLowerCase(Locale.ROOT)
                .chars()
                .filter(c -> c > ' ')
                .forEach(c -> key.append((char) c));
        return key.toString();
    }

    /** Returns the fibre of that name. */
    public Optional<Fibre> fibre(String name) {
        return Optional.ofNullable(fibres.get(key(name)));
    }

    /** Returns the cloth of that name. */
    public Optional<Cloth> cloth(String name) {
        return Optional.ofNullable(cloths.get(key(name)));
    }

    /** Returns the resin of that name. */
    public Optional<Resin> resin(String name) {
        return Optional.ofNullable(resins.get(key(name)));
    }

    /**
     * Returns foam of that kind and density: between two rows of the table along a straight line in
     * the logarithms, beyond its ends by {@link FoamLaw}; empty where the table has no foam of that
     * kind, or ends more than a third short of that density.
     *
     * @param density [kg/m^3]
     */
    public Optional<Foam> foam(Foam.Kind kind, double density) {
        List<Foam> rows = foams(kind);
        if (rows.isEmpty()
                || density < rows.get(0).density() * (1 - BEYOND)
                || density > rows.get(rows.size() - 1).density() * (1 + BEYOND)) {
            return Optional.empty();
        }
        int above = 0;
        while (above < rows.size() && rows.get(above).density() < density) {
            above++;
        }
        if (above == 0 || above == rows.size()) {
            return Optional.of(
                    FoamLaw.atDensity(rows.get(Math.min(above, rows.size() - 1)), density));
        }
        return Optional.of(FoamLaw.between(rows.get(above - 1), rows.get(above), density));
    }

    /** Returns every cloth, in the order of the table. */
    public List<Cloth> cloths() {
        return List.copyOf(cloths.values());
    }

    /** Returns every resin, in the order of the table. */
    public List<Resin> resins() {
        return List.copyOf(resins.values());
    }

    /** Returns every foam, in the order of the table. */
    public List<Foam> foams() {
        return foams;
    }

    /** Returns the foams of one kind, lightest first. */
    public List<Foam> foams(Foam.Kind kind) {
        return foams.stream()
                .filter(foam -> foam.kind() == kind)
                .sorted(Comparator.comparingDouble(Foam::density))
                .toList();
    }

    /** Returns the name of the cloth that reads most like {@code name}. */
    public String nearestCloth(String name) {
        return nearest(name, cloths().stream().map(Cloth::name).toList());
    }

    /** Returns the name of the resin that reads most like {@code name}. */
    public String nearestResin(String name) {
        return nearest(name, resins().stream().map(Resin::name).toList());
    }

    /**
     * Returns which of {@code names} reads most like {@code name}: the smallest number of letters
     * to change.
     */
    public static String nearest(String name, List<String> names) {
        return names.stream()
                .min(Comparator.comparingInt(other -> distance(key(name), key(other))))
                .orElse("");
    }

    private static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(change, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[b.length()];
    }

    /** Returns this library with {@code cloth} added, or put in place of the one of that name. */
    public MaterialLibrary withCloth(Cloth cloth) {
        Map<String, Cloth> more = new LinkedHashMap<>(cloths);
        more.put(key(cloth.name()), cloth);
        return new MaterialLibrary(fibres, more, resins, foams);
    }

    /** Returns this library with {@code resin} added, or put in place of the one of that name. */
    public MaterialLibrary withResin(Resin resin) {
        Map<String, Resin> more = new LinkedHashMap<>(resins);
        more.put(key(resin.name()), resin);
        return new MaterialLibrary(fibres, cloths, more, foams);
    }

    /** Returns this library with {@code fibre} added, or put in place of the one of that name. */
    public MaterialLibrary withFibre(Fibre fibre) {
        Map<String, Fibre> more = new LinkedHashMap<>(fibres);
        more.put(key(fibre.name()), fibre);
        return new MaterialLibrary(more, cloths, resins, foams);
    }

    /** Returns the thicknesses foam board is sold in [m] [common practice, no source]. */
    public static List<Double> soldThicknesses() {
        return List.of(0.006, 0.010, 0.012, 0.015, 0.018, 0.020, 0.025, 0.030, 0.040, 0.050);
    }

    /** Returns the densities a foam is sold in [kg/m^3] [common practice, no source]. */
    public static List<Double> soldDensities(Foam.Kind kind) {
        return switch (kind) {
            case POLYURETHANE -> List.of(32.0, 48.0, 64.0, 96.0, 128.0, 160.0, 240.0, 320.0);
            case POLYISOCYANURATE -> List.of(32.0, 37.0, 64.0);
            case PVC -> List.of(48.0, 60.0, 80.0, 100.0, 130.0, 160.0, 250.0);
            case XPS -> List.of(28.0, 32.0);
            case EPS -> List.of(16.0, 24.0);
            case OTHER -> List.of();
        };
    }

    /** Returns the densities above that of a foam in which its kind is sold [kg/m^3]. */
    public static List<Double> soldDenser(Foam foam) {
        return soldDensities(foam.kind()).stream()
                .filter(density -> density > foam.density() * 1.02)
                .toList();
    }

    /** Returns the source of the sold thicknesses and densities. */
    public static Source soldSource() {
        return new Source(
                "sizes that chandlers and board yards keep", "", Standing.COMMON_PRACTICE);
    }
}
