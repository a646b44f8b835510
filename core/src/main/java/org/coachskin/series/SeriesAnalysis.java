package org.coachskin.series;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.NoAnswerException;
import org.coachskin.Problem;
import org.coachskin.analysis.Analysis;
import org.coachskin.analysis.Response;
import org.coachskin.harmonic.Theory;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Patch;
import org.coachskin.laminate.Stiffness;
import org.coachskin.laminate.Sym3;
import org.coachskin.laminate.ThermalState;
import org.coachskin.laminate.Triple;
import org.coachskin.panel.Load;
import org.coachskin.panel.Panel;

/**
 * A rectangular panel carried along its whole rim, by sine series.
 *
 * <p><b>Rim.</b> Along every edge the deflection, the displacement along the edge and the rotations
 * along it (skins and foam) are zero; the displacement and the rotations at right angles are free.
 *
 * <p><b>Accuracy.</b> Each figure is within 1e-6 of the theory's exact answer, relative to the
 * larger of its own value and a thousandth of that field's largest, except within one panel
 * thickness of the corners of a patch, where shear strain has no limit.
 *
 * <p><b>Limits.</b> Stacks whose waves do not couple (cloth square to the edges), linear, shallow
 * crown. A disc is replaced by the square of equal area; package {@code local} holds the
 * difference.
 *
 * <p>Immutable; safe to share between threads. So are its responses.
 */
public final class SeriesAnalysis implements Analysis {

    /** Entries of A, B, D that must vanish may be this small a share of the others. */
    private static final double COUPLED = 1e-9;

    private final Theory theory;

    /** Creates the analysis in layered theory. */
    public SeriesAnalysis() {
        this(Theory.LAYERED);
    }

    /** Returns the analysis in first-order theory, which published tables use. */
    public static SeriesAnalysis firstOrder() {
        return new SeriesAnalysis(Theory.FIRST_ORDER);
    }

    /** Creates the analysis in a theory of one's choice. */
    public SeriesAnalysis(Theory theory) {
        this.theory = theory;
    }

    @Override
    public List<Response> cases(Panel panel, List<List<Load>> cases) {
        refuseCoupled(panel.laminate());
        PanelSeries pressure = new PanelSeries(theory, panel, Triple.ZERO);
        List<Response> responses = new ArrayList<>();
        for (List<Load> loads : cases) {
            List<SeriesResponse.Part> parts = new ArrayList<>();
            for (Load load : loads) {
                PatchLoad patch = patch(panel, load);
                parts.add(
                        new SeriesResponse.Part(
                                patch,
                                patch.isBow()
                                        ? new PanelSeries(theory, panel, patch.bow())
                                        : pressure));
            }
            responses.add(new SeriesResponse(theory, panel, parts, SeriesResponse.Along.EITHER));
        }
        return responses;
    }

    private static PatchLoad patch(Panel panel, Load load) {
        double a = panel.width();
        double b = panel.length();
        if (load instanceof Load.Press press) {
            double hx = press.patch().halfX();
            double hy = press.patch().halfY();
            if (press.patch() instanceof Patch.Disc) {
                hx = Math.sqrt(press.patch().area()) / 2;
                hy = hx;
            }
            double x1 = press.x() - hx;
            double x2 = press.x() + hx;
            double y1 = press.y() - hy;
            double y2 = press.y() + hy;
            double slack = 1e-9 * (a + b);
            if (x1 < -slack || y1 < -slack || x2 > a + slack || y2 > b + slack) {
                throw new IllegalArgumentException(
                        "the patch reaches over the edge of "
                                + panel.name()
                                + ": x "
                                + x1
                                + " to "
                                + x2
                                + " m, y "
                                + y1
                                + " to "
                                + y2
                                + " m");
            }
            double pressure = press.force() / ((x2 - x1) * (y2 - y1));
            return new PatchLoad(
                    -pressure,
                    Math.max(x1, 0),
                    Math.min(x2, a),
                    Math.max(y1, 0),
                    Math.min(y2, b),
                    Triple.ZERO);
        }
        if (load instanceof Load.Pressure pressure) {
            return new PatchLoad(-pressure.pressure(), 0, a, 0, b, Triple.ZERO);
        }
        if (load instanceof Load.StripPressure strip) {
            if (strip.to() > b * (1 + 1e-9)) {
                throw new IllegalArgumentException(
                        "the strip reaches over the rear edge of "
                                + panel.name()
                                + ": "
                                + strip.to()
                                + " m of "
                                + b
                                + " m");
            }
            double rear = Math.min(strip.to(), b);
            return new PatchLoad(-strip.pressure(), 0, a, strip.from(), rear, Triple.ZERO);
        }
        if (load instanceof Load.OwnWeight weight) {
            return new PatchLoad(
                    -weight.inward() * panel.laminate().mass(), 0, a, 0, b, Triple.ZERO);
        }
        Load.Heat heat = (Load.Heat) load;
        Triple bow = ThermalState.of(panel.laminate(), heat.inside(), heat.outside()).curvature();
        return new PatchLoad(1, 0, a, 0, b, bow);
    }

    /** One load: pressure outward [Pa] on a rectangle, or the free bow [1/m] of the whole panel. */
    record PatchLoad(double strength, double x1, double x2, double y1, double y2, Triple bow) {
        boolean isBow() {
            return !bow.equals(Triple.ZERO);
        }

        /** Returns the same load with x and y exchanged. */
        PatchLoad turned() {
            return new PatchLoad(strength, y1, y2, x1, x2, new Triple(bow.y(), bow.x(), bow.xy()));
        }
    }

    /** Returns whether the stack of {@code panel} is one whose waves do not couple. */
    public boolean answers(Panel panel) {
        return !isCoupled(panel.laminate());
    }

    private static boolean isCoupled(Laminate laminate) {
        Stiffness s = Stiffness.of(laminate);
        double t = laminate.thickness();
        return mixed(s.a(), s.a().m11())
                || mixed(s.b(), s.a().m11() * t)
                || mixed(s.d(), s.a().m11() * t * t)
                || Math.abs(s.h().m12()) > COUPLED * (s.h().m11() + s.h().m22());
    }

    private static void refuseCoupled(Laminate laminate) {
        if (isCoupled(laminate)) {
            throw new NoAnswerException(
                    new Problem(
                            "",
                            "",
                            "This stack twists when it is bent or pulled, because cloth lies at an angle that nothing balances; the "
                                    + "series for a rim carried all round cannot answer that.",
                            "Lay the cloth square to the edges (0 or 90 deg), or at 45 deg with equal warp and weft."));
        }
    }

    private static boolean mixed(Sym3 m, double scale) {
        return Math.abs(m.m16()) > COUPLED * scale || Math.abs(m.m26()) > COUPLED * scale;
    }

    @Override
    public double frequency(Panel panel) {
        refuseCoupled(panel.laminate());
        return new Frequencies(theory, panel).lowest();
    }

    /**
     * Returns the lowest frequency of the waves with {@code m} half waves along x and {@code n}
     * along y [Hz].
     */
    public double frequency(Panel panel, int m, int n) {
        refuseCoupled(panel.laminate());
        return new Frequencies(theory, panel).of(m, n);
    }
}
