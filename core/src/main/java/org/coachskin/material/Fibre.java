package org.coachskin.material;

import org.coachskin.Require;
import org.coachskin.Source;

/**
 * A fibre, transversely isotropic about its own direction 1.
 *
 * @param name how it is called
 * @param e1 Young's modulus along the fibre [Pa]
 * @param e2 Young's modulus across the fibre [Pa]
 * @param g12 shear modulus along the fibre [Pa]
 * @param nu12 contraction across per stretch along [-]
 * @param nu23 contraction across per stretch across [-]
 * @param density [kg/m^3]
 * @param alpha1 thermal expansion along the fibre [1/K]
 * @param alpha2 thermal expansion across the fibre [1/K]
 * @param tension tensile strength of the fibre in a laminate, along the fibre
 * @param source where the constants come from
 */
public record Fibre(
        String name,
        double e1,
        double e2,
        double g12,
        double nu12,
        double nu23,
        double density,
        double alpha1,
        double alpha2,
        Strength tension,
        Source source) {

    /** Checks signs. */
    public Fibre {
        Require.positive("E1 of " + name, e1, "Pa");
        Require.positive("E2 of " + name, e2, "Pa");
        Require.positive("G12 of " + name, g12, "Pa");
        Require.within("nu12 of " + name, nu12, 0, 0.5, "");
        Require.within("nu23 of " + name, nu23, 0, 0.95, "");
        Require.positive("density of " + name, density, "kg/m^3");
    }
}
