/**
 * Triangles that follow every line of a panel: its rim, the rims of its holes, and every line drawn
 * on it, straight or round.
 *
 * <p><b>Read in this order.</b> {@link org.coachskin.mesh.Curve} and {@link
 * org.coachskin.mesh.Loop} are lines as data, arcs exact; {@link org.coachskin.mesh.Drawing} is a
 * panel as it is drawn, with {@link org.coachskin.mesh.Wishes} for the edges; {@link
 * org.coachskin.mesh.Mesher} makes the {@link org.coachskin.mesh.Mesh}.
 *
 * <p><b>Way.</b> Lines that all but lie on one another are laid together ({@code Snapper}), every
 * line is divided as its wish says ({@code Divider}), a constrained Delaunay triangulation is made
 * ({@code Triangulation}) and refined until no corner is too sharp and no edge too long ({@code
 * Refiner}). Lengths in m, angles in rad; the same drawing gives the same mesh to the last bit.
 *
 * <p><b>Source.</b> J. Ruppert, A Delaunay refinement algorithm for quality 2-dimensional mesh
 * generation, J. Algorithms 18 (1995) 548-585, with the off-centres of A. Ungor (2004) and the
 * rules for sharp corners of J. R. Shewchuk, Delaunay refinement algorithms for triangular mesh
 * generation, Comput. Geom. 22 (2002) 21-74; all from memory.
 */
@NullMarked
package org.coachskin.mesh;

import org.jspecify.annotations.NullMarked;
