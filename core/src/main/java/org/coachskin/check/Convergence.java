package org.coachskin.check;

import java.util.List;
import java.util.Map;

/**
 * How far figures of elements are off, from how they move over three orders of the polynomials.
 *
 * <p><b>Estimate.</b> A movement or a force converges fast and evenly: what it has moved by from
 * the order before covers its error, or what those beside it have moved by, for one alone may stand
 * still by chance. A stress is read at one place, where two solutions may cross; so what they
 * differ by anywhere in the same element counts too, and a share of what lies two orders back. The
 * numbers hold nineteen of twenty figures of panels drawn by lot; they were chosen on other panels
 * than those that the evidence page shows them on.
 */
final class Convergence {

    /** An error above this is told [-]. */
    static final double WANTED = 0.01;

    /** Of what a group of movements or forces has moved by, root of the mean square. */
    private static final double GROUP = 0.7;

    /** Of what a force has moved by over two orders. */
    private static final double FORCE_BEFORE = 0.03;

    /** Of what a stress has moved by at its place, and of the most within its element. */
    private static final double STRESS = 0.5;

    /** Of the most within its element over two orders. */
    private static final double STRESS_BEFORE = 0.02;

    /** Of what the shear of foam has moved by, over one order and over two. */
    private static final double SHEAR = 1.5;

    private static final double SHEAR_BEFORE = 0.2;

    private final Map<String, Figure> answer;
    private final Map<String, Figure> lower;
    private final Map<String, Figure> lowest;
    private final List<Map<String, Figure>> astray;
    private final List<Map<String, Figure>> furtherAstray;

    /**
     * @param answer figures of the answer
     * @param lower of elements one order lower
     * @param lowest of elements two orders lower
     * @param astray of the answer astray by as much as those one order lower differ within the same
     *     element, place by place
     * @param furtherAstray and those two orders lower
     */
    Convergence(
            Map<String, Figure> answer,
            Map<String, Figure> lower,
            Map<String, Figure> lowest,
            List<Map<String, Figure>> astray,
            List<Map<String, Figure>> furtherAstray) {
        this.answer = answer;
        this.lower = lower;
        this.lowest = lowest;
        this.astray = astray;
        this.furtherAstray = furtherAstray;
    }

    /** Returns the error of a figure, relative to its unit; 0 for one that no elements decide. */
    double error(String name) {
        Figure figure = answer.get(name);
        if (figure == null) {
            return 0;
        }
        double last = off(figure, lower);
        return switch (figure.kind()) {
            case FREQUENCY -> last;
            case DEFLECTION -> Math.max(last, GROUP * together(figure));
            case REACTION -> Math.max(GROUP * together(figure), FORCE_BEFORE * off(figure, lowest));
            case STRESS ->
                    STRESS * (last + most(figure, astray))
                            + STRESS_BEFORE * most(figure, furtherAstray);
            case SHEAR -> SHEAR * last + SHEAR_BEFORE * off(figure, lowest);
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

    /** Returns the largest change of the stress behind a reserve. */
    private static double most(Figure figure, List<Map<String, Figure>> others) {
        double most = 0;
        for (Map<String, Figure> other : others) {
            Figure there = other.get(figure.name());
            double change = there == null ? 0 : Math.abs(1 - figure.value() / there.value());
            most = Math.max(most, Double.isFinite(change) ? change : 0);
        }
        return most;
    }
}
