package org.coachskin.panel;

import java.util.Locale;

/** One of the four sides of a panel, as a tape measures them. */
public enum Edge {
    /** y = 0; runs from left to right. */
    FRONT,
    /** y = length; runs from left to right. */
    REAR,
    /** x = 0; runs from front to rear. */
    LEFT,
    /** x = width; runs from front to rear. */
    RIGHT;

    /**
     * Returns the edge whose outward normal is nearest to a direction; front or rear where that
     * points as far to the front or rear as to the left or right.
     */
    public static Edge facing(double x, double y) {
        if (Math.abs(x) > Math.abs(y) && !isBetween(x, y)) {
            return x < 0 ? LEFT : RIGHT;
        }
        return y < 0 ? FRONT : REAR;
    }

    /** Returns whether a direction points as far to the front or rear as to the left or right. */
    public static boolean isBetween(double x, double y) {
        return Math.abs(Math.abs(x) - Math.abs(y)) < 1e-9 * (Math.abs(x) + Math.abs(y));
    }

    /** Returns whether the edge runs along x. */
    public boolean alongX() {
        return this == FRONT || this == REAR;
    }

    /** Returns what it is called: {@code front edge}. */
    public String words() {
        return name().toLowerCase(Locale.ROOT) + " edge";
    }

    /** Returns what the end is called that a tape along the edge starts from. */
    public String start() {
        return alongX() ? "left" : "front";
    }

    /** Returns what the other end is called. */
    public String end() {
        return alongX() ? "right" : "rear";
    }

    /** Returns the length of this edge of {@code panel}, corners included [m]. */
    public double length(Panel panel) {
        return alongX() ? panel.width() : panel.length();
    }

    /** Returns where the edge lies, y for front and rear, x for left and right [m]. */
    public double position(Panel panel) {
        return switch (this) {
            case FRONT, LEFT -> 0;
            case REAR -> panel.length();
            case RIGHT -> panel.width();
        };
    }
}
