/**
 * When a ply, a skin or the foam gives up: published criteria, each with its limits of validity.
 *
 * <p>A <em>reserve</em> is the factor by which the load may grow until the mode is reached;
 * standing stress (thermal, say) is not multiplied. A reserve at or below zero is not possible:
 * what fails before any load has reserve 0.
 */
@NullMarked
package org.coachskin.failure;

import org.jspecify.annotations.NullMarked;
