/**
 * The panel file, in: YAML to a job, with every mistake found at once.
 *
 * <p><b>Read in this order.</b> {@link org.coachskin.cli.file.PanelFile} is what a file says;
 * {@code TextFile} and {@code Yaml} turn a file into nodes that know their line; {@code Section}
 * reads the keys of one map and notes what is wrong with them in {@code Findings}; {@code
 * PanelReader} puts together what {@code MaterialSection} (with {@code FoamSection} and {@code
 * PlySection}), {@code ScheduleSection} (with {@code PlyList}), {@code GroundSection}, {@code
 * HeldSection} (with {@code FittingSection} and {@code Pads}), {@code ZoneSection} (with {@code
 * RegionSection}), {@code LoadSection} (with {@code PlaceSection}) and {@code LimitSection} read;
 * {@code Tape} and {@code Ground} say where things are and whether they lie on the panel.
 */
@NullMarked
package org.coachskin.cli.file;

import org.jspecify.annotations.NullMarked;
