package org.coachskin.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.coachskin.analysis.CaseResponse;
import org.coachskin.analysis.Response;
import org.coachskin.failure.CoreShear;
import org.coachskin.failure.CoreTension;
import org.coachskin.failure.Face;
import org.coachskin.failure.Factor;
import org.coachskin.failure.Factors;
import org.coachskin.failure.Mode;
import org.coachskin.failure.PlyFailure;
import org.coachskin.failure.ShearCrimping;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.SectionState;
import org.coachskin.laminate.ThermalState;
import org.coachskin.laminate.TransverseShear;
import org.coachskin.laminate.Triple;
import org.coachskin.local.LocalEffect;
import org.coachskin.material.Foam;
import org.coachskin.material.Strength;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;

/** Every mode that breaks, crushes or marks, under one load case; the worst place of each. */
final class CaseCheck {

    private final Job job;
    private final Stacks stacks;
    private final LoadCase load;
    private final CaseResponse answer;
    private final List<Stations.Station> stations;

    private final LocalForces local;
    private final boolean first;
    private final Wrinkles wrinkles;
    private final Worst worst;

    /** Stack, its free growth, and local effects at the place that is being judged. */
    private Stack stack;

    private List<ThermalState> heat = List.of();
    private List<LocalForces.Acting> here = List.of();
    private MethodError near = MethodError.AWAY;

    /** Judges at patches and where the solver says. */
    CaseCheck(Job job, Stacks stacks, List<PadEffect> pads, LoadCase load, CaseResponse answer) {
        this(
                job,
                stacks,
                load,
                answer,
                Stations.of(job.panel(), load, answer.loaded().spots()),
                new LocalForces(job.panel(), load, pads),
                true);
    }

    private CaseCheck(
            Job job,
            Stacks stacks,
            LoadCase load,
            CaseResponse answer,
            List<Stations.Station> stations,
            LocalForces local,
            boolean first) {
        this.job = job;
        this.stacks = stacks;
        this.stations = stations;
        this.local = local;
        this.first = first;
        this.load = load;
        this.answer = answer;
        stack = stacks.at(job.panel().width() / 2, job.panel().length() / 2);
        wrinkles =
                new Wrinkles(wanted(Factors.On.WRINKLING), first ? Wrinkles.MOST : Wrinkles.AGAIN);
        Factors factors = job.limits().factors();
        worst = new Worst(load, load.stays() ? List.of(factors.on(Factors.On.STAYS)) : List.of());
    }

    CaseResponse answer() {
        return answer;
    }

    /**
     * Returns what the stack bears at the place of a margin, as it was judged there: what stands
     * included; empty for a margin that was not judged through the thickness.
     */
    Optional<Through> through(Margin margin) {
        Place place = margin.place();
        return stations.stream()
                .filter(at -> at.x() == place.x() && at.y() == place.y())
                .findFirst()
                .map(at -> through(margin, at));
    }

    private Through through(Margin margin, Stations.Station at) {
        enter(stacks.at(at.x(), at.y()));
        SectionState rest = at.state(answer.standing());
        SectionState state = at.state(margin.reversed() ? answer.reversed() : answer.loaded());
        int sign = margin.reversed() ? -1 : 1;
        List<LocalForces.Acting> acting = local.at(at, stack.laminate, answer);
        List<Through.InPlane> inPlane = new ArrayList<>();
        for (int i = 0; i < stack.bottom.length; i++) {
            Layer layer = stack.laminate.layers().get(i);
            for (double z : new double[] {stack.bottom[i], stack.bottom[i] + layer.thickness()}) {
                Triple strain = state.strainAt(stack.layered, z).plus(standing(rest, layer, z), 1);
                for (LocalForces.Acting effect : acting) {
                    strain = strain.plus(effect.strain(z), effect.times(sign) + effect.still());
                }
                inPlane.add(new Through.InPlane(i, z, layer.stiffness().times(strain)));
            }
        }
        List<Through.Shear> foam = Through.Shear.of(stack, state.plus(rest, 1), acting, sign);
        return new Through(margin, stack.laminate, inPlane, foam);
    }

    /**
     * Returns another answer to the same load case, judged at some of the places only and without
     * what a patch alone decides.
     */
    CaseCheck again(CaseResponse other, Set<Response.Spot> places) {
        List<Stations.Station> some =
                stations.stream()
                        .filter(at -> places.contains(new Response.Spot(at.x(), at.y())))
                        .toList();
        return new CaseCheck(job, stacks, load, other, some, local, false);
    }

    /** Moves to another stack, and warms it. */
    private void enter(Stack next) {
        if (next == stack && !heat.isEmpty()) {
            return;
        }
        stack = next;
        heat = new ArrayList<>();
        for (Load part : load.standing()) {
            if (part instanceof Load.Heat hot) {
                heat.add(ThermalState.of(stack.laminate, hot.inside(), hot.outside()));
            }
        }
    }

    Response response() {
        return answer.loaded();
    }

    LoadCase load() {
        return load;
    }

    /** Force of the first press [N]; 0 where the load is spread. */
    double force() {
        return local.presses().isEmpty() ? 0 : local.presses().get(0).force();
    }

    /**
     * Sinking of the outside surface under the middle of the first press beyond the layered theory
     * [m].
     */
    double sinking() {
        return local.sinking();
    }

    /** Error of the theory in how far the outside surface goes in under the first press [-]. */
    double deflectionError() {
        return local.deflectionError();
    }

    /**
     * How much further in the panel can at most go under the first press since the foam in the
     * bevels of strips gives under the skin over it: the work of that, held against what the force
     * does; forces that find another way make it less [m].
     */
    double giveAtBevels() {
        double work = StripEdges.give(stacks, answer.loaded());
        return work == 0 ? 0 : work / force();
    }

    List<Margin> margins() {
        for (Stations.Station station : stations) {
            enter(stacks.at(station.x(), station.y()));
            here = local.at(station, stack.laminate, answer);
            near = MethodError.AWAY;
            for (LocalForces.Acting effect : here) {
                near = near.or(effect.error());
            }
            judge(station, answer.loaded(), 1);
            if (load.reverses()) {
                judge(station, answer.reversed(), -1);
            }
        }
        for (Load.Press press : local.presses()) {
            enter(stacks.at(press.x(), press.y()));
            if (first && !stack.laminate.isBare()) {
                UnderPatch.judge(job, load, press, stack, worst);
            }
        }
        for (StripEdges.Side side : stacks.edges) {
            enter(stacks.at(side.station().x(), side.station().y()));
            SectionState rest = side.station().state(answer.standing());
            Stack.Strain still = (layer, z) -> standing(rest, layer, z);
            SectionState state = side.station().state(answer.loaded());
            Kinks.judge(skins(1), side, stack, state, still);
            if (load.reverses()) {
                SectionState other = side.station().state(answer.reversed());
                Kinks.judge(skins(-1), side, stack, other, still);
            }
        }
        wrinkles.judge(worst);
        Hardware.judge(job, stacks, load, answer, worst);
        return worst.margins();
    }

    /**
     * @param sign 1 under the load, -1 under the load the other way round
     */
    private void judge(Stations.Station at, Response response, int sign) {
        SectionState state = at.state(response);
        SectionState rest = at.state(answer.standing());
        for (int i = 0; at.judged().plies() && i < stack.bottom.length; i++) {
            if (stack.laminate.layers().get(i) instanceof Layer.Laid laid) {
                double t = laid.thickness();
                judgePly(at, state, rest, sign, i, laid, stack.bottom[i] + 1e-6 * t);
                judgePly(at, state, rest, sign, i, laid, stack.bottom[i] + t - 1e-6 * t);
            }
        }
        if (!stack.laminate.isBare()) {
            if (at.judged().foamShear()) {
                judgeCoreShear(at, state, rest, sign);
            }
            if (at.judged().foamTension()) {
                judgeFoamTension(at, state, rest, sign);
            }
            if (at.judged().skins()) {
                judgeSkins(at, state, rest, sign);
            }
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
        Triple still = standing(rest, laid, z);
        for (LocalForces.Acting effect : here) {
            Triple more = effect.strain(z);
            strain = strain.plus(more, effect.times(sign));
            still = still.plus(more, effect.still());
        }
        skins(sign)
                .ply(
                        PlyFailure::mode,
                        laid,
                        new Place(stack.layerWords(layer) + ", " + at.words(), at.x(), at.y(), z),
                        strain,
                        still,
                        near.skinStress(),
                        near.remark().isEmpty() ? at.remark() : near.remark());
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

    private void judgeFoamTension(
            Stations.Station at, SectionState state, SectionState rest, int sign) {
        Layer.Core core = (Layer.Core) stack.laminate.layers().get(stack.lastCore);
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
                    MethodError.AWAY.skinStress(),
                    at.remark());
        }
    }

    private void judgeCoreShear(
            Stations.Station at, SectionState state, SectionState rest, int sign) {
        Foam foam = stack.foam(Face.OUTSIDE);
        List<TransverseShear> loaded = stack.foamShear(state);
        List<TransverseShear> still = stack.foamShear(rest);
        double least = Double.POSITIVE_INFINITY;
        double applied = 0;
        for (int k = 0; k < loaded.size(); k++) {
            double tx = loaded.get(k).xz();
            double ty = loaded.get(k).yz();
            double stillX = still.get(k).xz();
            double stillY = still.get(k).yz();
            for (LocalForces.Acting effect : here) {
                LocalEffect.FoamShear more = effect.foam((double) k / (loaded.size() - 1));
                tx += effect.times(sign) * more.x();
                ty += effect.times(sign) * more.y();
                stillX += effect.still() * more.x();
                stillY += effect.still() * more.y();
            }
            double reserve = CoreShear.reserve(tx, ty, stillX, stillY, foam.shear());
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
                near.remark().isEmpty() ? at.remark() : near.remark());
    }

    private void judgeSkins(Stations.Station at, SectionState state, SectionState rest, int sign) {
        Stack.Strain strain = stack.strain(state);
        Stack.Strain still = (layer, z) -> standing(rest, layer, z);
        Triple outer = stack.skinForce(Face.OUTSIDE, strain);
        Triple inner = stack.skinForce(Face.INSIDE, strain);
        Triple outerStill = stack.skinForce(Face.OUTSIDE, still);
        Triple innerStill = stack.skinForce(Face.INSIDE, still);
        stack.outside.ifPresent(
                skin -> {
                    var forces = new Wrinkles.Forces(outer, inner, outerStill, innerStill);
                    wrinkles.add(skin, "outside skin, ", at, sign, forces);
                    CrownBond.judge(skins(sign), at, stack, Face.OUTSIDE, outer, outerStill);
                });
        stack.inside.ifPresent(
                skin -> {
                    var forces = new Wrinkles.Forces(inner, outer, innerStill, outerStill);
                    wrinkles.add(skin, "inside skin, ", at, sign, forces);
                    CrownBond.judge(skins(sign), at, stack, Face.INSIDE, inner, innerStill);
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
                MethodError.WRINKLING,
                at.remark());
    }

    private SkinJudge skins(int sign) {
        return new SkinJudge(job, sign, worst);
    }

    private List<Factor> wanted(Factors.On on) {
        return List.of(job.limits().factors().on(on));
    }
}
