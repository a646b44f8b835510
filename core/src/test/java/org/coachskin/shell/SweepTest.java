package org.coachskin.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.coachskin.TestFittings;
import org.coachskin.TestStacks;
import org.coachskin.analysis.CaseResponse;
import org.coachskin.analysis.Held;
import org.coachskin.analysis.Response;
import org.coachskin.laminate.Patch;
import org.coachskin.panel.Crown;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Support;
import org.junit.jupiter.api.Test;

/** A press moved over a panel against the same press followed by the mesh. */
class SweepTest {

    private static final Panel LID =
            new Panel(
                    "lid",
                    0.9,
                    0.6,
                    Crown.FLAT,
                    TestStacks.sandwich(2, 0.012, 1, 12e6, 4.2e6),
                    new Support.Fittings(TestFittings.hinged(0.9, 0.6, 0.02)));

    private static final ShellAnalysis SHELL = new ShellAnalysis(3, false);

    private static void agrees(Patch patch, double force, double x, double y, boolean solid) {
        Load.Press press = new Load.Press(force, patch, x, y);
        double swept = SHELL.swept(LID, press, List.of(), List.of(new Response.Spot(x, y))).get(0);
        CaseResponse followed =
                SHELL.loadCases(LID, List.of(LoadCase.of("hand", LoadCase.Kind.FELT, press)))
                        .get(0);
        assertEquals(
                solid, followed.held().seals().stream().anyMatch(Held.SealPlace::solid), "solid");
        double there = followed.loaded().deflection(x, y);
        assertEquals(there, swept, 0.015 * there);
    }

    @Test
    void aPalmInTheMiddleMovesItAsFar() {
        agrees(new Patch.Rectangle(0.1, 0.08), 250, 0.45, 0.3, false);
    }

    @Test
    void aPalmInACornerPressesTheRubberSolid() {
        agrees(new Patch.Rectangle(0.1, 0.08), 250, 0.05, 0.56, true);
    }

    @Test
    void aDiscPressesAsFar() {
        agrees(new Patch.Disc(0.1), 100, 0.6, 0.2, false);
    }

    @Test
    void manyPlacesAtOnceAreTheSameAsOneByOne() {
        Load.Press press = new Load.Press(250, new Patch.Rectangle(0.1, 0.08), 0, 0);
        List<Response.Spot> places =
                IntStream.range(0, 19)
                        .mapToObj(i -> new Response.Spot(0.05 + 0.04 * i, 0.1 + 0.02 * i))
                        .toList();
        List<Double> together = SHELL.swept(LID, press, List.of(), places);
        for (int i = 0; i < places.size(); i += 6) {
            double alone = SHELL.swept(LID, press, List.of(), places.subList(i, i + 1)).get(0);
            assertEquals(alone, together.get(i), 1e-9 * Math.abs(alone));
        }
    }

    @Test
    void aPatchThatHangsOverIsRefused() {
        Load.Press press = new Load.Press(250, new Patch.Rectangle(0.1, 0.08), 0, 0);
        String message =
                assertThrows(
                                IllegalArgumentException.class,
                                () ->
                                        SHELL.swept(
                                                LID,
                                                press,
                                                List.of(),
                                                List.of(new Response.Spot(0.02, 0.3))))
                        .getMessage();
        assertTrue(message != null && message.contains("hangs over"), message);
    }
}
