package org.coachskin.cli.file;

import java.util.OptionalDouble;
import org.coachskin.units.Dimension;
import org.coachskin.units.Unit;

/** Numbers of a section, and whether all that were asked for came. */
final class Numbers {

    private final Section keys;
    private boolean complete = true;

    Numbers(Section keys) {
        this.keys = keys;
    }

    /** Returns a number that must be there; NaN and noted where it is not. */
    double need(String key, Dimension dimension, double low, double high) {
        if (!keys.has(key)) {
            String unit = Unit.of(dimension).get(0).symbol();
            keys.missing(
                    "\"" + key + "\" is missing here.",
                    ("Write   " + key + ": ... " + unit).strip());
            complete = false;
            return Double.NaN;
        }
        return value(key, dimension, low, high);
    }

    /** Returns a number, or {@code otherwise} where the key is absent; NaN where it is wrong. */
    double or(String key, Dimension dimension, double low, double high, double otherwise) {
        return keys.has(key) ? value(key, dimension, low, high) : otherwise;
    }

    private double value(String key, Dimension dimension, double low, double high) {
        OptionalDouble value = keys.quantity(key, dimension, low, high);
        complete = complete && value.isPresent();
        return value.orElse(Double.NaN);
    }

    boolean complete() {
        return complete;
    }
}
