/** What would cure a panel, and how variants compare. */
@NullMarked
package org.coachskin.design;

import org.jspecify.annotations.NullMarked;
