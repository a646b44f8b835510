/**
 * Fourier solution for a rectangular panel carried along its whole rim: exact for its case, and the
 * independent witness for every other solver.
 *
 * <p>{@link org.coachskin.series.SeriesAnalysis} answers in layered or first-order theory like any
 * other {@code Analysis}. {@link org.coachskin.series.FullLayeredAnalysis} answers with what each
 * skin and the foam do by themselves, which one state of the section cannot hold.
 */
@NullMarked
package org.coachskin.series;

import org.jspecify.annotations.NullMarked;
