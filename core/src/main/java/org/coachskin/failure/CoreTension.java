package org.coachskin.failure;

import org.coachskin.laminate.Sym2;
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

    /**
     * Returns the factor on {@code stress} at which the foam tears with the standing stress added;
     * 0 where that alone tears it, infinite where nothing pulls.
     *
     * @param standing stress that stands all the time [Pa]
     */
    public static double reserve(Triple stress, Triple standing, Strength strength) {
        double t = strength.value();
        return PlaneReach.of(new Sym2(t - standing.x(), -standing.xy(), t - standing.y()), stress);
    }
}
