package org.coachskin.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.coachskin.analysis.CaseResponse;
import org.coachskin.analysis.Held;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Triple;
import org.coachskin.local.LocalEffect;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Panel;

/**
 * What patches and pads do beyond the layered theory under one load case. A press does it under the
 * load; a pad by what the load adds to its force, and by the force it has at rest all the time.
 */
final class LocalForces {

    private final List<Load.Press> presses = new ArrayList<>();
    private final List<LocalEffect> effects = new ArrayList<>();
    private final List<PadEffect> pads;
    private final MethodError pressError;

    /** What is felt at each place, which is the same whatever the answer. */
    private final Map<Stations.Station, List<Part>> known = new ConcurrentHashMap<>();

    LocalForces(Panel panel, LoadCase load, List<PadEffect> pads) {
        this.pads = pads;
        for (Load part : load.loads()) {
            if (part instanceof Load.Press press) {
                presses.add(press);
                effects.add(Patches.local(panel, press));
            }
        }
        pressError = MethodError.beside(panel, presses);
    }

    List<Load.Press> presses() {
        return presses;
    }

    /** Sinking of the outside surface under the middle of the first press [m]. */
    double sinking() {
        return effects.isEmpty() ? 0 : effects.get(0).sinking();
    }

    /** Error of the theory in how far the outside surface goes in under the first press [-]. */
    double deflectionError() {
        return pressError.deflection();
    }

    /**
     * One local effect at one place.
     *
     * @param here at the place, or where its mean is read
     * @param weights of those
     * @param pad which makes it; empty for a press, whose force it holds
     * @param error of the theory there
     */
    private record Part(
            List<LocalEffect.Here> here,
            List<Double> weights,
            Optional<PadEffect> pad,
            MethodError error) {}

    /**
     * A local effect at one place under one answer.
     *
     * @param part what it is
     * @param loaded how many times it acts under the load
     * @param reversed under the load the other way round
     * @param still all the time
     */
    record Acting(Part part, double loaded, double reversed, double still) {

        /** Strain to be added at height {@code z}, per unit. */
        Triple strain(double z) {
            Triple sum = Triple.ZERO;
            double weight = 0;
            for (int i = 0; i < part.here.size(); i++) {
                sum = sum.plus(part.here.get(i).strain(z), part.weights.get(i));
                weight += part.weights.get(i);
            }
            return sum.times(1 / weight);
        }

        /** Shear stress of foam to be added at a height in it, per unit. */
        LocalEffect.FoamShear foam(double share) {
            double x = 0;
            double y = 0;
            double weight = 0;
            for (int i = 0; i < part.here.size(); i++) {
                LocalEffect.FoamShear shear = part.here.get(i).foam(share);
                x += part.weights.get(i) * shear.x();
                y += part.weights.get(i) * shear.y();
                weight += part.weights.get(i);
            }
            return new LocalEffect.FoamShear(x / weight, y / weight);
        }

        /**
         * @param sign 1 under the load, -1 under the load the other way round
         */
        double times(int sign) {
            return sign > 0 ? loaded : reversed;
        }

        MethodError error() {
            return part.error;
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
        List<Acting> acting = new ArrayList<>();
        for (Part part : known.computeIfAbsent(at, place -> parts(place, stack))) {
            if (part.pad.isEmpty()) {
                acting.add(new Acting(part, 1, -1, 0));
                continue;
            }
            Fitting.Pad pad = part.pad.get().pad;
            double still = force(answer.atRest(), pad);
            acting.add(
                    new Acting(
                            part,
                            force(answer.held(), pad) - still,
                            force(answer.heldReversed(), pad) - still,
                            still));
        }
        return acting;
    }

    private List<Part> parts(Stations.Station at, Laminate stack) {
        List<Part> parts = new ArrayList<>();
        double reach = Stations.REACH * stack.thickness();
        for (int i = 0; i < effects.size(); i++) {
            Load.Press press = presses.get(i);
            double dx = at.x() - press.x();
            double dy = at.y() - press.y();
            if (Math.abs(dx) < Patches.halfX(press.patch()) + reach
                    && Math.abs(dy) < Patches.halfY(press.patch()) + reach) {
                List<LocalEffect.Here> here = List.of(effects.get(i).at(dx, dy));
                parts.add(new Part(here, List.of(1.0), Optional.empty(), pressError));
            }
        }
        for (PadEffect pad : pads) {
            if (pad.reaches(stack, at.x(), at.y())) {
                List<LocalEffect.Here> here = new ArrayList<>();
                List<Double> weights = new ArrayList<>();
                for (Stations.Sample sample : at.samples()) {
                    here.add(pad.at(sample.x() - pad.place.x(), sample.y() - pad.place.y()));
                    weights.add(sample.weight());
                }
                parts.add(new Part(here, weights, Optional.of(pad), pad.error));
            }
        }
        return parts;
    }

    private static double force(Held held, Fitting.Pad pad) {
        for (Held.Grip grip : held.grips()) {
            if (grip.direction() == Fitting.Direction.Z && grip.name().equals(pad.name())) {
                return grip.force();
            }
        }
        return 0;
    }
}
