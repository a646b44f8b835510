/**
 * Fourier solution for a rectangular panel carried along its whole rim: exact for its case, and the
 * independent witness for every other solver.
 */
@NullMarked
package org.coachskin.series;

import org.jspecify.annotations.NullMarked;
