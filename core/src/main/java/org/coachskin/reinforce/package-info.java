/** What must go around an opening, along an edge or a lip, or under a fitting. */
@NullMarked
package org.coachskin.reinforce;

import org.jspecify.annotations.NullMarked;
