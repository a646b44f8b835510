package org.coachskin.check;

import java.util.List;
import java.util.Optional;
import org.coachskin.failure.Factor;
import org.coachskin.failure.Factors;
import org.coachskin.failure.FirstCrush;
import org.coachskin.failure.LastingDent;
import org.coachskin.failure.Mode;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;

/** What a patch does to the foam right under it: a lasting mark, foam crushed for good. */
final class UnderPatch {

    private UnderPatch() {}

    static void judge(Job job, LoadCase load, Load.Press press, Stack stack, Worst worst) {
        double force = press.force();
        if (force <= 0) {
            return;
        }
        Place place =
                new Place(
                        "under the " + load.name(), press.x(), press.y(), stack.layered.foamTop());
        List<Factor> crushing = List.of(job.limits().factors().on(Factors.On.CRUSHING));
        Optional<LastingDent> dents = LastingDent.of(stack.laminate, press.patch());
        if (dents.isPresent()) {
            LastingDent dent = dents.get();
            double mark = dent.force(job.limits().lastingDent());
            double crushed = dent.force(Limits.CRUSHED);
            keep(worst, Mode.LASTING_MARK, place, force, mark, List.of());
            keep(worst, Mode.CRUSHING, place, force, crushed, crushing);
            return;
        }
        // Bare foam on the outside: nothing spreads the load, so the first crush is the last.
        FirstCrush.of(stack.laminate, press.patch())
                .ifPresent(
                        first -> {
                            keep(worst, Mode.LASTING_MARK, place, force, first.force(), List.of());
                            worst.keep(
                                    Mode.CRUSHING,
                                    1,
                                    place,
                                    first.pressure(force),
                                    first.strength().value(),
                                    first.force() / force,
                                    crushing,
                                    MethodError.DENT);
                        });
    }

    private static void keep(
            Worst worst, Mode mode, Place place, double force, double most, List<Factor> factors) {
        worst.keep(mode, 1, place, force, most, most / force, factors, MethodError.DENT);
    }
}
