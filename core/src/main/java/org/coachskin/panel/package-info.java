/**
 * A panel as data: outline, crown, stack, what holds it, what presses on it. Checked on
 * construction, nothing is calculated here.
 *
 * <p><b>Axes.</b> x from the left edge to the right, y from the front edge to the rear, z outward;
 * the origin is the left front corner.
 */
@NullMarked
package org.coachskin.panel;

import org.jspecify.annotations.NullMarked;
