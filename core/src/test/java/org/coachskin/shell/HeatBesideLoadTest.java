package org.coachskin.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.coachskin.TestStacks;
import org.coachskin.analysis.CaseResponse;
import org.coachskin.analysis.Response;
import org.coachskin.laminate.Patch;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Panel;
import org.junit.jupiter.api.Test;

/** What stands and what a load adds to it. */
class HeatBesideLoadTest {

    private static final Panel LID =
            Panel.flat("lid", 0.5, 0.4, TestStacks.sandwich(2, 0.012, 1, 12e6, 4.2e6));

    private static void same(Response expected, Response found) {
        double x = 0.2;
        double y = 0.17;
        double m = expected.forces(x, y).m().x();
        assertEquals(m, found.forces(x, y).m().x(), 1e-9 * Math.abs(m));
        double w = expected.deflection(x, y);
        assertEquals(w, found.deflection(x, y), 1e-9 * Math.abs(w));
    }

    @Test
    void forcesOfALoadAreThoseOfTheLoadAloneWhenTheSunStands() {
        Load.Pressure pressure = new Load.Pressure(800);
        Load.Heat heat = new Load.Heat(40, 10);
        LoadCase load =
                new LoadCase(
                        "wind",
                        List.of(pressure),
                        List.of(heat),
                        LoadCase.Kind.SPREAD,
                        true,
                        false);
        ShellAnalysis shell = new ShellAnalysis();
        CaseResponse answer = shell.loadCases(LID, List.of(load)).get(0);
        same(shell.statics(LID, List.of(pressure)), answer.loaded());
        same(shell.statics(LID, List.of(pressure.reversed())), answer.reversed());
        same(shell.statics(LID, List.of(heat)), answer.standing());
    }

    @Test
    void warmingTwiceIsWarmingByTheSum() {
        ShellAnalysis shell = new ShellAnalysis();
        same(
                shell.statics(LID, List.of(new Load.Heat(40, 10))),
                shell.statics(LID, List.of(new Load.Heat(30, 0), new Load.Heat(10, 10))));
    }

    @Test
    void aPressBesideThePanelIsRefused() {
        Load beside = new Load.Press(100, new Patch.Rectangle(0.02, 0.02), 0.7, 0.2);
        assertThrows(
                IllegalArgumentException.class,
                () -> new ShellAnalysis().statics(LID, List.of(beside)));
    }
}
