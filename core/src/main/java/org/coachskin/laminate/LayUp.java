package org.coachskin.laminate;

import java.util.List;
import org.coachskin.Require;
import org.coachskin.Source;
import org.coachskin.Standing;

/**
 * How the cloth is wetted and what stays in it.
 *
 * @param name the way of working, for example {@code brush and squeegee}
 * @param glassShare share of the fibre in the cured ply by weight, for cloth [-]; mat takes {@link
 *     #matShare}
 * @param spread standard deviation of that share [-], absolute
 * @param voids share of voids by volume [-]
 * @param source where the share comes from
 */
public record LayUp(String name, double glassShare, double spread, double voids, Source source) {

    private static final Source TRADE =
            new Source("usual in the trade", "", Standing.COMMON_PRACTICE);

    /** The ways of working that have a name. */
    public static final List<LayUp> KNOWN =
            List.of(
                    new LayUp("beginner with a brush", 0.38, 0.035, 0.04, TRADE),
                    new LayUp("brush and roller", 0.45, 0.025, 0.03, TRADE),
                    new LayUp(
                            "brush and squeegee",
                            0.50,
                            0.025,
                            0.02,
                            new Source(
                                    "an epoxy maker's thickness of single layers laid by hand, which gives 0.50 to 0.52 for 6 and "
                                            + "10 oz cloth without voids",
                                    "table of single-layer thickness",
                                    Standing.PUBLISHED)),
                    new LayUp("peel ply", 0.55, 0.025, 0.02, TRADE),
                    new LayUp("vacuum bag", 0.63, 0.025, 0.01, TRADE));

    /** Brush and squeegee: what is meant where nothing is said. */
    public static final LayUp USUAL = KNOWN.get(2);

    /**
     * Share of glass in a cured layer of mat, whatever the way of working (ISO 12215-5:2008, table
     * C.2) [-].
     */
    private static final double MAT = 0.30;

    /** Checks ranges. */
    public LayUp {
        Require.within("glass share of " + name, glassShare, 0.1, 0.9, "");
        Require.within("spread of the glass share of " + name, spread, 0, 0.2, "");
        Require.within("voids of " + name, voids, 0, 0.2, "");
    }

    /** Returns the share of glass in mat [-]; mat drinks more than cloth. */
    public double matShare() {
        return Math.min(MAT, glassShare);
    }

    /** Returns this way of working with another glass share [-]. */
    public LayUp withGlassShare(double share) {
        return new LayUp(name, share, spread, voids, source);
    }
}
