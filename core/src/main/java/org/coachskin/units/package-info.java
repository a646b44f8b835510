/**
 * Text to SI and back: what a tape, a scale and a label give.
 *
 * <p>Used by what reads and writes; everything else in the library is in SI units. {@link
 * org.coachskin.units.Dimension} is what kind of quantity a number is.
 */
@NullMarked
package org.coachskin.units;

import org.jspecify.annotations.NullMarked;
