package org.coachskin.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Height;
import org.coachskin.panel.Panel;

/**
 * What of a pad lies on a panel, as a rectangle.
 *
 * @param pad which
 * @param x of its middle, from the left edge [m]
 * @param y from the front edge [m]
 * @param halfX half its extent along x [m]
 * @param halfY along y [m]
 */
record PadPlace(Fitting.Pad pad, double x, double y, double halfX, double halfY) {

    /** Steps across a pad in which it is looked for the panel under it. */
    private static final int STEPS = 20;

    /**
     * Returns the places of pads that hold inward and outward by a face of the panel; one that
     * holds at mid-height, as a pin in a solid insert does, presses on neither.
     */
    static List<PadPlace> of(Panel panel) {
        List<PadPlace> places = new ArrayList<>();
        for (Fitting.Pad pad : panel.support().pads()) {
            if (pad.held().contains(Fitting.Direction.Z) && pad.height() != Height.MIDDLE) {
                of(panel, pad)
                        .filter(place -> !panel.laminateAt(place.x(), place.y()).isBare())
                        .ifPresent(places::add);
            }
        }
        return places;
    }

    private static Optional<PadPlace> of(Panel panel, Fitting.Pad pad) {
        double left = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double front = Double.POSITIVE_INFINITY;
        double rear = Double.NEGATIVE_INFINITY;
        double stepX = pad.sizeX() / STEPS;
        double stepY = pad.sizeY() / STEPS;
        for (int i = 0; i < STEPS; i++) {
            for (int j = 0; j < STEPS; j++) {
                double x = pad.x() + (i + 0.5 - STEPS / 2) * stepX;
                double y = pad.y() + (j + 0.5 - STEPS / 2) * stepY;
                if (panel.hasMaterialAt(x, y)) {
                    left = Math.min(left, x - stepX / 2);
                    right = Math.max(right, x + stepX / 2);
                    front = Math.min(front, y - stepY / 2);
                    rear = Math.max(rear, y + stepY / 2);
                }
            }
        }
        left = Math.max(left, 0);
        right = Math.min(right, panel.width());
        front = Math.max(front, 0);
        rear = Math.min(rear, panel.length());
        return left < right && front < rear
                ? Optional.of(
                        new PadPlace(
                                pad,
                                (left + right) / 2,
                                (front + rear) / 2,
                                rounded((right - left) / 2),
                                rounded((rear - front) / 2)))
                : Optional.empty();
    }

    /** So that pads that are alike are so to the last digit. */
    private static double rounded(double metres) {
        return Math.rint(metres * 1e9) / 1e9;
    }
}
