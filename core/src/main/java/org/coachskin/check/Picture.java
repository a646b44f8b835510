package org.coachskin.check;

import java.util.List;
import java.util.Optional;
import org.coachskin.analysis.Field;

/**
 * What can be drawn of a verdict.
 *
 * @param moved how far each load case moves the panel, in the order of the job
 * @param through stress through the thickness where skins or foam go first; empty where no load
 *     bears on them
 * @param readings of a gauge under the panel, weight by weight; empty where no palm presses
 */
public record Picture(List<Moved> moved, Optional<Through> through, List<Reading> readings) {

    /** Copies the lists. */
    public Picture {
        moved = List.copyOf(moved);
        readings = List.copyOf(readings);
    }

    /**
     * Movement under one load case, counted from where the panel is without it; without a skin's
     * sinking into the foam.
     *
     * @param load the load case
     * @param field how far each place goes in [m]
     * @param most where the panel moves most, in or out
     * @param across through that place from left to right; nothing where an opening is
     * @param along through it from front to rear
     */
    public record Moved(
            String load, Field field, Field.Node most, List<Cut> across, List<Cut> along) {
        /** Copies the lists. */
        public Moved {
            across = List.copyOf(across);
            along = List.copyOf(along);
        }
    }

    /**
     * One place of a cut.
     *
     * @param at from the left or the front edge [m]
     * @param movement how far it goes in [m]; NaN where there is no panel
     */
    public record Cut(double at, double movement) {}

    /**
     * What a gauge should read under a weight that is two thirds at most of what would break or
     * mark the panel there.
     *
     * @param mass set on the panel [kg]
     * @param movement of the inside surface under it [m]
     * @param low what one panel in ten stays under [m]
     * @param high what one panel in ten goes beyond [m]
     */
    public record Reading(double mass, double movement, double low, double high) {}
}
