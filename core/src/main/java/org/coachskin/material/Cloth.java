package org.coachskin.material;

import java.util.List;
import org.coachskin.Require;
import org.coachskin.Source;

/**
 * A cloth as it is sold.
 *
 * @param name full name, for example {@code twill glass 300 g/m^2}
 * @param weave how it is woven
 * @param fibre what it is woven of
 * @param arealMass dry areal mass [kg/m^2]
 * @param warpShare share of the mass that runs along the warp [-], 0.5 where balanced; 0.5 for mat
 * @param floatLength for a satin or twill, the number of tows from one crossing to the next in a
 *     repeat (plain 2, 2/2 twill 4, 8-harness satin 8) [-]
 * @param widths widths it is sold in [m]; may be empty
 * @param massSpread coefficient of variation of the areal mass [-]
 * @param source where the figures come from
 */
public record Cloth(
        String name,
        Weave weave,
        Fibre fibre,
        double arealMass,
        double warpShare,
        int floatLength,
        List<Double> widths,
        double massSpread,
        Source source) {

    /** Checks signs and ranges. */
    public Cloth {
        Require.positive("areal mass of " + name, arealMass, "kg/m^2");
        Require.within("warp share of " + name, warpShare, 0, 1, "");
        widths = List.copyOf(widths);
    }

    /** Returns this cloth with another areal mass [kg/m^2]. */
    public Cloth withArealMass(double newArealMass) {
        return new Cloth(
                name,
                weave,
                fibre,
                newArealMass,
                warpShare,
                floatLength,
                widths,
                massSpread,
                source);
    }
}
