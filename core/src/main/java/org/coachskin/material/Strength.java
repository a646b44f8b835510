package org.coachskin.material;

import org.coachskin.Require;
import org.coachskin.Source;

/**
 * A strength that says what it is.
 *
 * @param value the stress [Pa], above zero, also for compression
 * @param level whether it is a mean or a minimum; the default factor of safety follows it
 * @param event what happens at this stress
 * @param source where it comes from
 */
public record Strength(double value, Level level, Event event, Source source) {

    /** Checks that the value is above zero. */
    public Strength {
        Require.positive("strength", value, "Pa");
    }

    /** Returns this strength times {@code factor}, with everything else kept. */
    public Strength times(double factor) {
        return new Strength(value * factor, level, event, source);
    }

    /** Whether a strength is a mean or a minimum. */
    public enum Level {
        /** About half of all pieces are weaker. */
        MEAN,
        /** A guaranteed or specified minimum: few pieces are weaker. */
        MINIMUM
    }

    /** What happens when a strength is reached. */
    public enum Event {
        /** The resin starts to crack; the piece still carries load. */
        FIRST_CRACKING,
        /** The piece breaks, crushes or shears for good. */
        BREAKING
    }
}
