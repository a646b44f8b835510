/**
 * What a patch does to skins and foam around it: the full layered theory in a periodic cell, as the
 * difference to the layered theory.
 */
@NullMarked
package org.coachskin.local;

import org.jspecify.annotations.NullMarked;
