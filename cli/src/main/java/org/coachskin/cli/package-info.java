/** What faces a person at a terminal. Commands compute nothing. */
@NullMarked
package org.coachskin.cli;

import org.jspecify.annotations.NullMarked;
