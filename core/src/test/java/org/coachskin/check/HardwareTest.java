package org.coachskin.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.coachskin.TestFittings;
import org.coachskin.TestSchedules;
import org.coachskin.failure.Mode;
import org.coachskin.panel.Crown;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Support;
import org.junit.jupiter.api.Test;

class HardwareTest {

    /** Pressure inward on a lid on hinges, latch and a seal that pulls at them all the time. */
    private static double punching(double pressure, boolean reverses) {
        LoadCase load =
                new LoadCase(
                        "air",
                        List.of(new Load.Pressure(pressure)),
                        List.of(),
                        LoadCase.Kind.SPREAD,
                        reverses,
                        false);
        Job job =
                Job.of(
                        "lid",
                        0.9,
                        0.6,
                        Crown.FLAT,
                        new Support.Fittings(TestFittings.hinged(0.9, 0.6, 0.02)),
                        TestSchedules.sandwich(2, 0.015, 1),
                        List.of(load),
                        Limits.STANDARD);
        return PanelCheck.brief().margins(job).stream()
                .filter(margin -> margin.mode() == Mode.PUNCHING)
                .mapToDouble(Margin::reserve)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aLoadThatComesBothWaysPunchesByItsWorseOne() {
        double inward = punching(400, false);
        double outward = punching(-400, false);
        double both = punching(400, true);

        assertTrue(Math.abs(inward - outward) > 0.05 * outward, inward + " and " + outward);
        assertEquals(Math.min(inward, outward), both, 1e-9 * both);
        assertEquals(both, punching(-400, true), 1e-9 * both);
    }
}
