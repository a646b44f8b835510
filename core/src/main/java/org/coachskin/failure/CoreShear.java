package org.coachskin.failure;

import org.coachskin.material.Strength;

/**
 * Shear of the foam through the thickness, both directions together: the size of the shear stress
 * against its strength.
 */
public final class CoreShear {

    private CoreShear() {}

    /**
     * Returns the factor on the load at which the shear strength is reached, standing stress not
     * multiplied; 0 where that alone reaches it.
     *
     * @param x y shear stress of the load on faces normal to x and y [Pa]
     * @param standingX standingY the same of what stands all the time
     */
    public static double reserve(
            double x, double y, double standingX, double standingY, Strength strength) {
        double square = x * x + y * y;
        double mixed = x * standingX + y * standingY;
        double rest =
                strength.value() * strength.value() - standingX * standingX - standingY * standingY;
        if (rest <= 0) {
            return 0;
        }
        return square == 0
                ? Double.POSITIVE_INFINITY
                : rest / (mixed + Math.sqrt(mixed * mixed + square * rest));
    }
}
