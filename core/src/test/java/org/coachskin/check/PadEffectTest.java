package org.coachskin.check;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import org.coachskin.TestSchedules;
import org.coachskin.analysis.CaseResponse;
import org.coachskin.analysis.Response;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Patch;
import org.coachskin.laminate.Schedule;
import org.coachskin.laminate.SectionState;
import org.coachskin.laminate.Triple;
import org.coachskin.local.LocalEffect;
import org.coachskin.panel.Crown;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Height;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Support;
import org.coachskin.series.FullLayeredAnalysis;
import org.coachskin.series.FullLayeredResponse;
import org.coachskin.series.FullLayeredSection;
import org.coachskin.series.SeriesAnalysis;
import org.coachskin.shell.ShellAnalysis;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a pad does to skins and foam, against the full layered theory of the panel turned over,
 * whose pad is a press on the outside.
 */
class PadEffectTest {

    private static final double BLOWN = 2000;

    private static Job job(double x, double y, Crown crown, Schedule schedule) {
        List<Fitting> held = new ArrayList<>();
        for (Edge edge : Edge.values()) {
            held.add(Fitting.HeldEdge.carried(edge));
        }
        held.add(
                new Fitting.Pad(
                        "rest",
                        x,
                        y,
                        0.04,
                        0.04,
                        EnumSet.of(Fitting.Direction.Z),
                        Double.POSITIVE_INFINITY,
                        Height.INSIDE));
        return Job.of(
                "shelf",
                0.6,
                0.5,
                crown,
                new Support.Fittings(held),
                schedule,
                List.of(LoadCase.of("wind", LoadCase.Kind.SPREAD, new Load.Pressure(BLOWN))),
                Limits.STANDARD);
    }

    private static Load press(Panel panel, double force) {
        PadPlace place = PadPlace.of(panel).get(0);
        return new Load.Press(
                force,
                new Patch.Rectangle(2 * place.halfX(), 2 * place.halfY()),
                place.x(),
                place.y());
    }

    /** In layered theory it does not matter which face is pushed. */
    private static Response layered(Panel panel, double force) {
        return new SeriesAnalysis()
                .statics(
                        panel.withSupport(new Support.WholeRim()),
                        List.of(new Load.Pressure(BLOWN), press(panel, -force)));
    }

    private static FullLayeredResponse turnedOver(Panel panel, double force) {
        Crown crown = panel.crown();
        Panel over =
                new Panel(
                        "turned over",
                        panel.width(),
                        panel.length(),
                        new Crown(-crown.across(), -crown.along()),
                        panel.laminate().turnedOver(),
                        new Support.WholeRim());
        return new FullLayeredAnalysis()
                .statics(over, List.of(new Load.Pressure(-BLOWN), press(panel, force)));
    }

    private static List<Stations.Station> places(Job job) {
        Response.Spot somewhere = new Response.Spot(0.5, 0.4);
        return Stations.of(job.panel(), job.loads().get(0), List.of(somewhere)).stream()
                .filter(at -> at.judged() == Stations.Judged.PLIES)
                .toList();
    }

    /** The largest difference of a figure to the whole theory, with the effect and without. */
    private static final class Off {
        private double with;
        private double without;
        private double largest;

        void add(double plain, double more, double whole) {
            with = Math.max(with, Math.abs(plain + more - whole));
            without = Math.max(without, Math.abs(plain - whole));
            largest = Math.max(largest, Math.abs(whole));
        }

        void assertSmall(double part) {
            assertTrue(with < 0.01 * largest, with + " of " + largest);
            assertTrue(without > part * largest, without + " of " + largest);
        }
    }

    /** In the middle, off it, near an edge, cut by it, on a crown. */
    @ParameterizedTest
    @CsvSource({"0.3,0.25,0", "0.17,0.31,0", "0.03,0.25,0", "0.005,0.25,0", "0.3,0.25,0.3"})
    void skinsAndFoamAreStrainedAsInFullLayeredTheory(double x, double y, double curved) {
        double force = 120;
        Job job = job(x, y, new Crown(curved, curved), TestSchedules.sandwich(2, 0.015, 1));
        Response layered = layered(job.panel(), force);
        FullLayeredResponse full = turnedOver(job.panel(), force);
        PadEffect effect = PadEffect.of(job.panel()).get(0);
        Stack stack = new Stack(job.panel().laminate());
        double half = stack.laminate.thickness() / 2;
        double from = stack.layered.foamBottom();
        double foam = stack.layered.foamTop() - from;
        Off skins = new Off();
        Off shear = new Off();
        for (Stations.Station at : places(job)) {
            SectionState state = at.state(layered);
            LocalEffect.Here here = effect.at(at.x(), at.y());
            FullLayeredSection there = full.at(at.x(), at.y());
            for (double z : new double[] {-half, half, -half + 3e-4, half - 3e-4}) {
                Triple plain = state.strainAt(stack.layered, z);
                Triple more = here.strain(z).times(force);
                Triple whole = there.strain(-z);
                skins.add(plain.x(), more.x(), whole.x());
                skins.add(plain.y(), more.y(), whole.y());
                skins.add(plain.xy(), more.xy(), whole.xy());
            }
            double plain = stack.foamShear(state).get(0).xz();
            for (double share : new double[] {0.125, 0.5, 0.875}) {
                double whole = -there.foam(-(from + share * foam)).xz();
                shear.add(plain, force * here.foam(share).x(), whole);
            }
        }
        skins.assertSmall(0.3);
        shear.assertSmall(0.05);
    }

    /** The places chosen beside a pad must find what a close look finds. */
    @ParameterizedTest
    @CsvSource({"0.3, 0.25, 0.015", "0.17, 0.31, 0.015", "0.03, 0.25, 0.015", "0.3, 0.25, 0.030"})
    void theVerdictFindsTheLeastReserveOfThePliesByThePad(double x, double y, double foam) {
        Job job = job(x, y, Crown.FLAT, TestSchedules.sandwich(2, foam, 1));
        CaseResponse answer = new ShellAnalysis().loadCases(job.panel(), job.loads()).get(0);
        double force = answer.held().grips().get(0).force();
        assertTrue(force > 50, force + " N");
        Margin found =
                new CaseCheck(
                                job,
                                new Stacks(job.panel()),
                                PadEffect.of(job.panel()),
                                job.loads().get(0),
                                answer)
                        .margins().stream()
                                .filter(margin -> margin.mode().isOfPlies())
                                .reduce((a, b) -> a.multiplier() < b.multiplier() ? a : b)
                                .orElseThrow();
        assertTrue(found.place().words().contains("rest"), found.toString());
        FullLayeredResponse full = turnedOver(job.panel(), force);
        Laminate laminate = job.panel().laminate();
        double least = Double.POSITIVE_INFINITY;
        for (double dx = -0.03; dx < 0.031; dx += 0.0015) {
            for (double dy = -0.03; dy < 0.031; dy += 0.0015) {
                FullLayeredSection there = full.at(x + dx, y + dy);
                least = Math.min(least, PlyReserve.least(laminate, 1e-6, z -> there.strain(-z)));
            }
        }
        assertTrue(found.multiplier() < least * (1 + found.methodError()), found + " " + least);
        assertTrue(found.multiplier() > least * 0.97, found + " " + least);
    }
}
