package org.coachskin.design;

import org.coachskin.check.Margin;
import org.coachskin.check.Movement;
import org.coachskin.check.Verdict;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Stiffness;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Panel;

/**
 * What a change of stack should come to, told from a verdict without solving anything.
 *
 * <p>Each part of a movement goes with its own stiffness: skins with bending, foam with shear, the
 * rubber seal under a press stays. That would be exact if the panel shared out its forces as
 * before. Foam shear goes with thickness and strength of the foam. Nothing is told of other modes.
 */
final class Forecast {

    private final Verdict before;
    private final Laminate stack;

    Forecast(Verdict before) {
        this.before = before;
        stack = before.job().panel().laminate();
    }

    /** Returns the least reserve that can be told of the changed panel; infinite for none. */
    double reserve(Panel changed) {
        double least = Double.POSITIVE_INFINITY;
        for (Margin margin : before.margins()) {
            double there =
                    switch (margin.mode()) {
                        case FELT_STIFFNESS, SAG ->
                                margin.reserve() / moves(margin.loadCase(), changed.laminate());
                        case SEAL_GAP -> gap(margin, changed);
                        case CORE_SHEAR, PUNCHING -> sheared(margin, changed.laminate());
                        default -> Double.POSITIVE_INFINITY;
                    };
            least = Math.min(least, there);
        }
        return least;
    }

    /** Returns how many times as far the changed stack should move. */
    private double moves(String load, Laminate changed) {
        Movement movement = before.movementUnder(load);
        double bending = movement.bending() * bending(stack) / bending(changed);
        double sliding = movement.sliding() * shear(stack) / shear(changed);
        double stays = movement.seal() + movement.dent();
        if (movement.force() == 0 && movement.seal() != 0) {
            // A load that is spread lifts it off its seal or lets it lie evenly on it.
            return (bending + sliding) / (movement.bending() + movement.sliding());
        }
        return (bending + sliding + stays) / movement.total();
    }

    private double gap(Margin margin, Panel changed) {
        double squeeze =
                changed.support().fittings().stream()
                        .filter(Fitting.RubberSeal.class::isInstance)
                        .mapToDouble(fitting -> ((Fitting.RubberSeal) fitting).squeeze())
                        .max()
                        .orElse(0);
        double lift = (margin.applied() + squeeze) * moves(margin.loadCase(), changed.laminate());
        return margin.allowable() / Math.max(1e-9, lift - squeeze);
    }

    private double sheared(Margin margin, Laminate changed) {
        boolean elsewhere =
                before.job().panel().zoneAt(margin.place().x(), margin.place().y()).isPresent();
        return elsewhere || stack.isBare()
                ? Double.POSITIVE_INFINITY
                : margin.reserve() * foam(changed) / foam(stack);
    }

    /** Bending stiffness without stretching, both ways together. */
    private static double bending(Laminate laminate) {
        Stiffness s = Stiffness.of(laminate);
        double b = s.b().m11() + s.b().m22();
        return s.d().m11() + s.d().m22() - b * b / (s.a().m11() + s.a().m22());
    }

    private static double shear(Laminate laminate) {
        Stiffness s = Stiffness.of(laminate);
        return s.h().m11() + s.h().m22();
    }

    /** Shear force per width that the foam bears. */
    private static double foam(Laminate laminate) {
        double sum = 0;
        for (Layer layer : laminate.layers()) {
            if (layer instanceof Layer.Core core) {
                sum += core.thickness() * core.foam().shear().value();
            }
        }
        return sum;
    }
}
