package org.coachskin.series;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.NoAnswerException;
import org.coachskin.Problem;
import org.coachskin.analysis.Analysis;
import org.coachskin.analysis.Response;
import org.coachskin.harmonic.Theory;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Stiffness;
import org.coachskin.laminate.Sym3;
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

    private SeriesAnalysis(Theory theory) {
        this.theory = theory;
    }

    @Override
    public List<Response> cases(Panel panel, List<List<Load>> cases) {
        refuseCoupled(panel.laminate());
        List<SeriesSum> sums = SeriesSum.ofCases(theory, panel, cases);
        Stiffer stiffer = new Stiffer(theory, panel, cases);
        List<Response> responses = new ArrayList<>();
        for (int i = 0; i < sums.size(); i++) {
            responses.add(new SeriesResponse(sums.get(i), cases.get(i), stiffer.of(i)));
        }
        return responses;
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

    static void refuseCoupled(Laminate laminate) {
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
