package org.coachskin.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.LayerStress;
import org.coachskin.series.FoamStress;
import org.coachskin.series.FullLayeredAnalysis;
import org.coachskin.series.FullLayeredSection;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the full layered theory gives by itself, foam stress included, against 3-D elasticity. */
class FullLayeredElasticityTest {

    /** Shortest wave that is summed in full [m]. */
    private static final double SHORTEST = 4e-3;

    static List<SweepCase> panels() {
        return List.of(
                SweepCase.Shape.square(2, 0.012, 1, 64, 0.3).middle(false, 0.1),
                SweepCase.Shape.square(3, 0.012, 3, 32, 0.3).middle(false, 0.06),
                SweepCase.Shape.square(1, 0.012, 1, 160, 0.3).middle(false, 0.03));
    }

    private static FullLayeredSection ours(SweepCase load, double offset) {
        return new FullLayeredAnalysis()
                .statics(load.shape().panel(), List.of(load.press()))
                .at(load.x() + offset, load.y());
    }

    @ParameterizedTest
    @MethodSource("panels")
    void deflectionDentAndSkinStressUnderThePatch(SweepCase load) {
        SweepFigures want = new PressedSolid(load.shape()).under(List.of(load), SHORTEST).get(0);
        FullLayeredSection at = ours(load, 0);
        List<LayerStress> skins = at.skins();
        double outer = skins.get(skins.size() - 1).panelOuter().x();
        double inner = skins.get(0).panelInner().x();
        near(want.deflection(), at.deflection(), load.words() + " deflection");
        near(want.dent(), at.dent(), "dent");
        near(want.outerMiddle(), outer, "outer");
        near(want.innerMiddle(), inner, "inner");
    }

    @ParameterizedTest
    @MethodSource("panels")
    void foamStressUnderThePatchAndAtItsEdge(SweepCase load) {
        Laminate laminate = load.shape().laminate();
        double z = laminate.bottom(load.shape().inside()) + load.shape().foam() / 2;
        double edge = load.half();
        double[] want = exactFoam(load, edge);
        FoamStress under = ours(load, 0).foam(z);
        near(want[0], under.x(), "sx");
        near(want[1], under.z(), "sz");
        near(want[2], ours(load, edge).foam(z).xz(), "txz");
    }

    private static void near(double want, double got, String what) {
        assertEquals(want, got, 0.01 * Math.abs(want), what);
    }

    /** Stress at mid-height of the foam [Pa]: sx and sz under the middle, txz at an offset. */
    private static double[] exactFoam(SweepCase load, double offset) {
        SweepCase.Shape shape = load.shape();
        Elasticity3d solid = new Elasticity3d(shape.solids());
        double side = shape.width();
        double middle = shape.laminate().thickness() / 2 + middleOfFoam(shape);
        double longest = 2 * Math.PI / SHORTEST;
        double pressure = SweepCase.FORCE / (4 * load.half() * load.half());
        double[] sum = new double[3];
        for (int m = 1; m * Math.PI / side < longest; m += 2) {
            for (int n = 1; Math.hypot(m, n) * Math.PI / side < longest; n += 2) {
                double alpha = m * Math.PI / side;
                double beta = n * Math.PI / side;
                double q = pressure * share(m, load) * share(n, load);
                double[] at = solid.wave(alpha, beta).at(middle);
                double here = Math.sin(beta * side / 2);
                double there = alpha * (side / 2 + offset);
                // The load of a wave is outward, the force inward.
                sum[0] -= q * here * Math.sin(alpha * side / 2) * at[Elasticity3d.SX];
                sum[1] -= q * here * Math.sin(alpha * side / 2) * at[Elasticity3d.SZ];
                sum[2] -= q * here * Math.cos(there) * at[Elasticity3d.TXZ];
            }
        }
        return sum;
    }

    private static double middleOfFoam(SweepCase.Shape shape) {
        return shape.laminate().bottom(shape.inside()) + shape.foam() / 2;
    }

    /** Coefficient of one wave along one side of a unit load on the middle of it. */
    private static double share(int m, SweepCase load) {
        double k = m * Math.PI / load.shape().width();
        double middle = Math.sin(k * load.shape().width() / 2);
        return 4 / (m * Math.PI) * middle * Math.sin(k * load.half());
    }
}
