package org.coachskin.check;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.coachskin.analysis.Response;
import org.coachskin.failure.CoreShear;
import org.coachskin.failure.CoreTension;
import org.coachskin.failure.Face;
import org.coachskin.failure.FaceWrinkling;
import org.coachskin.failure.Factors;
import org.coachskin.failure.FirstCrush;
import org.coachskin.failure.LastingDent;
import org.coachskin.failure.Mode;
import org.coachskin.failure.PlyCriterion;
import org.coachskin.failure.PlyFailure;
import org.coachskin.failure.ShearCrimping;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.PlyStress;
import org.coachskin.laminate.SectionState;
import org.coachskin.laminate.ThermalState;
import org.coachskin.laminate.Triple;
import org.coachskin.local.LocalEffect;
import org.coachskin.material.Foam;
import org.coachskin.material.Strength;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;

/** Every mode that breaks, crushes or marks, under one load case; the worst place of each. */
final class CaseCheck {

    /**
     * A lasting dent this deep counts as crushed for good [m]: filler no longer hides it [common
     * practice, no source].
     */
    static final double CRUSHED = 0.5e-3;

    /** Heights in the foam at which its shear is looked at beside a patch, less one. */
    private static final int HEIGHTS = 8;

    private final Job job;
    private final Stack stack;
    private final LoadCase load;
    private final Response response;
    private final Response standing;
    private final List<ThermalState> heat = new ArrayList<>();
    private final List<LocalEffect> local = new ArrayList<>();
    private final List<Load.Press> presses = new ArrayList<>();
    private final Map<Mode, Margin> worst = new EnumMap<>(Mode.class);
    private final double extra;
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
                local.add(LocalEffect.of(stack.laminate, press.patch(), press.force()));
            }
        }
        for (Load part : load.standing()) {
            if (part instanceof Load.Heat hot) {
                heat.add(ThermalState.of(stack.laminate, hot.inside(), hot.outside()));
            }
        }
        patchError = MethodError.beside(stack.layered, presses);
        extra = load.stays() ? job.limits().factors().stays() : 1;
    }

    Response response() {
        return response;
    }

    /**
     * Sinking of the outside surface under the middle of press {@code i} beyond the layered theory
     * [m].
     */
    double sinking(int i) {
        return local.get(i).sinking();
    }

    List<Load.Press> presses() {
        return presses;
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
        return List.copyOf(worst.values());
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
            judgeSkins(at, signed, sign);
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
        Triple still = rest.strainAt(stack.layered, z);
        for (ThermalState warm : heat) {
            // Free growth in the plane, less what this layer would do alone.
            still = still.plus(warm.membrane(), 1).plus(laid.expansion(), -warm.rise(z));
        }
        PlyStress stress = PlyStress.of(laid.ply(), laid.angle(), strain);
        PlyStress stands = PlyStress.of(laid.ply(), laid.angle(), still);
        PlyFailure event = PlyCriterion.event(stress, stands, laid.ply());
        double multiplier = job.limits().criterion().reserve(stress, stands, laid.ply());
        keep(
                event.mode(),
                sign,
                new Place(stack.layerWords(layer) + ", " + at.words(), at.x(), at.y(), z),
                Math.abs(event.stress()),
                event.strength().value(),
                multiplier,
                job.limits().factors().skin(event.strength()),
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

    private void judgeFoam(Stations.Station at, SectionState state, SectionState rest, int sign) {
        Layer.Core core = (Layer.Core) stack.laminate.layers().get(stack.lastCore);
        Foam foam = core.foam();
        double c = stack.layered.foamTop() - stack.layered.foamBottom();
        double peak = stack.shearPeak();
        double tx = stack.layered.hf().m11() * state.foamShearX() / c * peak;
        double ty = stack.layered.hf().m22() * state.foamShearY() / c * peak;
        double[] largest = largestThroughFoam(tx, ty, sign);
        tx = largest[0];
        ty = largest[1];
        double still = stack.layered.hf().m11() * rest.foamShearX() / c * peak;
        double still2 = stack.layered.hf().m22() * rest.foamShearY() / c * peak;
        Factors factors = job.limits().factors();
        boolean people = load.kind() == LoadCase.Kind.PERSON;
        keep(
                Mode.CORE_SHEAR,
                sign,
                new Place("foam, " + at.words(), at.x(), at.y(), 0),
                Math.hypot(tx, ty),
                foam.shear().value(),
                CoreShear.reserve(tx, ty, still, still2, foam.shear()),
                people ? factors.coreShearPeople() : factors.coreShear(),
                near.coreShear(),
                near.remark());
        for (double z : new double[] {stack.layered.foamBottom(), stack.layered.foamTop()}) {
            Triple stress = core.stiffness().times(state.strainAt(stack.layered, z));
            keep(
                    Mode.CORE_TENSION,
                    sign,
                    new Place("foam, " + at.words(), at.x(), at.y(), z),
                    CoreTension.largest(stress),
                    foam.tension().value(),
                    CoreTension.reserve(stress, foam.tension()),
                    factors.bond(),
                    MethodError.AWAY.skinStress(),
                    "");
        }
    }

    /**
     * Shear stress of layered theory with the local effect at the height where the sum is largest.
     */
    private double[] largestThroughFoam(double layeredX, double layeredY, int sign) {
        double[] largest = {layeredX, layeredY};
        if (here.isEmpty()) {
            return largest;
        }
        double before = -1;
        for (int k = 0; k <= HEIGHTS; k++) {
            double x = layeredX;
            double y = layeredY;
            for (LocalEffect.Here effect : here) {
                LocalEffect.FoamShear more = effect.foam((double) k / HEIGHTS);
                x += sign * more.x();
                y += sign * more.y();
            }
            if (Math.hypot(x, y) > before) {
                before = Math.hypot(x, y);
                largest[0] = x;
                largest[1] = y;
            }
        }
        return largest;
    }

    private void judgeSkins(Stations.Station at, SectionState state, int sign) {
        Triple outer = stack.skinForce(Face.OUTSIDE, state);
        Triple inner = stack.skinForce(Face.INSIDE, state);
        stack.outside.ifPresent(skin -> judgeWrinkling(skin, at, outer, inner, sign, "outside"));
        stack.inside.ifPresent(skin -> judgeWrinkling(skin, at, inner, outer, sign, "inside"));
        Triple n = outer.plus(inner, 1);
        double crimping = ShearCrimping.reserve(stack.shear, n);
        keep(
                Mode.CRIMPING,
                sign,
                new Place("whole section, " + at.words(), at.x(), at.y(), 0),
                stack.shear.m11() / crimping,
                stack.shear.m11(),
                crimping,
                job.limits().factors().wrinkling(),
                MethodError.WRINKLING,
                "");
    }

    private void judgeWrinkling(
            FaceWrinkling skin,
            Stations.Station at,
            Triple own,
            Triple other,
            int sign,
            String face) {
        double multiplier = skin.reserve(own, other);
        double critical = skin.critical(0, -1);
        keep(
                Mode.WRINKLING,
                sign,
                new Place(face + " skin, " + at.words(), at.x(), at.y(), 0),
                critical / multiplier,
                critical,
                multiplier,
                job.limits().factors().wrinkling(),
                MethodError.WRINKLING,
                "");
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
                            keep(
                                    Mode.LASTING_MARK,
                                    1,
                                    place,
                                    press.force(),
                                    mark,
                                    mark / press.force(),
                                    1,
                                    MethodError.DENT,
                                    "");
                            double crushed = dent.force(CRUSHED);
                            keep(
                                    Mode.CRUSHING,
                                    1,
                                    place,
                                    press.force(),
                                    crushed,
                                    crushed / press.force(),
                                    job.limits().factors().crushing(),
                                    MethodError.DENT,
                                    "");
                        });
        if (worst.get(Mode.CRUSHING) == null) {
            // Bare foam on the outside: nothing spreads the load, so the first crush is the last.
            FirstCrush.of(stack.laminate, press.patch())
                    .ifPresent(
                            first -> {
                                Strength crush = first.strength();
                                double multiplier = first.force() / press.force();
                                keep(
                                        Mode.LASTING_MARK,
                                        1,
                                        place,
                                        press.force(),
                                        first.force(),
                                        multiplier,
                                        1,
                                        MethodError.DENT,
                                        "");
                                keep(
                                        Mode.CRUSHING,
                                        1,
                                        place,
                                        first.pressure(press.force()),
                                        crush.value(),
                                        multiplier,
                                        job.limits().factors().crushing(),
                                        MethodError.DENT,
                                        "");
                            });
        }
    }

    private void keep(
            Mode mode,
            int sign,
            Place place,
            double applied,
            double allowable,
            double multiplier,
            double factor,
            double methodError,
            String remark) {
        double wanted = mode.question() == Mode.Question.STRONG ? factor * extra : factor;
        Margin margin =
                new Margin(
                        mode,
                        load.name(),
                        sign < 0,
                        place,
                        applied,
                        allowable,
                        multiplier,
                        wanted,
                        methodError,
                        remark);
        Margin before = worst.get(mode);
        if (before == null || margin.reserve() < before.reserve()) {
            worst.put(mode, margin);
        }
    }
}
