package org.coachskin.analysis;

import org.coachskin.laminate.Triple;

/**
 * Resultants per width at one place, about mid-height of the stack.
 *
 * @param n membrane forces [N/m]
 * @param m bending moments of the whole section [N]
 * @param qx transverse shear force on a face normal to x, skins and foam together [N/m]
 * @param qy transverse shear force on a face normal to y [N/m]
 */
public record SectionForces(Triple n, Triple m, double qx, double qy) {}
