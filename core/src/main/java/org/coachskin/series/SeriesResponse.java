package org.coachskin.series;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.coachskin.analysis.Field;
import org.coachskin.analysis.Owed;
import org.coachskin.analysis.Response;
import org.coachskin.analysis.SectionForces;
import org.coachskin.laminate.LayeredStiffness;
import org.coachskin.laminate.SectionState;
import org.coachskin.laminate.Stiffness;
import org.coachskin.laminate.Sym2;
import org.coachskin.laminate.Triple;
import org.coachskin.panel.Load;
import org.coachskin.panel.Panel;

/** What a panel does, summed where it is asked. */
final class SeriesResponse implements Response {

    /** Along the longer side, for a drawing. */
    private static final int STEPS = 40;

    private final SeriesSum sum;
    private final List<Load> loads;

    /** The same loads on a panel whose foam shears less by {@link Stiffer#LESS}. */
    private final Supplier<SeriesSum> stiffer;

    private final Panel panel;
    private final int inPlane;
    private final int first;

    SeriesResponse(SeriesSum sum, List<Load> loads, Supplier<SeriesSum> stiffer) {
        this.sum = sum;
        this.loads = loads;
        this.stiffer = stiffer;
        panel = sum.panel();
        inPlane = sum.kinematics().inPlane;
        first = inPlane + sum.kinematics().deflections;
    }

    @Override
    public String method() {
        return sum.method();
    }

    @Override
    public double deflection(double x, double y) {
        return deflection(sum, x, y);
    }

    private static double deflection(SeriesSum of, double x, double y) {
        return -of.deflections(x, y)[3 * of.kinematics().inPlane];
    }

    @Override
    public Field movement() {
        double step = Math.max(panel.width(), panel.length()) / STEPS;
        int across = (int) Math.ceil(panel.width() / step);
        int along = (int) Math.ceil(panel.length() / step);
        List<Field.Node> nodes = new ArrayList<>();
        List<Field.Triangle> triangles = new ArrayList<>();
        for (int j = 0; j <= along; j++) {
            for (int i = 0; i <= across; i++) {
                double x = panel.width() * i / across;
                double y = panel.length() * j / along;
                nodes.add(new Field.Node(x, y, deflection(x, y)));
                int n = nodes.size() - 1;
                if (i > 0 && j > 0) {
                    int below = n - across - 1;
                    triangles.add(new Field.Triangle(below - 1, below, n, Field.Triangle.NONE));
                    triangles.add(new Field.Triangle(below - 1, n, n - 1, Field.Triangle.NONE));
                }
            }
        }
        return new Field(nodes, triangles);
    }

    @Override
    public Owed owed(double x, double y) {
        double whole = deflection(x, y);
        if (panel.laminate().isBare()) {
            return new Owed(whole, 0, 0);
        }
        double foam = (whole - deflection(stiffer.get(), x, y)) / Stiffer.LESS;
        return new Owed(whole - foam, foam, 0);
    }

    @Override
    public List<Double> nearby(List<Panel> others, double x, double y) {
        return others.stream().map(other -> deflection(sum.of(other, loads), x, y)).toList();
    }

    @Override
    public SectionState state(double x, double y) {
        double[] f = sum.fields(x, y);
        int w = 3 * inPlane;
        int v = 3 * first;
        Triple membrane =
                new Triple(
                        f[1] + panel.crown().across() * f[w],
                        f[v + 2] + panel.crown().along() * f[w],
                        f[2] + f[v + 1]);
        Triple skin = new Triple(f[4], f[v + 5], f[5] + f[v + 4]);
        double skinX = f[3];
        double skinY = f[v + 3];
        if (inPlane < 3) {
            return new SectionState(membrane, skin, skin, skinX, skinY, skinX, skinY);
        }
        Triple foam = new Triple(f[7], f[v + 8], f[8] + f[v + 7]);
        return new SectionState(membrane, skin, foam, skinX, skinY, f[6], f[v + 6]);
    }

    @Override
    public SectionForces forces(double x, double y) {
        SectionState s = state(x, y);
        // A free bow is a strain without force.
        Triple bow = sum.bow();
        s = s.plus(new SectionState(Triple.ZERO, bow, bow, 0, 0, 0, 0), -1);
        if (inPlane < 3) {
            Stiffness k = Stiffness.of(panel.laminate());
            Triple n = k.a().times(s.membrane()).plus(k.b().times(s.skinCurvature()), 1);
            Triple m = k.b().times(s.membrane()).plus(k.d().times(s.skinCurvature()), 1);
            return new SectionForces(
                    n, m, k.h().m11() * s.skinShearX(), k.h().m22() * s.skinShearY());
        }
        LayeredStiffness k = LayeredStiffness.of(panel.laminate());
        Triple n =
                k.a().times(s.membrane())
                        .plus(k.bf().times(s.foamCurvature()), 1)
                        .plus(k.bg().times(s.skinCurvature()), 1);
        Triple m =
                k.bf().plus(k.bg(), 1)
                        .times(s.membrane())
                        .plus(k.dff().plus(k.dfg(), 1).times(s.foamCurvature()), 1)
                        .plus(k.dfg().plus(k.dgg(), 1).times(s.skinCurvature()), 1);
        Sym2 hs = k.hs();
        Sym2 hf = k.hf();
        return new SectionForces(
                n,
                m,
                hs.m11() * s.skinShearX() + hf.m11() * s.foamShearX(),
                hs.m22() * s.skinShearY() + hf.m22() * s.foamShearY());
    }
}
