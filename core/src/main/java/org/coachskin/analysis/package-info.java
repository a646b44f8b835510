/**
 * The waist of the library: whoever asks what a panel does under load does not know which solver
 * answers, but the answer says so.
 */
@NullMarked
package org.coachskin.analysis;

import org.jspecify.annotations.NullMarked;
