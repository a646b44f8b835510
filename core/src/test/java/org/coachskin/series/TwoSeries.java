package org.coachskin.series;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.coachskin.harmonic.Theory;
import org.coachskin.laminate.Stiffness;
import org.coachskin.laminate.Triple;
import org.coachskin.panel.Panel;
import org.junit.jupiter.api.DynamicTest;

/** Two series that share nothing but the stiffness of a wave, compared figure by figure. */
abstract class TwoSeries {

    static final double PROMISE = 1e-6;

    /** What each figure is called. */
    abstract List<String> names();

    /** Which figures are of one kind, by number; membrane forces are of kind 2, strains of 1. */
    abstract int kind(int figure);

    /** Which figures are one field at several heights, by number. */
    int field(int figure) {
        return figure;
    }

    /** The figures of one place. */
    abstract double[] figures(SeriesSum sum, double x, double y);

    /** Every panel under every load in one theory. */
    List<DynamicTest> tests(Theory theory, Map<String, Panel> panels) {
        List<DynamicTest> tests = new ArrayList<>();
        panels.forEach(
                (name, panel) ->
                        loads(panel)
                                .forEach(
                                        (words, load) ->
                                                tests.add(
                                                        DynamicTest.dynamicTest(
                                                                name
                                                                        + ", "
                                                                        + theory.words()
                                                                        + ", "
                                                                        + words,
                                                                () ->
                                                                        compare(
                                                                                panel, theory,
                                                                                load)))));
        return tests;
    }

    private static Map<String, PatchLoad> loads(Panel panel) {
        double a = panel.width();
        double b = panel.length();
        return new TreeMap<>(
                Map.of(
                        "pressure",
                        SeriesPanels.pressure(panel),
                        "patch",
                        patch(panel),
                        "free bow",
                        new PatchLoad(1, 0, a, 0, b, new Triple(0.02, 0.03, 0))));
    }

    private static PatchLoad patch(Panel panel) {
        double x = 0.31 * panel.width();
        double y = 0.57 * panel.length();
        return new PatchLoad(-30000, x, x + 0.06, y, y + 0.04, Triple.ZERO);
    }

    /** Under, at the edge of, beside and far from the patch; never where neither converges. */
    private static List<double[]> places(Panel panel, PatchLoad load) {
        double a = panel.width();
        double b = panel.length();
        double t = panel.laminate().thickness();
        List<double[]> places =
                new ArrayList<>(
                        List.of(
                                new double[] {0.5 * a, 0.5 * b},
                                new double[] {0.1 * a, 0.2 * b},
                                new double[] {0.83 * a, 0.3 * b},
                                new double[] {0.33 * a, 0.9 * b},
                                new double[] {a - t, t}));
        if (load.x1() > 0) {
            double middleX = (load.x1() + load.x2()) / 2;
            double middleY = (load.y1() + load.y2()) / 2;
            places.add(new double[] {middleX, middleY});
            places.add(new double[] {load.x1() + 0.5 * t, middleY});
            places.add(new double[] {load.x1() - 0.5 * t, middleY});
            places.add(new double[] {middleX, load.y2() + 0.5 * t});
            places.add(new double[] {load.x1() - 0.8 * t, load.y1() - 0.8 * t});
            places.add(new double[] {load.x2() + t, load.y2() - t});
        }
        return places;
    }

    private void compare(Panel panel, Theory theory, PatchLoad load) {
        var part = new SeriesSum.Part(load, new PanelSeries(theory, panel, load.bow()));
        List<SeriesSum.Part> parts = List.of(part);
        SeriesSum alongX = new SeriesSum(theory, panel, parts, SeriesSum.Along.X);
        SeriesSum alongY = new SeriesSum(theory, panel, parts, SeriesSum.Along.Y);
        SeriesSum chosen = new SeriesSum(theory, panel, parts, SeriesSum.Along.EITHER);
        List<double[]> places = places(panel, load);
        List<double[]> x = all(alongX, places);
        List<double[]> y = all(alongY, places);
        List<double[]> own = all(chosen, places);
        double[] largest = new double[names().size()];
        double[] ofGroup = new double[names().size()];
        for (double[] figures : y) {
            for (int i = 0; i < largest.length; i++) {
                largest[field(i)] = Math.max(largest[field(i)], Math.abs(figures[i]));
                ofGroup[kind(i)] = Math.max(ofGroup[kind(i)], Math.abs(figures[i]));
            }
        }
        // Membrane forces of a flat even stack are nought: set them beside what such strains raise.
        double a11 = Stiffness.of(panel.laminate()).a().m11();
        ofGroup[2] = Math.max(ofGroup[2], a11 * ofGroup[1]);
        for (int p = 0; p < places.size(); p++) {
            for (int i = 0; i < largest.length; i++) {
                // A field that vanishes by symmetry holds rounding only: set it beside its like.
                double scale = Math.max(1e-3 * largest[field(i)], 1e-5 * ofGroup[kind(i)]);
                double allowed = PROMISE * Math.max(Math.abs(y.get(p)[i]), scale);
                String where =
                        String.format(
                                Locale.ROOT,
                                "%s at %.4f, %.4f m",
                                names().get(i),
                                places.get(p)[0],
                                places.get(p)[1]);
                assertEquals(y.get(p)[i], x.get(p)[i], allowed, where);
                assertEquals(y.get(p)[i], own.get(p)[i], allowed, where);
            }
        }
    }

    private List<double[]> all(SeriesSum sum, List<double[]> places) {
        List<double[]> all = new ArrayList<>();
        places.forEach(at -> all.add(figures(sum, at[0], at[1])));
        return all;
    }
}
