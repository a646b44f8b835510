package org.coachskin;

import java.util.List;
import java.util.Set;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Height;

/** What holds the lids of many tests. */
public final class TestFittings {

    private TestFittings() {}

    /** Two hinges in front, a latch in the middle of the rear, all so far in, and a rubber seal. */
    public static List<Fitting> hinged(double width, double length, double in) {
        return List.of(
                Fitting.Pad.hinge("left hinge", 0.15, in),
                Fitting.Pad.hinge("right hinge", width - 0.15, in),
                Fitting.Pad.latch("latch", width / 2, length - in),
                Fitting.RubberSeal.allRound());
    }

    /** A rigid square pad that holds the middle of the thickness. */
    public static Fitting.Pad pad(double x, double y, double side, Fitting.Direction... held) {
        double rigid = Double.POSITIVE_INFINITY;
        return new Fitting.Pad("pad", x, y, side, side, Set.of(held), rigid, Height.MIDDLE);
    }
}
