package org.coachskin.reinforce;

import java.util.List;
import org.coachskin.Source;
import org.coachskin.Standing;
import org.coachskin.panel.TurnedEdge;

/** Rules of the bench that every offer keeps to. */
public final class Practice {

    /** How far each ply ends before the one under it; every width is a multiple of it [m]. */
    public static final double STEP = 0.02;

    /** The narrowest band of cloth, and the shortest overlap, that holds [m]. */
    public static final double OVERLAP = TurnedEdge.OVERLAP;

    /** Two that differ by less weigh the same at the bench [kg]. */
    private static final double SCALE = 0.005;

    /** A rounded corner of an opening: this, or {@link #SHARE} of its short side [m]. */
    static final double RADIUS = 0.025;

    static final double SHARE = 1.0 / 8;

    /** Widths of bands that are tried [m]. */
    static final List<Double> WIDTHS = List.of(0.1, 0.08, 0.06, 0.04, 0.02);

    /** A bevel is so many times as long as its strip is thick, the first that has room. */
    static final List<Double> BEVELS = List.of(3.0, 2.5, 2.0);

    /** A foam strip is at least so wide [m]. */
    static final double STRIP = 0.04;

    /** A solid insert reaches this far past its fitting, or twice as far [m]. */
    static final List<Double> PAST = List.of(0.025, 0.05);

    /** Plies more in a lip, at most. */
    static final int LIP = 6;

    private Practice() {}

    /** Returns a length without what rounding has left at its end. */
    static double rounded(double metres) {
        return Math.rint(1e6 * metres) / 1e6;
    }

    /** Returns a mass in steps of a scale at the bench. */
    static long weighed(double kilograms) {
        return Math.round(kilograms / SCALE);
    }

    /** Returns where these come from. */
    public static Source source() {
        return new Source(
                "steps of 20 mm a ply, overlaps of 20 mm and more, inserts 25 mm past the fitting, of "
                        + "two within 5 g the one that leaves the skins more alike",
                "",
                Standing.COMMON_PRACTICE);
    }
}
