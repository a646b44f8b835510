package org.coachskin.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coachskin.analysis.Held;
import org.coachskin.failure.Mode;

/**
 * One figure of a verdict that elements can get wrong.
 *
 * @param kind what sort of figure
 * @param name which one, the same in every solution of one job
 * @param value in its unit
 * @param unit what an error is counted in: the value itself, or for forces the largest beside it
 * @param group figures that err alike: forces of one load case, all of a sort otherwise
 * @param mode the mode whose reserve it is, if it is one's
 */
record Figure(
        Kind kind, String name, double value, double unit, String group, Optional<Mode> mode) {

    /** Sorts of figures. */
    enum Kind {
        DEFLECTION,
        STRESS,
        SHEAR,
        REACTION,
        FREQUENCY
    }

    /** Returns how far this lies from the same figure of another solution, relative. */
    double off(Figure other) {
        return Math.abs(value - other.value) / unit;
    }

    private static Figure of(Kind kind, String name, double value) {
        return new Figure(kind, name, value, Math.abs(value), "", Optional.empty());
    }

    /**
     * Returns the figures of a solution by name: the reserve of every mode, then case by case the
     * movement, the force of every fitting and of the seal.
     *
     * @param margins the worst of each mode
     * @param cases the load cases
     * @param moved where each of them moves the panel most
     * @param frequency lowest [Hz]; left out where NaN
     */
    static Map<String, Figure> of(
            List<Margin> margins, List<CaseCheck> cases, List<Place> moved, double frequency) {
        Map<String, Figure> figures = new LinkedHashMap<>();
        for (Margin margin : margins) {
            kind(margin.mode())
                    .ifPresent(kind -> put(figures, reserve(kind, margin.mode(), margin)));
        }
        for (int i = 0; i < cases.size(); i++) {
            CaseCheck check = cases.get(i);
            String under = " under " + check.load().name();
            double by = Moving.movement(check, moved.get(i));
            put(figures, of(Kind.DEFLECTION, "movement" + under, by));
            forces(check.answer().held(), under).forEach(figure -> put(figures, figure));
        }
        if (!Double.isNaN(frequency)) {
            put(figures, of(Kind.FREQUENCY, "frequency", frequency));
        }
        return figures;
    }

    private static void put(Map<String, Figure> figures, Figure figure) {
        figures.putIfAbsent(figure.name(), figure);
    }

    private static Figure reserve(Kind kind, Mode mode, Margin margin) {
        double value = margin.reserve();
        return new Figure(kind, mode.words(), value, Math.abs(value), "", Optional.of(mode));
    }

    private static List<Figure> forces(Held held, String under) {
        double largest = Math.abs(held.sealForce());
        for (Held.Grip grip : held.grips()) {
            largest = Math.max(largest, Math.abs(grip.force()));
        }
        List<Figure> forces = new ArrayList<>();
        for (Held.Grip grip : held.grips()) {
            String name = grip.name() + " " + grip.direction() + under;
            forces.add(
                    new Figure(
                            Kind.REACTION, name, grip.force(), largest, under, Optional.empty()));
        }
        if (!held.seals().isEmpty()) {
            String name = "rubber seal" + under;
            forces.add(
                    new Figure(
                            Kind.REACTION,
                            name,
                            held.sealForce(),
                            largest,
                            under,
                            Optional.empty()));
        }
        return forces;
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
