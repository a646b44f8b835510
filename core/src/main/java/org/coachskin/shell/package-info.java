/**
 * A panel on its real supports, by finite elements.
 *
 * <p>A shallow shell in layered theory (u, v, w, one pair of rotations for both skins and one for
 * the foam; {@link org.coachskin.laminate.LayeredStiffness}) on triangles of high order. The
 * displacement u, v is that of the panel's outside surface everywhere, so zones of unlike thickness
 * share it and their offset is carried by the coupling terms. Where there is no foam the foam's
 * rotation follows the skins'; so it does along the line where the foam ends.
 *
 * <p>Polynomials of order four and more on triangles are free of shear and membrane locking for all
 * practical ends (Babuska and Suri, <i>On locking and robustness in the finite element method</i>,
 * SIAM J. Numer. Anal. 29, 1992; from memory); tests go down to a thickness of 1e-4 of the side.
 *
 * <p><b>Signs.</b> z and w outward, &gamma; = &phi; + grad w, as in {@link org.coachskin.laminate}.
 */
@NullMarked
package org.coachskin.shell;

import org.jspecify.annotations.NullMarked;
