package org.coachskin.failure;

import org.coachskin.laminate.Triple;
import org.coachskin.material.Strength;

/**
 * Tearing of the foam in its plane: the largest principal stress against the tensile strength. It
 * governs while a panel has one skin only; with two skins the foam hardly stretches.
 */
public final class CoreTension {

    private CoreTension() {}

    /** Returns the largest principal stress in the plane, zero or more [Pa]. */
    public static double largest(Triple stress) {
        double mean = (stress.x() + stress.y()) / 2;
        double half = (stress.x() - stress.y()) / 2;
        return Math.max(0, mean + StrictMath.hypot(half, stress.xy()));
    }

    /** Returns the factor on the load at which the foam tears; infinite where nothing pulls. */
    public static double reserve(Triple stress, Strength strength) {
        double largest = largest(stress);
        return largest == 0 ? Double.POSITIVE_INFINITY : strength.value() / largest;
    }
}
