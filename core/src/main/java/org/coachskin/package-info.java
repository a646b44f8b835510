/**
 * What every other package of the library stands on: where a number comes from, and how a person is
 * told what to put right.
 *
 * <p><b>Read in this order.</b> {@link org.coachskin.Source} says where a number comes from and how
 * far it may be trusted; {@link org.coachskin.Problem} is one thing a person can put right; {@link
 * org.coachskin.InputException} carries problems; {@link org.coachskin.NoAnswerException} is thrown
 * where this version has no answer; {@link org.coachskin.Require} guards constructors; {@link
 * org.coachskin.Table} reads the tables of the library.
 *
 * <p>All quantities in this library are in SI units (m, kg, s, N, Pa, K, rad) unless a type in
 * {@code units} says otherwise. All records are immutable and safe to share between threads.
 */
@NullMarked
package org.coachskin;

import org.jspecify.annotations.NullMarked;
