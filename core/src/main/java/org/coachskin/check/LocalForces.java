package org.coachskin.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.coachskin.analysis.CaseResponse;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Triple;
import org.coachskin.local.LocalEffect;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Panel;

/** What patches and pads do beyond the layered theory under one load case. */
final class LocalForces {

    private final List<Press> presses = new ArrayList<>();
    private final List<Presser> all = new ArrayList<>();
    private final MethodError pressError;

    /** What is felt at each place, which is the same whatever the answer. */
    private final Map<Stations.Station, List<Felt>> known = new ConcurrentHashMap<>();

    LocalForces(Panel panel, LoadCase load, List<PadEffect> pads) {
        List<Load.Press> loads =
                load.loads().stream()
                        .filter(Load.Press.class::isInstance)
                        .map(Load.Press.class::cast)
                        .toList();
        pressError = MethodError.beside(panel, loads);
        loads.forEach(
                press -> presses.add(new Press(press, Patches.local(panel, press), pressError)));
        all.addAll(presses);
        all.addAll(pads);
    }

    /** A load that presses, with its whole force. */
    private record Press(Load.Press load, LocalEffect effect, MethodError error)
            implements Presser {

        @Override
        public boolean reaches(Laminate there, double x, double y) {
            double reach = Stations.REACH * there.thickness();
            return Math.abs(x - load.x()) < Patches.halfX(load.patch()) + reach
                    && Math.abs(y - load.y()) < Patches.halfY(load.patch()) + reach;
        }

        @Override
        public List<Stations.Sample> felt(Stations.Station at) {
            return List.of(new Stations.Sample(at.x(), at.y(), 1));
        }

        @Override
        public LocalEffect.Here at(double x, double y) {
            return effect.at(x - load.x(), y - load.y());
        }

        @Override
        public Times times(CaseResponse answer) {
            return new Times(1, -1, 0);
        }
    }

    List<Load.Press> presses() {
        return presses.stream().map(Press::load).toList();
    }

    /** Sinking of the outside surface under the middle of the first press [m]. */
    double sinking() {
        return presses.isEmpty() ? 0 : presses.get(0).effect().sinking();
    }

    /** Error of the theory in how far the outside surface goes in under the first press [-]. */
    double deflectionError() {
        return pressError.deflection();
    }

    /**
     * What is felt of one presser at one place.
     *
     * @param from which
     * @param here at each of the places whose mean is read there
     * @param weights of those
     */
    private record Felt(Presser from, List<LocalEffect.Here> here, List<Double> weights) {}

    /** The same under one answer. */
    record Acting(Felt felt, Presser.Times how) {

        /** Strain to be added at height {@code z}, once. */
        Triple strain(double z) {
            Triple sum = Triple.ZERO;
            double weight = 0;
            for (int i = 0; i < felt.here.size(); i++) {
                sum = sum.plus(felt.here.get(i).strain(z), felt.weights.get(i));
                weight += felt.weights.get(i);
            }
            return sum.times(1 / weight);
        }

        /** Shear stress of foam to be added at a height in it, once. */
        LocalEffect.FoamShear foam(double share) {
            double x = 0;
            double y = 0;
            double weight = 0;
            for (int i = 0; i < felt.here.size(); i++) {
                LocalEffect.FoamShear shear = felt.here.get(i).foam(share);
                x += felt.weights.get(i) * shear.x();
                y += felt.weights.get(i) * shear.y();
                weight += felt.weights.get(i);
            }
            return new LocalEffect.FoamShear(x / weight, y / weight);
        }

        /**
         * How many times it acts.
         *
         * @param sign 1 under the load, -1 under the load the other way round
         */
        double times(int sign) {
            return sign > 0 ? how.loaded() : how.reversed();
        }

        /** How many times it acts all the time. */
        double still() {
            return how.still();
        }

        MethodError error() {
            return felt.from.error();
        }
    }

    /**
     * Returns what acts at a place: four thicknesses beside a patch or a pad it has died out.
     * Places that the solver chose have none: those by a patch are left out, and by a pad the
     * places chosen for it stand for what it does.
     */
    List<Acting> at(Stations.Station at, Laminate stack, CaseResponse answer) {
        if (at.spot()) {
            return List.of();
        }
        return known.computeIfAbsent(at, place -> felt(place, stack)).stream()
                .map(felt -> new Acting(felt, felt.from.times(answer)))
                .toList();
    }

    private List<Felt> felt(Stations.Station at, Laminate stack) {
        return all.stream()
                .filter(presser -> presser.reaches(stack, at.x(), at.y()))
                .map(presser -> felt(presser, presser.felt(at)))
                .toList();
    }

    private static Felt felt(Presser presser, List<Stations.Sample> samples) {
        return new Felt(
                presser,
                samples.stream().map(s -> presser.at(s.x(), s.y())).toList(),
                samples.stream().map(Stations.Sample::weight).toList());
    }
}
