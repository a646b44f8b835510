/**
 * The panel file, in: YAML to a job, with every mistake found at once.
 *
 * <p><b>Read in this order.</b> {@link org.coachskin.cli.file.PanelFile} is what a file says;
 * {@code Yaml} turns text into nodes that know their line; {@code Section} reads the keys of one
 * map and notes what is wrong with them; {@code MaterialSection}, {@code ScheduleSection}, {@code
 * LoadSection} and {@code LimitSection} read the parts.
 */
@NullMarked
package org.coachskin.cli.file;

import org.jspecify.annotations.NullMarked;
