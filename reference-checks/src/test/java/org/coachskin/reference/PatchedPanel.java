package org.coachskin.reference;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Patch;
import org.coachskin.laminate.Ply;
import org.coachskin.local.LocalEffect;
import org.coachskin.panel.Load;
import org.coachskin.panel.Panel;
import org.coachskin.series.FullLayeredAnalysis;
import org.coachskin.series.FullLayeredSection;
import org.coachskin.series.SeriesAnalysis;

/**
 * A square flat foam panel pressed in its middle, by 3-D elasticity and by the theory of the
 * verdict.
 *
 * @param outside plies outside
 * @param foam thickness [m]
 * @param inside plies inside
 * @param e foam modulus [Pa]
 * @param g foam shear modulus [Pa]
 * @param side of the panel [m]
 * @param patch side of the square patch [m]
 */
record PatchedPanel(
        int outside, double foam, int inside, double e, double g, double side, double patch) {

    private static final double FORCE = 250;

    /** Poisson's ratio of an isotropic foam with these moduli, or 0.45 where they ask for more. */
    double nu() {
        return Math.min(0.45, e / (2 * g) - 1);
    }

    Laminate laminate() {
        Ply ply = TestPlies.ply();
        List<Layer> layers = new ArrayList<>();
        for (int i = 0; i < inside; i++) {
            layers.add(new Layer.Laid(ply, 0));
        }
        layers.add(new Layer.Core(TestPlies.foam(e, g, nu()), foam));
        for (int i = 0; i < outside; i++) {
            layers.add(new Layer.Laid(ply, 0));
        }
        return new Laminate(layers);
    }

    /**
     * What is compared.
     *
     * @param deflection mean of both surfaces in the middle [m]
     * @param outer stress along x of the outside surface [Pa]
     * @param inner stress along x of the inside surface [Pa]
     * @param dent outside surface less inside surface [m]
     */
    record Figures(double deflection, double outer, double inner, double dent) {}

    /** By layered theory with the local effect. */
    Figures ours() {
        Laminate laminate = laminate();
        Panel panel = Panel.flat("panel", side, side, laminate);
        Patch square = new Patch.Rectangle(patch, patch);
        var response =
                new SeriesAnalysis()
                        .statics(panel, List.of(new Load.Press(FORCE, square, side / 2, side / 2)));
        LocalEffect local = LocalEffect.of(laminate, square, FORCE);
        var stiffness = org.coachskin.laminate.LayeredStiffness.of(laminate);
        var state = response.state(side / 2, side / 2);
        double half = laminate.thickness() / 2;
        LocalEffect.Here here = local.at(0, 0);
        double outer = stress(state.strainAt(stiffness, half).plus(here.strain(half), 1));
        double inner =
                inside == 0
                        ? 0
                        : stress(state.strainAt(stiffness, -half).plus(here.strain(-half), 1));
        double deflection = response.deflection(side / 2, side / 2);
        return new Figures(
                deflection + local.sinking() - local.dent() / 2, outer, inner, local.dent());
    }

    private static double stress(org.coachskin.laminate.Triple strain) {
        return TestPlies.ply().stiffness(0).times(strain).x();
    }

    private Elasticity3d elasticity() {
        List<Elasticity3d.Solid> solids = new ArrayList<>();
        for (Layer layer : laminate().layers()) {
            solids.add(
                    layer instanceof Layer.Core
                            ? TestPlies.solid(e, g, nu(), foam)
                            : TestPlies.solid(TestPlies.ply()));
        }
        return new Elasticity3d(solids);
    }

    /**
     * Stress at mid-height of the foam by 3-D elasticity [Pa]: sx and sz, and txz.
     *
     * @param offset from the middle along x [m]
     */
    double[] exactFoam(double offset, int waves) {
        Elasticity3d elasticity = elasticity();
        double middle = inside * TestPlies.ply().thickness() + foam / 2;
        double pressure = FORCE / (patch * patch);
        double[] sum = new double[3];
        for (int m = 1; m <= waves; m += 2) {
            for (int n = 1; m * m + n * n <= waves * waves; n += 2) {
                double alpha = m * Math.PI / side;
                double q =
                        pressure
                                * coefficient(m)
                                * coefficient(n)
                                * lanczos(m, waves)
                                * lanczos(n, waves)
                                / Math.sin(m * Math.PI / 2);
                double[] node =
                        elasticity.wave(alpha, n * Math.PI / side).nodes.stream()
                                .filter(at -> Math.abs(at[Elasticity3d.Z] - middle) < 1e-9)
                                .findFirst()
                                .orElseThrow();
                double sine = Math.sin(alpha * (side / 2 + offset));
                double cosine = Math.cos(alpha * (side / 2 + offset));
                sum[0] -= q * sine * node[Elasticity3d.SX];
                sum[1] -= q * sine * node[Elasticity3d.SZ];
                sum[2] -= q * cosine * node[Elasticity3d.TXZ];
            }
        }
        return sum;
    }

    /** Ours in full layered theory, at an offset from the middle along x. */
    FullLayeredSection fullLayered(double offset) {
        Panel panel = Panel.flat("panel", side, side, laminate());
        Load press = new Load.Press(FORCE, new Patch.Rectangle(patch, patch), side / 2, side / 2);
        return new FullLayeredAnalysis()
                .statics(panel, List.of(press))
                .at(side / 2 + offset, side / 2);
    }

    /** By 3-D elasticity, summed over waves with Lanczos factors. */
    Figures exact(int waves) {
        Elasticity3d elasticity = elasticity();
        double pressure = FORCE / (patch * patch);
        double[] sum = new double[4];
        for (int m = 1; m <= waves; m += 2) {
            for (int n = 1; n <= m; n += 2) {
                if (m * m + n * n > waves * waves) {
                    continue;
                }
                double alpha = m * Math.PI / side;
                double beta = n * Math.PI / side;
                double q =
                        pressure
                                * coefficient(m)
                                * coefficient(n)
                                * lanczos(m, waves)
                                * lanczos(n, waves);
                Elasticity3d.Wave wave = elasticity.wave(alpha, beta);
                // The middle of the square: all signs come from sin(m pi/2) sin(n pi/2), squared by
                // the load's own.
                add(sum, wave, q, Elasticity3d.SX);
                if (m != n) {
                    // Skins and foam are alike along x and y: the exchanged wave has the exchanged
                    // stress.
                    add(sum, wave, q, Elasticity3d.SY);
                }
            }
        }
        return new Figures((sum[0] + sum[1]) / 2, -sum[2], -sum[3], sum[0] - sum[1]);
    }

    private static void add(double[] sum, Elasticity3d.Wave wave, double q, int stress) {
        sum[0] += q * wave.last(Elasticity3d.W);
        sum[1] += q * wave.first(Elasticity3d.W);
        sum[2] += q * wave.last(stress);
        sum[3] += q * wave.first(stress);
    }

    /** Fourier coefficient of the patch times the sine at the middle. */
    private double coefficient(int m) {
        double alpha = m * Math.PI / side;
        double sine = Math.sin(m * Math.PI / 2);
        return 4 / (side * alpha) * Math.sin(alpha * patch / 2) * sine * sine;
    }

    private static double lanczos(int m, int waves) {
        double x = Math.PI * m / (waves + 2);
        return Math.sin(x) / x;
    }
}
