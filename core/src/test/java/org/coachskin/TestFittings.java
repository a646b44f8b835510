package org.coachskin;

import java.util.List;
import org.coachskin.panel.Fitting;

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
}
