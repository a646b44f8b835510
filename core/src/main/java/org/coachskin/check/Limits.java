package org.coachskin.check;

import org.coachskin.failure.Factors;
import org.coachskin.failure.PlyCriterion;

/**
 * What is wanted of a panel.
 *
 * @param feltStiffness force over movement under a palm [N/m]
 * @param spanShare largest sag under a spread load as a share of the short side [-]
 * @param sealGap widest gap between panel and rubber seal [m]
 * @param lastingDent deepest lasting dent that counts as no mark [m]
 * @param marksAllowed whether a mark is accepted: then it is reported and does not count
 * @param factors factors of safety
 * @param criterion the ply criterion that governs
 */
public record Limits(
        double feltStiffness,
        double spanShare,
        double sealGap,
        double lastingDent,
        boolean marksAllowed,
        Factors factors,
        PlyCriterion criterion) {

    /**
     * A lasting dent this deep counts as crushed for good [m]: filler no longer hides it [common
     * practice, no source].
     */
    public static final double CRUSHED = 0.5e-3;

    /**
     * What is wanted where the file says nothing: 40 N/mm, a hundredth of the span, a gap of 2 mm,
     * a dent of 0.1 mm [common practice, no source].
     */
    public static final Limits STANDARD =
            new Limits(
                    40e3,
                    0.01,
                    2e-3,
                    0.1e-3,
                    false,
                    Factors.STANDARD,
                    new PlyCriterion.MaxStress());

    /** Returns these limits with another ply criterion. */
    public Limits withCriterion(PlyCriterion other) {
        return new Limits(
                feltStiffness, spanShare, sealGap, lastingDent, marksAllowed, factors, other);
    }
}
