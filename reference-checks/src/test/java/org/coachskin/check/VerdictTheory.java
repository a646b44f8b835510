package org.coachskin.check;

import java.util.List;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.PlyStress;
import org.coachskin.laminate.SectionState;
import org.coachskin.laminate.TransverseShear;
import org.coachskin.laminate.Triple;
import org.coachskin.local.LocalEffect;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Panel;
import org.coachskin.series.SeriesAnalysis;

/**
 * The figures a verdict is made of, before they are set against a strength: the same places, the
 * same sums. In this package since those places are the verdict's own affair.
 *
 * @param deflection mean of both surfaces under the middle [m]
 * @param surface movement of the outside surface there [m]
 * @param outerMiddle stress along x of the outside surface under the middle [Pa]
 * @param innerMiddle stress along x of the inside surface there [Pa]
 * @param outer largest stress along x or y of a ply of the outside skin [Pa]
 * @param inner largest stress along x or y of a ply of the inside skin [Pa]
 * @param sheared largest shear stress of a ply in its plane [Pa]
 * @param foam largest shear stress of the foam [Pa]
 * @param dent outside surface less inside surface [m]
 */
public record VerdictTheory(
        double deflection,
        double surface,
        double outerMiddle,
        double innerMiddle,
        double outer,
        double inner,
        double sheared,
        double foam,
        double dent) {

    /** Returns what the verdict would judge of a panel pressed in one place. */
    public static VerdictTheory of(Panel panel, Load.Press press) {
        return new Peaks(panel, press).figures();
    }

    private static final class Peaks {
        private final Panel panel;
        private final Load.Press press;
        private final Stack stack;
        private final double reach;
        private double outer;
        private double inner;
        private double sheared;
        private double foam;

        Peaks(Panel panel, Load.Press press) {
            this.panel = panel;
            this.press = press;
            stack = new Stack(panel.laminate());
            reach = 4 * panel.laminate().thickness();
        }

        VerdictTheory figures() {
            var response = new SeriesAnalysis().statics(panel, List.of(press));
            LocalEffect local = Patches.local(panel, press);
            LoadCase load = LoadCase.of("palm", LoadCase.Kind.TOUCH, press);
            for (Stations.Station at : Stations.of(panel, load, List.of())) {
                double dx = at.x() - press.x();
                double dy = at.y() - press.y();
                if (Math.abs(dx) < Patches.halfX(press.patch()) + reach
                        && Math.abs(dy) < Patches.halfY(press.patch()) + reach) {
                    keep(response.state(at.x(), at.y()), local.at(dx, dy));
                }
            }
            SectionState middle = response.state(press.x(), press.y());
            LocalEffect.Here here = local.at(0, 0);
            double half = panel.laminate().thickness() / 2;
            double w = response.deflection(press.x(), press.y()) + local.sinking();
            return new VerdictTheory(
                    w - local.dent() / 2,
                    w,
                    surface(panel.laminate().layers().size() - 1, middle, here, half),
                    surface(0, middle, here, -half),
                    outer,
                    inner,
                    sheared,
                    foam,
                    local.dent());
        }

        private double surface(int layer, SectionState state, LocalEffect.Here here, double z) {
            if (!(panel.laminate().layers().get(layer) instanceof Layer.Laid laid)) {
                return 0;
            }
            Triple strain = state.strainAt(stack.layered, z).plus(here.strain(z), 1);
            return PlyStress.of(laid.ply(), laid.angle(), strain).s1();
        }

        private void keep(SectionState state, LocalEffect.Here here) {
            for (int i = 0; i < stack.bottom.length; i++) {
                if (panel.laminate().layers().get(i) instanceof Layer.Laid laid) {
                    double t = laid.thickness();
                    for (double z :
                            new double[] {
                                stack.bottom[i] + 1e-6 * t, stack.bottom[i] + t - 1e-6 * t
                            }) {
                        keepPly(i, laid, state.strainAt(stack.layered, z).plus(here.strain(z), 1));
                    }
                }
            }
            if (!panel.laminate().isBare()) {
                List<TransverseShear> shear = stack.foamShear(state);
                for (int k = 0; k < shear.size(); k++) {
                    LocalEffect.FoamShear more = here.foam((double) k / (shear.size() - 1));
                    foam =
                            Math.max(
                                    foam,
                                    Math.hypot(
                                            shear.get(k).xz() + more.x(),
                                            shear.get(k).yz() + more.y()));
                }
            }
        }

        private void keepPly(int layer, Layer.Laid laid, Triple strain) {
            PlyStress stress = PlyStress.of(laid.ply(), laid.angle(), strain);
            double direct = Math.max(Math.abs(stress.s1()), Math.abs(stress.s2()));
            boolean bare = panel.laminate().isBare();
            if (bare || layer > stack.lastCore) {
                outer = Math.max(outer, direct);
            }
            if (bare || layer < stack.firstCore) {
                inner = Math.max(inner, direct);
            }
            sheared = Math.max(sheared, Math.abs(stress.t12()));
        }
    }
}
