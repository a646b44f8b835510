package org.coachskin.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.coachskin.analysis.Held;
import org.coachskin.analysis.Response;
import org.coachskin.failure.Mode;

/**
 * One figure of a verdict that a numerical solution can get wrong.
 *
 * @param kind what sort of figure
 * @param name which one, the same in every solution of one job
 * @param value in its unit
 * @param unit what an error is counted in: the value itself, or for forces the largest beside it
 * @param isMode whether it is the reserve of a mode
 */
record Figure(Kind kind, String name, double value, double unit, boolean isMode) {

    /** Sorts of figures. */
    enum Kind {
        DEFLECTION,
        STRESS,
        SHEAR,
        REACTION,
        FREQUENCY
    }

    /** Returns how far this lies from the same figure of a better solution, relative. */
    double off(Figure better) {
        return Math.abs(value - better.value) / better.unit;
    }

    private static Figure itself(Kind kind, String name, double value, boolean isMode) {
        return new Figure(kind, name, value, Math.abs(value), isMode);
    }

    /**
     * Returns the figures of a solution by name: the reserve of every mode, then case by case the
     * movement, the force of every fitting and of the seal.
     *
     * @param margins the worst of each mode
     * @param cases the load cases
     * @param frequency lowest [Hz]
     */
    static Map<String, Figure> of(
            Job job, List<Margin> margins, List<CaseCheck> cases, double frequency) {
        List<Figure> figures = new ArrayList<>();
        for (Margin margin : margins) {
            kind(margin.mode())
                    .ifPresent(
                            kind ->
                                    figures.add(
                                            itself(
                                                    kind,
                                                    margin.mode().words(),
                                                    margin.reserve(),
                                                    true)));
        }
        for (CaseCheck check : cases) {
            String under = " under " + check.load().name();
            double moved = Moving.movement(job, check);
            figures.add(itself(Kind.DEFLECTION, "movement" + under, moved, false));
            addForces(check.answer().held(), under, figures);
        }
        figures.add(itself(Kind.FREQUENCY, "frequency", frequency, false));
        Map<String, Figure> byName = new LinkedHashMap<>();
        figures.forEach(figure -> byName.putIfAbsent(figure.name(), figure));
        return byName;
    }

    private static void addForces(Held held, String under, List<Figure> figures) {
        double largest = Math.abs(held.sealForce());
        for (Held.Grip grip : held.grips()) {
            largest = Math.max(largest, Math.abs(grip.force()));
        }
        for (Held.Grip grip : held.grips()) {
            String name = grip.name() + " " + grip.direction() + under;
            figures.add(new Figure(Kind.REACTION, name, grip.force(), largest, false));
        }
        if (!held.seals().isEmpty()) {
            figures.add(
                    new Figure(
                            Kind.REACTION,
                            "rubber seal" + under,
                            held.sealForce(),
                            largest,
                            false));
        }
    }

    /**
     * Returns those of the places judged where some mode is worst, so that another solution can be
     * read there; at least one.
     */
    static List<Response.Spot> places(List<Margin> margins, List<CaseCheck> cases) {
        Set<Response.Spot> worst = new HashSet<>();
        for (Margin margin : margins) {
            worst.add(new Response.Spot(margin.place().x(), margin.place().y()));
        }
        List<Response.Spot> judged = cases.get(0).spots();
        List<Response.Spot> found = judged.stream().filter(worst::contains).distinct().toList();
        return found.isEmpty() ? judged.subList(0, 1) : found;
    }

    /** Returns the sort of a mode's figure; empty for what is worked out from the patch alone. */
    private static Optional<Kind> kind(Mode mode) {
        return switch (mode) {
            case FELT_STIFFNESS, SAG, SEAL_GAP -> Optional.of(Kind.DEFLECTION);
            case CORE_SHEAR -> Optional.of(Kind.SHEAR);
            case PUNCHING -> Optional.of(Kind.REACTION);
            case CRUSHING, LASTING_MARK -> Optional.empty();
            default -> Optional.of(Kind.STRESS);
        };
    }
}
