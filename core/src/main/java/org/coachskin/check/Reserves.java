package org.coachskin.check;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.coachskin.failure.Mode;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Ply;
import org.coachskin.laminate.PrimaryInput;

/**
 * Scatter of the reserve of every mode from hand work, foam and strength.
 *
 * <p>Linear propagation: the panel is judged again with each primary input one of its standard
 * deviations higher. A strength scatters by {@value #STRENGTH} beside what the other inputs explain
 * [common practice, no source]. Costs about seven times the modes of a check; the inputs are worked
 * out side by side.
 */
public final class Reserves {

    private static final double STRENGTH = 0.12;

    private Reserves() {}

    /**
     * Returns the scatter of the reserve of each mode of {@code verdict} that has a finite one. The
     * felt stiffness has that of {@link Verdict#felt}.
     */
    public static Map<Mode, Spread> of(Verdict verdict) {
        Job job = verdict.job().withLoadsPlaced();
        PanelCheck check = new PanelCheck();
        List<PrimaryInput> inputs = List.of(PrimaryInput.values());
        // Each input stands by itself, so the order of work matters to none of them.
        List<List<Margin>> moved =
                inputs.parallelStream().map(input -> check.margins(moved(job, input))).toList();
        Map<Mode, Spread> spreads = new EnumMap<>(Mode.class);
        for (Margin margin : verdict.margins()) {
            if (Double.isFinite(margin.reserve())) {
                Map<PrimaryInput, Double> changes = new EnumMap<>(PrimaryInput.class);
                for (int i = 0; i < inputs.size(); i++) {
                    double there = reserve(moved.get(i), margin.mode());
                    changes.put(inputs.get(i), there - margin.reserve());
                }
                spreads.put(margin.mode(), Spread.of(margin.reserve(), changes).notNegative());
            }
        }
        verdict.felt()
                .map(felt -> felt.times(1 / job.limits().feltStiffness()))
                .ifPresent(felt -> spreads.replace(Mode.FELT_STIFFNESS, felt));
        return spreads;
    }

    private static Job moved(Job job, PrimaryInput input) {
        if (input != PrimaryInput.STRENGTHS) {
            return job.withSchedule(job.schedule().moved(input, 1));
        }
        return job.withPanel(job.panel().withStacks(Reserves::stronger));
    }

    /** Returns the stack with every strength of plies and foam higher. */
    private static Laminate stronger(Laminate laminate) {
        List<Layer> layers = new ArrayList<>();
        for (Layer layer : laminate.layers()) {
            if (layer instanceof Layer.Laid laid) {
                Ply ply = laid.ply();
                layers.add(
                        new Layer.Laid(
                                ply.withStrength(ply.strength().times(1 + STRENGTH)),
                                laid.angle()));
            } else {
                layers.add(layer);
            }
        }
        return new Laminate(layers).withFoam(foam -> foam.withStrengthsTimes(1 + STRENGTH));
    }

    private static double reserve(List<Margin> margins, Mode mode) {
        return margins.stream()
                .filter(margin -> margin.mode() == mode)
                .mapToDouble(Margin::reserve)
                .findFirst()
                .orElse(Double.POSITIVE_INFINITY);
    }
}
