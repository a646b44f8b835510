package org.coachskin.failure;

import org.coachskin.Source;
import org.coachskin.Standing;
import org.coachskin.material.Strength;

/**
 * Factors of safety: how many times the load must fit before a mode happens.
 *
 * @param skinOnMean on a skin whose strength is a mean [-]
 * @param skinOnMinimum on a skin whose strength is a minimum [-]
 * @param coreShear on core shear [-]
 * @param coreShearPeople on core shear where people stand, kneel or sit [-]
 * @param wrinkling on the computed wrinkling stress of a skin bonded to mean foam, and on crimping
 *     [-]
 * @param crushing on crushing [-]
 * @param bond on bond and foam tension [-]
 * @param stays extra factor on a load that stays for weeks [-]
 * @param source where they come from
 */
public record Factors(
        double skinOnMean,
        double skinOnMinimum,
        double coreShear,
        double coreShearPeople,
        double wrinkling,
        double crushing,
        double bond,
        double stays,
        Source source) {

    /** The factors used where the file gives none. */
    public static final Factors STANDARD =
            new Factors(
                    3.0,
                    2.0,
                    2.5,
                    3.3,
                    3.0,
                    1.5,
                    3.0,
                    2.0,
                    new Source(
                            "usual range of classification-society and small-craft rules for sandwich panels",
                            "",
                            Standing.COMMON_PRACTICE));

    /** Returns the factor for a skin strength, by what the strength is. */
    public double skin(Strength strength) {
        return strength.level() == Strength.Level.MEAN ? skinOnMean : skinOnMinimum;
    }
}
