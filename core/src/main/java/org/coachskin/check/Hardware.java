package org.coachskin.check;

import java.util.List;
import org.coachskin.analysis.CaseResponse;
import org.coachskin.analysis.Held;
import org.coachskin.failure.Factors;
import org.coachskin.failure.Mode;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.material.Strength;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Panel;

/**
 * What happens nearer to hinges, latches and rests than foam is read ({@link Reading}): punching,
 * the pad's force over the perimeter half a thickness outside it.
 */
final class Hardware {

    private Hardware() {}

    /** Keeps the punching of every pad that holds inward and outward. */
    static void judge(Job job, Stacks stacks, LoadCase load, CaseResponse answer, Worst worst) {
        judge(job, stacks, answer.atRest(), answer.held(), 1, worst);
        if (load.reverses()) {
            judge(job, stacks, answer.atRest(), answer.heldReversed(), -1, worst);
        }
    }

    private static void judge(
            Job job, Stacks stacks, Held atRest, Held held, int sign, Worst worst) {
        Panel panel = job.panel();
        for (Fitting.Pad pad : panel.support().pads()) {
            if (!pad.held().contains(Fitting.Direction.Z)) {
                continue;
            }
            Laminate stack = stacks.at(pad.x(), pad.y()).laminate;
            if (stack.isBare()) {
                continue;
            }
            Layer.Core core = (Layer.Core) stack.layers().get(stack.outermostCore());
            double still = atRest.outward(pad.name());
            double force = held.outward(pad.name());
            double more = force - still;
            double area = perimeter(panel, pad, stack.thickness() / 2) * stack.foamThickness();
            Strength shear = core.foam().shear();
            double room = more > 0 ? shear.value() * area - still : shear.value() * area + still;
            double multiplier =
                    room <= 0 ? 0 : more == 0 ? Double.POSITIVE_INFINITY : room / Math.abs(more);
            worst.keep(
                    Mode.PUNCHING,
                    sign,
                    new Place("foam, round the " + pad.name(), pad.x(), pad.y(), 0),
                    Math.abs(force) / area,
                    shear.value(),
                    multiplier,
                    List.of(job.limits().factors().on(Factors.On.CORE_SHEAR)),
                    MethodError.AWAY.coreShear());
        }
    }

    /** Length of the rectangle {@code out} outside a pad, as far as it lies on the panel [m]. */
    private static double perimeter(Panel panel, Fitting.Pad pad, double out) {
        double hx = pad.sizeX() / 2 + out;
        double hy = pad.sizeY() / 2 + out;
        int steps = 100;
        double length = 0;
        for (int side = -1; side <= 1; side += 2) {
            for (int k = 0; k < steps; k++) {
                double s = -1 + (2 * k + 1.0) / steps;
                if (panel.hasMaterialAt(pad.x() + side * hx, pad.y() + s * hy)) {
                    length += 2 * hy / steps;
                }
                if (panel.hasMaterialAt(pad.x() + s * hx, pad.y() + side * hy)) {
                    length += 2 * hx / steps;
                }
            }
        }
        return length;
    }
}
