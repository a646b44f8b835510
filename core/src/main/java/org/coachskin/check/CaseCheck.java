package org.coachskin.check;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.analysis.Response;
import org.coachskin.failure.CoreShear;
import org.coachskin.failure.CoreTension;
import org.coachskin.failure.Face;
import org.coachskin.failure.Factor;
import org.coachskin.failure.Factors;
import org.coachskin.failure.FirstCrush;
import org.coachskin.failure.LastingDent;
import org.coachskin.failure.Mode;
import org.coachskin.failure.PlyCriterion;
import org.coachskin.failure.PlyFailure;
import org.coachskin.failure.ShearCrimping;
import org.coachskin.failure.SkinBond;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.PlyStress;
import org.coachskin.laminate.SectionState;
import org.coachskin.laminate.ThermalState;
import org.coachskin.laminate.TransverseShear;
import org.coachskin.laminate.Triple;
import org.coachskin.local.LocalEffect;
import org.coachskin.material.Foam;
import org.coachskin.material.Strength;
import org.coachskin.panel.Crown;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;

/** Every mode that breaks, crushes or marks, under one load case; the worst place of each. */
final class CaseCheck {

    private final Job job;
    private final Stack stack;
    private final LoadCase load;
    private final Response response;
    private final Response standing;
    private final List<ThermalState> heat = new ArrayList<>();
    private final List<LocalEffect> local = new ArrayList<>();
    private final List<Load.Press> presses = new ArrayList<>();
    private final Worst worst;
    private final MethodError patchError;
    private List<LocalEffect.Here> here = List.of();
    private MethodError near = MethodError.AWAY;

    CaseCheck(Job job, Stack stack, LoadCase load, Response response, Response standing) {
        this.job = job;
        this.stack = stack;
        this.load = load;
        this.response = response;
        this.standing = standing;
        for (Load part : load.loads()) {
            if (part instanceof Load.Press press) {
                presses.add(press);
                local.add(Patches.local(job.panel(), press));
            }
        }
        for (Load part : load.standing()) {
            if (part instanceof Load.Heat hot) {
                heat.add(ThermalState.of(stack.laminate, hot.inside(), hot.outside()));
            }
        }
        patchError = MethodError.beside(job.panel(), presses);
        Factors factors = job.limits().factors();
        worst = new Worst(load, load.stays() ? List.of(factors.on(Factors.On.STAYS)) : List.of());
    }

    Response response() {
        return response;
    }

    LoadCase load() {
        return load;
    }

    /** Force of the first press [N]; 0 where the load is spread. */
    double force() {
        return presses.isEmpty() ? 0 : presses.get(0).force();
    }

    /**
     * Sinking of the outside surface under the middle of the first press beyond the layered theory
     * [m].
     */
    double sinking() {
        return local.isEmpty() ? 0 : local.get(0).sinking();
    }

    /** Error of the theory in how far the outside surface goes in under the first press [-]. */
    double deflectionError() {
        return patchError.deflection();
    }

    List<Margin> margins() {
        for (Stations.Station station : Stations.of(job.panel(), load)) {
            SectionState state = response.state(station.x(), station.y());
            SectionState rest = standing.state(station.x(), station.y());
            here = local(station);
            near = here.isEmpty() ? MethodError.AWAY : patchError;
            judge(station, state, rest, 1);
            if (load.reverses()) {
                judge(station, state, rest, -1);
            }
        }
        if (!stack.laminate.isBare()) {
            for (Load.Press press : presses) {
                judgePatch(press);
            }
        }
        return worst.margins();
    }

    private void judge(Stations.Station at, SectionState state, SectionState rest, int sign) {
        SectionState signed = SectionState.ZERO.plus(state, sign);
        for (int i = 0; i < stack.bottom.length; i++) {
            if (stack.laminate.layers().get(i) instanceof Layer.Laid laid) {
                double t = laid.thickness();
                judgePly(at, signed, rest, sign, i, laid, stack.bottom[i] + 1e-6 * t);
                judgePly(at, signed, rest, sign, i, laid, stack.bottom[i] + t - 1e-6 * t);
            }
        }
        if (!stack.laminate.isBare()) {
            judgeFoam(at, signed, rest, sign);
            judgeSkins(at, signed, rest, sign);
        }
    }

    private void judgePly(
            Stations.Station at,
            SectionState state,
            SectionState rest,
            int sign,
            int layer,
            Layer.Laid laid,
            double z) {
        Triple strain = state.strainAt(stack.layered, z);
        for (LocalEffect.Here effect : here) {
            strain = strain.plus(effect.strain(z), sign);
        }
        Triple still = standing(rest, laid, z);
        PlyStress stress = PlyStress.of(laid.ply(), laid.angle(), strain);
        PlyStress stands = PlyStress.of(laid.ply(), laid.angle(), still);
        PlyFailure event = PlyCriterion.event(stress, stands, laid.ply());
        double multiplier = job.limits().criterion().reserve(stress, stands, laid.ply());
        worst.keep(
                event.mode(),
                sign,
                new Place(stack.layerWords(layer) + ", " + at.words(), at.x(), at.y(), z),
                Math.abs(event.stress()),
                event.strength().value(),
                multiplier,
                List.of(job.limits().factors().skin(event.strength())),
                near.skinStress(),
                near.remark());
    }

    /**
     * Local effects that have not died out at a place: four thicknesses beside a patch they have.
     */
    private List<LocalEffect.Here> local(Stations.Station at) {
        List<LocalEffect.Here> found = new ArrayList<>();
        double reach = 4 * stack.laminate.thickness();
        for (int i = 0; i < local.size(); i++) {
            Load.Press press = presses.get(i);
            double dx = at.x() - press.x();
            double dy = at.y() - press.y();
            if (Math.abs(dx) < Patches.halfX(press.patch()) + reach
                    && Math.abs(dy) < Patches.halfY(press.patch()) + reach) {
                found.add(local.get(i).at(dx, dy));
            }
        }
        return found;
    }

    /** Strain that stands all the time and makes stress. */
    private Triple standing(SectionState rest, Layer layer, double z) {
        Triple still = rest.strainAt(stack.layered, z);
        for (ThermalState warm : heat) {
            // Free growth in the plane, less what this layer would do alone.
            still = still.plus(warm.membrane(), 1).plus(layer.expansion(), -warm.rise(z));
        }
        return still;
    }

    private void judgeFoam(Stations.Station at, SectionState state, SectionState rest, int sign) {
        Layer.Core core = (Layer.Core) stack.laminate.layers().get(stack.lastCore);
        judgeCoreShear(core.foam(), at, state, rest, sign);
        for (double z : new double[] {stack.layered.foamBottom(), stack.layered.foamTop()}) {
            Triple stress = core.stiffness().times(state.strainAt(stack.layered, z));
            Triple still = core.stiffness().times(standing(rest, core, z));
            Strength tension = core.foam().tension();
            worst.keep(
                    Mode.CORE_TENSION,
                    sign,
                    new Place("foam, " + at.words(), at.x(), at.y(), z),
                    CoreTension.largest(stress),
                    tension.value(),
                    CoreTension.reserve(stress, still, tension),
                    wanted(Factors.On.BOND),
                    MethodError.AWAY.skinStress());
        }
    }

    private void judgeCoreShear(
            Foam foam, Stations.Station at, SectionState state, SectionState rest, int sign) {
        List<TransverseShear> loaded = stack.foamShear(state);
        List<TransverseShear> still = stack.foamShear(rest);
        double least = Double.POSITIVE_INFINITY;
        double applied = 0;
        for (int k = 0; k < loaded.size(); k++) {
            double tx = loaded.get(k).xz();
            double ty = loaded.get(k).yz();
            for (LocalEffect.Here effect : here) {
                LocalEffect.FoamShear more = effect.foam((double) k / (loaded.size() - 1));
                tx += sign * more.x();
                ty += sign * more.y();
            }
            double reserve =
                    CoreShear.reserve(tx, ty, still.get(k).xz(), still.get(k).yz(), foam.shear());
            if (reserve < least) {
                least = reserve;
                applied = Math.hypot(tx, ty);
            }
        }
        boolean people = load.kind() == LoadCase.Kind.PERSON;
        Factors factors = job.limits().factors();
        worst.keep(
                Mode.CORE_SHEAR,
                sign,
                new Place("foam, " + at.words(), at.x(), at.y(), 0),
                applied,
                foam.shear().value(),
                least,
                List.of(factors.on(people ? Factors.On.CORE_SHEAR_PEOPLE : Factors.On.CORE_SHEAR)),
                near.coreShear(),
                near.remark());
    }

    private void judgeSkins(Stations.Station at, SectionState state, SectionState rest, int sign) {
        Stack.Strain strain = (layer, z) -> state.strainAt(stack.layered, z);
        Stack.Strain still = (layer, z) -> standing(rest, layer, z);
        Triple outer = stack.skinForce(Face.OUTSIDE, strain);
        Triple inner = stack.skinForce(Face.INSIDE, strain);
        Triple outerStill = stack.skinForce(Face.OUTSIDE, still);
        Triple innerStill = stack.skinForce(Face.INSIDE, still);
        stack.outside.ifPresent(
                skin -> {
                    double multiplier = skin.reserve(outer, inner, outerStill, innerStill);
                    keepWrinkling(at, "outside skin, ", sign, skin.critical(0, -1), multiplier);
                    judgeBond(at, Face.OUTSIDE, outer, outerStill, sign);
                });
        stack.inside.ifPresent(
                skin -> {
                    double multiplier = skin.reserve(inner, outer, innerStill, outerStill);
                    keepWrinkling(at, "inside skin, ", sign, skin.critical(0, -1), multiplier);
                    judgeBond(at, Face.INSIDE, inner, innerStill, sign);
                });
        double crimping =
                ShearCrimping.reserve(
                        stack.shear, outer.plus(inner, 1), outerStill.plus(innerStill, 1));
        worst.keep(
                Mode.CRIMPING,
                sign,
                new Place("whole section, " + at.words(), at.x(), at.y(), 0),
                stack.shear.m11() / crimping,
                stack.shear.m11(),
                crimping,
                wanted(Factors.On.WRINKLING),
                MethodError.WRINKLING);
    }

    private void keepWrinkling(
            Stations.Station at, String skin, int sign, double critical, double multiplier) {
        worst.keep(
                Mode.WRINKLING,
                sign,
                new Place(skin + at.words(), at.x(), at.y(), 0),
                critical / multiplier,
                critical,
                multiplier,
                wanted(Factors.On.WRINKLING),
                MethodError.WRINKLING);
    }

    private void judgeBond(
            Stations.Station at, Face face, Triple force, Triple standing, int sign) {
        Crown crown = job.panel().crown();
        if (crown.isFlat()) {
            return;
        }
        boolean outer = face == Face.OUTSIDE;
        int core = outer ? stack.lastCore : stack.firstCore;
        Strength tension = ((Layer.Core) stack.laminate.layers().get(core)).foam().tension();
        double pull = SkinBond.pull(face, force, crown.across(), crown.along());
        double still = SkinBond.pull(face, standing, crown.across(), crown.along());
        worst.keep(
                Mode.BOND,
                sign,
                new Place(
                        (outer ? "outside skin, " : "inside skin, ") + at.words(),
                        at.x(),
                        at.y(),
                        outer ? stack.layered.foamTop() : stack.layered.foamBottom()),
                Math.max(0, pull),
                tension.value(),
                SkinBond.reserve(pull, still, tension),
                wanted(Factors.On.BOND),
                MethodError.AWAY.skinStress());
    }

    private List<Factor> wanted(Factors.On on) {
        return List.of(job.limits().factors().on(on));
    }

    private void judgePatch(Load.Press press) {
        if (press.force() <= 0) {
            return;
        }
        Place place =
                new Place(
                        "under the " + load.name(), press.x(), press.y(), stack.layered.foamTop());
        LastingDent.of(stack.laminate, press.patch())
                .ifPresent(
                        dent -> {
                            double mark = dent.force(job.limits().lastingDent());
                            worst.keep(
                                    Mode.LASTING_MARK,
                                    1,
                                    place,
                                    press.force(),
                                    mark,
                                    mark / press.force(),
                                    List.of(),
                                    MethodError.DENT);
                            double crushed = dent.force(Limits.CRUSHED);
                            worst.keep(
                                    Mode.CRUSHING,
                                    1,
                                    place,
                                    press.force(),
                                    crushed,
                                    crushed / press.force(),
                                    wanted(Factors.On.CRUSHING),
                                    MethodError.DENT);
                        });
        if (!worst.has(Mode.CRUSHING)) {
            // Bare foam on the outside: nothing spreads the load, so the first crush is the last.
            FirstCrush.of(stack.laminate, press.patch())
                    .ifPresent(
                            first -> {
                                Strength crush = first.strength();
                                double multiplier = first.force() / press.force();
                                worst.keep(
                                        Mode.LASTING_MARK,
                                        1,
                                        place,
                                        press.force(),
                                        first.force(),
                                        multiplier,
                                        List.of(),
                                        MethodError.DENT);
                                worst.keep(
                                        Mode.CRUSHING,
                                        1,
                                        place,
                                        first.pressure(press.force()),
                                        crush.value(),
                                        multiplier,
                                        wanted(Factors.On.CRUSHING),
                                        MethodError.DENT);
                            });
        }
    }
}
