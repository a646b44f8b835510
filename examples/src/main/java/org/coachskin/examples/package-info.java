/**
 * Short programs for whoever calls the library: each builds a panel of the workshop from the
 * tables, asks one question and prints the answer.
 */
@NullMarked
package org.coachskin.examples;

import org.jspecify.annotations.NullMarked;
