package org.coachskin.check;

/**
 * Where a mode governs.
 *
 * @param words as a maker says it, for example {@code outside skin, second ply, under the palm}
 * @param x from the left edge [m]
 * @param y from the front edge [m]
 * @param z outward from mid-height of the stack [m]
 */
public record Place(String words, double x, double y, double z) {}
