package org.coachskin.series;

/**
 * Stress in the foam at one height, in panel axes, tension positive [Pa].
 *
 * @param x on a face normal to x
 * @param y on a face normal to y
 * @param z through the thickness
 * @param xy shear in the plane
 * @param xz shear through the thickness, on a face normal to x
 * @param yz shear through the thickness, on a face normal to y
 */
public record FoamStress(double x, double y, double z, double xy, double xz, double yz) {}
