package org.coachskin.cli.file;

import java.util.List;
import java.util.Locale;

/**
 * Something on a panel against the two edges of one direction.
 *
 * @param low name of the edge that the tape starts from
 * @param high name of the other edge
 * @param adjective what the direction is called
 * @param side of the panel [m]
 * @param half of the thing [m]
 * @param at its centre [m]
 */
record Side(String low, String high, String adjective, double side, double half, double at) {

    /** Returns the two directions of a panel for a thing of that size. */
    static List<Side> both(Ground ground, double halfX, double halfY, double x, double y) {
        return List.of(
                new Side("left", "right", "wide", ground.width(), halfX, x),
                new Side("front", "rear", "long", ground.length(), halfY, y));
    }

    boolean isHigh() {
        return at > side / 2;
    }

    /** How far it hangs over [m]. */
    double past() {
        return half + Math.abs(at - side / 2) - side / 2;
    }

    String what(String name) {
        return String.format(
                Locale.ROOT,
                "The %s is %s %s and would hang %s over the %s edge (the panel is %s %s).",
                name,
                mm(2 * half),
                adjective,
                mm(past()),
                edge(),
                mm(side),
                adjective);
    }

    /** Name of the edge that it hangs over. */
    String edge() {
        return isHigh() ? high : low;
    }

    boolean isTooLarge() {
        return 2 * half > side;
    }

    /** The tape's reading that just fits, as a line to write. */
    String fix() {
        return String.format(
                Locale.ROOT,
                "Write   from %s: %s   or %s",
                low,
                mm(isHigh() ? side - half : half),
                isHigh() ? "less" : "more");
    }

    static String mm(double length) {
        return Math.round(1000 * length) + " mm";
    }
}
