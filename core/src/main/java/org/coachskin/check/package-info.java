/**
 * Runs every load and every failure mode on a panel and judges it: stiff enough, strong enough,
 * unmarked.
 */
@NullMarked
package org.coachskin.check;

import org.jspecify.annotations.NullMarked;
