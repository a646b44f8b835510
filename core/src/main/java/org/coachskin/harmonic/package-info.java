/**
 * The stiffness of one sine wave of a panel in three theories: first order, layered, full layered.
 *
 * <p>A panel whose stack decouples (A16 = A26 = B16 = B26 = D16 = D26 = H12 = 0) and whose rim is
 * carried all round answers a sine wave of load by a sine wave of every field. This package holds
 * the matrix that connects the two, once, for whoever sums waves.
 */
@NullMarked
package org.coachskin.harmonic;

import org.jspecify.annotations.NullMarked;
