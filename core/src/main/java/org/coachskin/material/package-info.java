/**
 * What is bought: fibres, cloths, resins and foams, each number with its source.
 *
 * <p><b>Read in this order.</b> {@link org.coachskin.material.Strength} is a strength that says
 * whether it is a mean or a minimum and which event it marks; {@link org.coachskin.material.Fibre},
 * {@link org.coachskin.material.Cloth}, {@link org.coachskin.material.Resin} and {@link
 * org.coachskin.material.Foam} are what a maker buys; {@link
 * org.coachskin.material.MaterialLibrary} holds the tables.
 *
 * <p><b>Units.</b> SI: Pa, m, kg/m^2 for cloth, kg/m^3, 1/K.
 */
@NullMarked
package org.coachskin.material;

import org.jspecify.annotations.NullMarked;
