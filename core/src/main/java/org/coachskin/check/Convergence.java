package org.coachskin.check;

import java.util.List;
import java.util.Map;
import org.coachskin.failure.Mode;

/**
 * How far figures of elements are off, from how they move over three orders of the polynomials.
 *
 * <p><b>Estimate.</b> Movements and forces converge fast and evenly: what a figure has moved by
 * from the order before covers its error, or what those beside it have moved by, for one alone may
 * stand still by chance. A stress is read at one place, where two solutions may cross; so what they
 * differ by anywhere in the same element counts too. The numbers hold nineteen of twenty figures of
 * panels drawn by lot (evidence page).
 */
final class Convergence {

    /** An error above this is told [-]. */
    static final double WANTED = 0.01;

    /** Of what a movement or the frequency has moved by. */
    private static final double SMOOTH = 1.2;

    /** Of what all movements have moved by, root of the mean square. */
    private static final double MOVEMENTS = 0.7;

    /** Of what a force, the forces beside it, and it over two orders have moved by. */
    private static final double FORCE = 0.1;

    private static final double FORCES = 0.4;
    private static final double FORCE_BEFORE = 0.05;

    /** Of what a stress has moved by at its place, and of the most within its element. */
    private static final double STRESS = 1.55;

    private static final double ELEMENT = 0.28;

    /**
     * Foam is torn where skins bend by themselves, within millimetres: so many times as far off.
     */
    private static final double TORN = 3;

    /** Of what the shear of foam has moved by, over one order and over two. */
    private static final double SHEAR = 2.5;

    private static final double SHEAR_BEFORE = 0.5;

    private final Map<String, Figure> answer;
    private final Map<String, Figure> lower;
    private final Map<String, Figure> lowest;
    private final List<Map<String, Figure>> astray;

    /**
     * @param answer figures of the answer
     * @param lower of elements one order lower
     * @param lowest of elements two orders lower
     * @param astray of the answer astray by as much as those one order lower differ within the same
     *     element, place by place
     */
    Convergence(
            Map<String, Figure> answer,
            Map<String, Figure> lower,
            Map<String, Figure> lowest,
            List<Map<String, Figure>> astray) {
        this.answer = answer;
        this.lower = lower;
        this.lowest = lowest;
        this.astray = astray;
    }

    /** Returns the error of a figure, relative to its unit; 0 for one that no elements decide. */
    double error(String name) {
        Figure figure = answer.get(name);
        if (figure == null) {
            return 0;
        }
        double last = off(figure, lower);
        double before = off(figure, lowest);
        return switch (figure.kind()) {
            case FREQUENCY -> SMOOTH * last;
            case DEFLECTION -> Math.max(SMOOTH * last, MOVEMENTS * together(figure));
            case REACTION -> FORCE * last + FORCES * together(figure) + FORCE_BEFORE * before;
            case STRESS -> {
                boolean torn = figure.mode().filter(Mode.CORE_TENSION::equals).isPresent();
                yield (torn ? TORN : 1) * (STRESS * last + ELEMENT * most(figure));
            }
            case SHEAR -> Math.max(SHEAR * last, SHEAR_BEFORE * before);
        };
    }

    /** Returns how far another solution differs; 0 where it has no such figure. */
    private static double off(Figure figure, Map<String, Figure> other) {
        Figure there = other.get(figure.name());
        double off = there == null ? 0 : figure.off(there);
        return Double.isFinite(off) ? off : 0;
    }

    /** Returns the root of the mean square of the last move of all figures of a group. */
    private double together(Figure figure) {
        double sum = 0;
        int count = 0;
        for (Figure each : answer.values()) {
            if (each.kind() == figure.kind() && each.group().equals(figure.group())) {
                double off = off(each, lower);
                sum += off * off;
                count++;
            }
        }
        return Math.sqrt(sum / count);
    }

    /** Returns the largest change of the stress behind a reserve within its element. */
    private double most(Figure figure) {
        double most = 0;
        for (Map<String, Figure> other : astray) {
            Figure there = other.get(figure.name());
            double change = there == null ? 0 : Math.abs(1 - figure.value() / there.value());
            most = Math.max(most, Double.isFinite(change) ? change : 0);
        }
        return most;
    }
}
