package org.coachskin.laminate;

import java.util.List;
import java.util.stream.IntStream;
import org.coachskin.Require;
import org.coachskin.Source;
import org.coachskin.Table;

/**
 * How the cloth is wetted and what stays in it.
 *
 * @param name the way of working, for example {@code brush and squeegee}
 * @param glassShare share of the fibre in a cured ply of cloth by weight [-]
 * @param matShare share of the fibre in a cured layer of mat by weight [-]; mat drinks more than
 *     cloth
 * @param spread standard deviation of both shares [-], absolute
 * @param voids share of voids by volume [-]
 * @param source where the share of cloth comes from
 */
public record LayUp(
        String name,
        double glassShare,
        double matShare,
        double spread,
        double voids,
        Source source) {

    private static final Table TABLE = Table.read(LayUp.class, "lay-ups.csv");

    /** The row for mat, which holds whatever the way of working. */
    private static final int MAT = row("mat");

    /** The ways of working that have a name, in the order of their glass shares. */
    public static final List<LayUp> KNOWN =
            IntStream.range(0, TABLE.size()).filter(i -> i != MAT).mapToObj(LayUp::of).toList();

    /** Brush and squeegee: what is meant where nothing is said. */
    public static final LayUp USUAL =
            KNOWN.stream()
                    .filter(way -> way.name().equals("brush and squeegee"))
                    .findFirst()
                    .orElseThrow();

    /** Checks ranges. */
    public LayUp {
        Require.within("glass share of " + name, glassShare, 0.1, 0.9, "");
        Require.within("glass share of mat, " + name, matShare, 0.1, 0.9, "");
        Require.within("spread of the glass share of " + name, spread, 0, 0.2, "");
        Require.within("voids of " + name, voids, 0, 0.2, "");
    }

    private static int row(String name) {
        return IntStream.range(0, TABLE.size())
                .filter(i -> TABLE.text(i, "name").equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static LayUp of(int row) {
        return new LayUp(
                TABLE.text(row, "name"),
                TABLE.number(row, "glass share"),
                TABLE.number(MAT, "glass share"),
                TABLE.number(row, "spread"),
                TABLE.number(row, "voids"),
                TABLE.source(row));
    }

    /** Returns where the share of glass in mat comes from. */
    public static Source matSource() {
        return TABLE.source(MAT);
    }

    /** Returns this way of working with another glass share of cloth [-]; mat never holds more. */
    public LayUp withGlassShare(double share) {
        return new LayUp(name, share, Math.min(matShare, share), spread, voids, source);
    }

    /** Returns this way of working with both shares moved by so many standard deviations. */
    LayUp moved(double sigmas) {
        double by = sigmas * spread;
        return new LayUp(name, glassShare + by, matShare + by, spread, voids, source);
    }
}
