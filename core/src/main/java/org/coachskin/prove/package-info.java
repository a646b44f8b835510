/**
 * What a shop test should read, so that a panel can be confirmed with a scale, a gauge and a
 * bucket.
 */
@NullMarked
package org.coachskin.prove;

import org.jspecify.annotations.NullMarked;
