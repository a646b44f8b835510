package org.coachskin.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.coachskin.TestFittings;
import org.coachskin.TestStacks;
import org.coachskin.analysis.Analysis;
import org.coachskin.analysis.CaseResponse;
import org.coachskin.analysis.Owed;
import org.coachskin.analysis.Response;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Patch;
import org.coachskin.panel.EverydayLoads;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Support;
import org.coachskin.series.SeriesAnalysis;
import org.junit.jupiter.api.Test;

/** What a movement is owed to, and what a little more or less of a stack does to it. */
class OwedTest {

    private static final double X = 0.4;

    private static final double Y = 0.3;

    private static final List<Load> PALM =
            List.of(new Load.Press(250, new Patch.Rectangle(0.1, 0.08), X, Y));

    private static Laminate stack(double foam, double g) {
        return TestStacks.sandwich(2, foam, 1, 12e6, g);
    }

    private static Panel lid() {
        return Panel.flat("lid", 0.9, 0.6, stack(0.012, 4.2e6));
    }

    private static Panel onFittings() {
        return lid().withSupport(new Support.Fittings(TestFittings.hinged(0.9, 0.6, 0.02)));
    }

    /** The parts are worked out one by one: none is what the others leave. */
    @Test
    void skinsFoamAndSealsShareTheWholeMovement() {
        Panel panel = onFittings();
        ShellPanel shell = new ShellPanel(panel, Drawn.grid(Drawn.mesh(panel, PALM), 3), 3, false);
        ShellResponse palm = shell.solve(PALM).minus(shell.solve(List.of()));
        Owed owed = palm.owed(X, Y);
        double whole = palm.deflection(X, Y);
        double[] unit = shell.unitAt(X, Y);
        double stretched =
                new Work(shell.model, palm.solution(), unit)
                        .against(
                                section -> {
                                    double[] rest = section.stiffness.clone();
                                    for (int i = 0; i < rest.length; i++) {
                                        rest[i] -= section.foamShear[i];
                                    }
                                    return rest;
                                });
        assertEquals(whole, owed.skins() + owed.foam() + owed.seals(), 1e-12 * whole);
        assertEquals(stretched, owed.skins(), 1e-8 * whole);
        assertTrue(owed.foam() > 0.2 * whole && owed.seals() > 0.01 * whole, owed.toString());
    }

    @Test
    void bothSolversShareItOutAlike() {
        Owed series = new SeriesAnalysis().statics(lid(), PALM).owed(X, Y);
        Owed shell = new ShellAnalysis().statics(lid(), PALM).owed(X, Y);
        double whole = series.skins() + series.foam();
        assertEquals(series.foam(), shell.foam(), 0.01 * whole);
        assertEquals(series.skins(), shell.skins(), 0.01 * whole);
        assertEquals(0, shell.seals());
    }

    @Test
    void aLittleMoreOfAStackDoesWhatSolvingAnewSays() {
        for (Panel panel : List.of(lid(), onFittings())) {
            Analysis shell = new ShellAnalysis(3, false);
            Panel thicker = panel.withLaminate(stack(0.0121, 4.2e6));
            Panel softer = panel.withLaminate(stack(0.012, 4.1e6));
            Response here = shell.statics(panel, PALM);
            List<Double> near = here.nearby(List.of(panel, thicker, softer), X, Y);
            double whole = here.deflection(X, Y);
            assertEquals(whole, near.get(0), 1e-12 * whole);
            for (int i = 1; i < 3; i++) {
                Panel other = i == 1 ? thicker : softer;
                double change = shell.statics(other, PALM).deflection(X, Y) - whole;
                assertEquals(change, near.get(i) - whole, 0.03 * Math.abs(change));
            }
        }
    }

    /** In a corner a palm presses the rubber solid, the wind lifts the lid off it. */
    @Test
    void aLittleMoreOfAStackDoesSoWhereRubberIsFreeOrSolid() {
        Panel panel = onFittings();
        Panel thicker = panel.withLaminate(stack(0.01205, 4.2e6));
        Panel stiffer = panel.withLaminate(stack(0.012, 1.005 * 4.2e6));
        LoadCase palm = EverydayLoads.named("palm").orElseThrow().at(0.06, 0.54);
        List<LoadCase> loads = List.of(palm, EverydayLoads.wind(110 / 3.6, 0.6));
        ShellAnalysis shell = new ShellAnalysis(3, false);
        List<CaseResponse> here = shell.loadCases(panel, loads);
        List<CaseResponse> there = shell.loadCases(thicker, loads);
        List<CaseResponse> lessSheared = shell.loadCases(stiffer, loads);
        assertTrue(here.get(0).held().seals().stream().anyMatch(place -> place.solid()));
        assertTrue(here.get(1).held().widestGap() > 0.003);
        for (int i = 0; i < 2; i++) {
            Response loaded = here.get(i).loaded();
            double whole = loaded.deflection(0.06, 0.54);
            double change = there.get(i).loaded().deflection(0.06, 0.54) - whole;
            double told = loaded.nearby(List.of(thicker), 0.06, 0.54).get(0) - whole;
            assertEquals(change, told, 0.03 * Math.abs(change));
            Owed owed = loaded.owed(0.06, 0.54);
            assertEquals(whole, owed.skins() + owed.foam() + owed.seals(), 1e-12 * Math.abs(whole));
            double spared = whole - lessSheared.get(i).loaded().deflection(0.06, 0.54);
            assertEquals(spared, 0.005 * owed.foam(), 0.03 * Math.abs(spared));
        }
    }

    @Test
    void theSeriesSolvesAnew() {
        Panel softer = lid().withLaminate(stack(0.012, 3e6));
        Response here = new SeriesAnalysis().statics(lid(), PALM);
        double anew = new SeriesAnalysis().statics(softer, PALM).deflection(X, Y);
        assertEquals(anew, here.nearby(List.of(softer), X, Y).get(0), 1e-12 * anew);
    }
}
