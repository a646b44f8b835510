package org.coachskin.series;

import java.util.List;
import org.coachskin.analysis.Response;
import org.coachskin.analysis.SectionForces;
import org.coachskin.harmonic.Kinematics;
import org.coachskin.harmonic.SingleSeries;
import org.coachskin.harmonic.Theory;
import org.coachskin.laminate.LayeredStiffness;
import org.coachskin.laminate.SectionState;
import org.coachskin.laminate.Stiffness;
import org.coachskin.laminate.Sym2;
import org.coachskin.laminate.Triple;
import org.coachskin.panel.Panel;

/** What a panel does, summed where it is asked. */
final class SeriesResponse implements Response {

    /** Which way a series runs. */
    enum Along {
        X,
        Y,
        /** Whichever converges faster at the place asked for. */
        EITHER
    }

    /** One load and the series that answer it. */
    record Part(SeriesAnalysis.PatchLoad load, PanelSeries series) {}

    private final Theory theory;
    private final Panel panel;
    private final List<Part> parts;
    private final Along along;
    private final int inPlane;
    private final int first;

    SeriesResponse(Theory theory, Panel panel, List<Part> parts, Along along) {
        this.theory = theory;
        this.panel = panel;
        this.parts = List.copyOf(parts);
        this.along = along;
        Kinematics kinematics = Kinematics.of(theory, panel.laminate());
        inPlane = kinematics.inPlane;
        first = inPlane + kinematics.deflections;
    }

    /**
     * Returns, for each field of {@code WaveSystem}'s order, value, x-derivative and y-derivative;
     * the value of a rotation is its shear strain.
     */
    double[] fields(double x, double y) {
        return fields(x, y, false);
    }

    private double[] fields(double x, double y, boolean deflectionAlone) {
        double[] out = new double[3 * (first + inPlane)];
        for (Part part : parts) {
            SeriesAnalysis.PatchLoad load = part.load();
            PanelSeries series = part.series();
            if (runsAlongX(load, x, y)) {
                add(series.alongX, load, x, y, deflectionAlone, out);
            } else {
                double[] turned = new double[out.length];
                add(series.alongY, load.turned(), y, x, deflectionAlone, turned);
                addTurned(turned, out);
            }
        }
        return out;
    }

    private static void add(
            SingleSeries series,
            SeriesAnalysis.PatchLoad load,
            double x,
            double y,
            boolean deflectionAlone,
            double[] out) {
        double p = load.strength();
        if (deflectionAlone) {
            series.addDeflection(p, load.x1(), load.x2(), load.y1(), load.y2(), x, y, out);
        } else {
            series.add(p, load.x1(), load.x2(), load.y1(), load.y2(), x, y, out);
        }
    }

    private boolean runsAlongX(SeriesAnalysis.PatchLoad load, double x, double y) {
        if (along != Along.EITHER) {
            return along == Along.X;
        }
        double fromX = Math.min(Math.abs(x - load.x1()), Math.abs(x - load.x2())) / panel.length();
        double fromY = Math.min(Math.abs(y - load.y1()), Math.abs(y - load.y2())) / panel.width();
        return fromY >= fromX;
    }

    /** Adds a field with x and y exchanged: the blocks change places, and so do the derivatives. */
    private void addTurned(double[] turned, double[] out) {
        for (int i = 0; i < first + inPlane; i++) {
            int target = i < inPlane ? first + i : i < first ? i : i - first;
            out[3 * target] += turned[3 * i];
            out[3 * target + 1] += turned[3 * i + 2];
            out[3 * target + 2] += turned[3 * i + 1];
        }
    }

    @Override
    public String method() {
        return "sine series, rim carried all round, " + theory.words();
    }

    /** In full layered theory this is the mean of both surfaces. */
    @Override
    public double deflection(double x, double y) {
        double[] f = fields(x, y, true);
        return theory == Theory.FULL_LAYERED && first - inPlane > 1
                ? -(f[3 * inPlane] + f[3 * inPlane + 3]) / 2
                : -f[3 * inPlane];
    }

    @Override
    public SectionState state(double x, double y) {
        if (theory == Theory.FULL_LAYERED && first - inPlane > 1) {
            throw new UnsupportedOperationException(
                    "each skin has a state of its own in full layered theory");
        }
        double[] f = fields(x, y);
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
        for (Part part : parts) {
            // A free bow is a strain without force.
            Triple bow = part.load().bow();
            s = s.plus(new SectionState(Triple.ZERO, bow, bow, 0, 0, 0, 0), -1);
        }
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
