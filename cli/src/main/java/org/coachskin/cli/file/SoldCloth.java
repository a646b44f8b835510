package org.coachskin.cli.file;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.coachskin.material.Cloth;
import org.coachskin.material.MaterialLibrary;
import org.coachskin.units.Dimension;
import org.coachskin.units.Quantity;
import org.coachskin.units.QuantityException;

/**
 * A cloth as it is sold: words and a mass.
 *
 * @param words such as {@code twill glass}
 * @param mass [kg/m^2]
 * @param unit of the mass, as written
 */
record SoldCloth(String words, double mass, String unit) {

    /** The mass at the end of a cloth's name, in a unit of the table or in bare ounces. */
    private static final Pattern NAME =
            Pattern.compile(
                    "(?<words>.*?)\\s*(?<number>(?:\\d+[ -])?\\d+/\\d+|\\d+(?:\\.\\d+)?)\\s*(?<unit>[a-zA-Z]\\S*)$");

    private static final Pattern MAT = Pattern.compile("\\b(mat|csm)\\b");

    /** Masses as sold are rounded: two within this share of each other are one cloth [-]. */
    private static final double SAME = 0.02;

    /**
     * Returns what {@code name} says, or empty where it ends in no mass. Bare ounces are to the
     * square yard for cloth and, as mat is sold, to the square foot for mat.
     */
    static Optional<SoldCloth> of(String name) {
        Matcher m = NAME.matcher(name);
        if (!m.matches()) {
            return Optional.empty();
        }
        String words = m.group("words");
        String written = m.group("unit");
        String square = MAT.matcher(words).find() ? "oz/ft^2" : "oz/yd^2";
        String unit = written.equals("oz") ? square : written;
        try {
            double mass = Quantity.parse(m.group("number") + " " + unit, Dimension.AREAL_MASS);
            return Optional.of(new SoldCloth(words, mass, written));
        } catch (QuantityException e) {
            return Optional.empty();
        }
    }

    /** Returns the cloth of the same words and, as sold, the same mass: 10 oz is 339 g/m^2. */
    Optional<Cloth> in(MaterialLibrary library) {
        return nearest(library.cloths(), words).filter(cloth -> off(cloth) <= SAME);
    }

    /**
     * Returns the cloth that reads most like {@code name}: first by its words, then by its mass.
     */
    static String nearest(MaterialLibrary library, String name) {
        return of(name).flatMap(sold -> sold.nearest(library))
                .map(Cloth::name)
                .orElseGet(() -> library.nearestCloth(name));
    }

    /** Whether this is mat with its mass to the square yard, by which no mat is sold. */
    boolean isMatByTheYard() {
        return unit.equals("oz/yd^2") && MAT.matcher(words).find();
    }

    private Optional<Cloth> nearest(MaterialLibrary library) {
        List<String> known =
                library.cloths().stream()
                        .flatMap(cloth -> of(cloth.name()).stream())
                        .map(SoldCloth::words)
                        .distinct()
                        .toList();
        Optional<String> mat = known.stream().filter(each -> each.startsWith("mat ")).findFirst();
        return nearest(
                library.cloths(),
                MAT.matcher(words).find() && mat.isPresent()
                        ? mat.get()
                        : MaterialLibrary.nearest(words, known));
    }

    private Optional<Cloth> nearest(List<Cloth> cloths, String start) {
        return cloths.stream()
                .filter(cloth -> cloth.name().startsWith(start + " "))
                .min(Comparator.comparingDouble(this::off));
    }

    private double off(Cloth cloth) {
        return Math.abs(cloth.arealMass() / mass - 1);
    }
}
