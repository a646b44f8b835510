package org.coachskin.laminate;

import org.coachskin.Require;
import org.coachskin.Source;

/**
 * How the cloth is wetted and what stays in it.
 *
 * @param name the way of working, for example {@code brush and squeegee}
 * @param glassShare share of the fibre in the cured ply by weight [-]
 * @param spread standard deviation of that share [-], absolute
 * @param voids share of voids by volume [-]
 * @param source where the share comes from
 */
public record LayUp(String name, double glassShare, double spread, double voids, Source source) {

    /** Checks ranges. */
    public LayUp {
        Require.within("glass share of " + name, glassShare, 0.1, 0.9, "");
        Require.within("spread of the glass share of " + name, spread, 0, 0.2, "");
        Require.within("voids of " + name, voids, 0, 0.2, "");
    }

    /** Returns this way of working with another glass share [-]. */
    public LayUp withGlassShare(double share) {
        return new LayUp(name, share, spread, voids, source);
    }
}
