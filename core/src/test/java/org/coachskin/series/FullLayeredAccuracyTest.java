package org.coachskin.series;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.coachskin.analysis.SectionForces;
import org.coachskin.harmonic.Theory;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Triple;
import org.coachskin.panel.Panel;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** The promise of 1e-6 for every figure of the full layered theory. */
class FullLayeredAccuracyTest extends TwoSeries {

    private static final int STRAIN = 1;
    private static final int FORCE = 2;
    private static final int MOMENT = 3;
    private static final int SHEAR = 4;
    private static final int FOAM = 5;
    private static final int DENT = 6;

    /** Number of the first figure of foam, whose stresses are one field at every height. */
    private static final int FIRST_OF_FOAM = 15;

    /** Heights in the foam, as shares of its thickness. */
    private static final double[] SHARES = {0, 0.2, 0.5, 0.9, 1};

    private final List<String> names = new ArrayList<>(List.of("outside", "inside", "dent"));
    private final List<Integer> kinds = new ArrayList<>(List.of(0, 0, DENT));
    private final List<Integer> fields = new ArrayList<>(List.of(0, 0, 2));

    FullLayeredAccuracyTest() {
        for (String height : List.of("outside", "foam top", "foam bottom", "inside")) {
            List<String> parts = List.of("ex", "ey", "exy");
            for (int i = 0; i < 3; i++) {
                add(parts.get(i) + " " + height, STRAIN, 3 + i);
            }
        }
        for (double share : SHARES) {
            List<String> parts = List.of("sx", "sy", "sz", "txy", "txz", "tyz");
            for (int i = 0; i < 6; i++) {
                add(parts.get(i) + " of the foam at " + share, FOAM, FIRST_OF_FOAM + i);
            }
        }
        for (String part : List.of("section", "outside skin", "inside skin")) {
            for (String of : List.of("Nx", "Ny", "Nxy")) {
                add(of + " " + part, FORCE, names.size());
            }
            for (String of : List.of("Mx", "My", "Mxy")) {
                add(of + " " + part, MOMENT, names.size());
            }
            for (String of : List.of("Qx", "Qy")) {
                add(of + " " + part, SHEAR, names.size());
            }
        }
    }

    private void add(String name, int kind, int field) {
        names.add(name);
        kinds.add(kind);
        fields.add(field);
    }

    @TestFactory
    List<DynamicTest> theSeriesAlongXGivesWhatTheOneAlongYGives() {
        Map<String, Panel> panels = SeriesPanels.all();
        // Without foam it is first-order theory, whose test has them.
        panels.values().removeIf(panel -> panel.laminate().isBare());
        return tests(Theory.FULL_LAYERED, panels);
    }

    @Override
    List<String> names() {
        return names;
    }

    @Override
    int kind(int figure) {
        return kinds.get(figure);
    }

    @Override
    int field(int figure) {
        return fields.get(figure);
    }

    @Override
    double[] figures(SeriesSum sum, double x, double y) {
        Laminate laminate = sum.panel().laminate();
        FullLayeredSection at = new FullLayeredResponse(sum).at(x, y);
        List<Double> all =
                new ArrayList<>(List.of(at.outsideDeflection(), at.insideDeflection(), at.dent()));
        double half = laminate.thickness() / 2;
        double bottom = laminate.bottom(laminate.innermostCore());
        double top = laminate.bottom(laminate.outermostCore() + 1);
        for (double z : new double[] {half, top, bottom, -half}) {
            add(all, at.strain(z));
        }
        for (double share : SHARES) {
            FoamStress s = at.foam(bottom + share * (top - bottom));
            all.addAll(List.of(s.x(), s.y(), s.z(), s.xy(), s.xz(), s.yz()));
        }
        for (SectionForces forces : List.of(at.forces(), at.outsideSkin(), at.insideSkin())) {
            add(all, forces.n());
            add(all, forces.m());
            all.add(forces.qx());
            all.add(forces.qy());
        }
        return all.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static void add(List<Double> all, Triple triple) {
        all.addAll(List.of(triple.x(), triple.y(), triple.xy()));
    }
}
