/** What is cut and laid for a panel: piece by piece, in order, what each weighs. */
@NullMarked
package org.coachskin.bench;

import org.jspecify.annotations.NullMarked;
