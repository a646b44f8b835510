package org.coachskin.check;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coachskin.analysis.Analysis;
import org.coachskin.analysis.Response;
import org.coachskin.failure.Mode;
import org.coachskin.laminate.PrimaryInput;
import org.coachskin.panel.EverydayLoads;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Panel;
import org.coachskin.series.SeriesAnalysis;

/**
 * Judges a panel.
 *
 * <p><b>Stiff.</b> The felt stiffness is the force of a palm over how far the outside surface goes
 * in under it: layered theory plus the local effect. YES if nine of ten panels laid from this
 * recipe meet the limit, NO if the panel as drawn does not, else BARELY. A spread load may sag by a
 * share of the short side.
 *
 * <p><b>Strong, unmarked.</b> Factors of safety pay for scatter. YES if the reserve stays at 1 or
 * more when divided by 1 + the error of the method, NO if the reserve itself is below 1, else
 * BARELY.
 */
public final class PanelCheck {

    private final Analysis analysis = new SeriesAnalysis();

    /** Returns the verdict on {@code job}. */
    public Verdict check(Job job) {
        return begin(job).verdict();
    }

    /** Begins to judge {@code job}: what a question asks for is worked out when it is asked. */
    public Begun begin(Job job) {
        return new Begun(job);
    }

    /** A job that is being judged; not to be used by two threads at once. */
    public final class Begun {
        private final Job job;
        private final List<CaseCheck> cases;

        private Begun(Job job) {
            this.job = job;
            cases = cases(job);
        }

        /**
         * Returns whether the job meets its felt stiffness and sag as drawn, at a small part of the
         * cost of a verdict; if not, the verdict does not hold.
         */
        public boolean isStiffEnough() {
            return cases.stream()
                    .flatMap(check -> stiffness(job, check).stream())
                    .allMatch(Margin::holds);
        }

        /** Returns the verdict. */
        public Verdict verdict() {
            return PanelCheck.this.verdict(job, cases);
        }
    }

    private Verdict verdict(Job job, List<CaseCheck> cases) {
        List<Margin> margins = worstOfEachMode(job, cases);
        List<Movement> movements = movements(job, cases);
        Optional<Spread> felt = Optional.empty();
        for (int i = 0; i < movements.size() && felt.isEmpty(); i++) {
            LoadCase load = cases.get(i).load();
            if (load.kind() == LoadCase.Kind.FELT) {
                felt = Optional.of(spread(job, load, movements.get(i)));
            }
        }
        return new Verdict(
                job,
                stiff(margins, felt, job.limits()),
                answer(margins, Mode.Question.STRONG),
                answer(margins, Mode.Question.UNMARKED),
                margins,
                movements,
                felt,
                analysis.frequency(job.panel()),
                EverydayLoads.liftOffSpeed(job.panel().laminate().mass()),
                Cautions.of(job, movements),
                cases.get(0).response().method());
    }

    /** Returns the worst margin of each mode, without what else a verdict holds. */
    List<Margin> margins(Job job) {
        return worstOfEachMode(job, cases(job));
    }

    private List<CaseCheck> cases(Job job) {
        Stack stack = new Stack(job.panel().laminate());
        List<LoadCase> loads = job.loads();
        List<List<Load>> together = new ArrayList<>();
        loads.forEach(load -> together.add(load.loads()));
        loads.forEach(load -> together.add(load.standing()));
        List<Response> responses = analysis.cases(job.panel(), together);
        List<CaseCheck> cases = new ArrayList<>();
        for (int i = 0; i < loads.size(); i++) {
            Response standing = responses.get(i + loads.size());
            cases.add(new CaseCheck(job, stack, loads.get(i), responses.get(i), standing));
        }
        return cases;
    }

    private static List<Margin> worstOfEachMode(Job job, List<CaseCheck> cases) {
        Map<Mode, Margin> worst = new EnumMap<>(Mode.class);
        for (CaseCheck check : cases) {
            List<Margin> margins = new ArrayList<>(check.margins());
            stiffness(job, check).ifPresent(margins::add);
            for (Margin margin : margins) {
                worst.merge(margin.mode(), margin, (a, b) -> Worst.isWorse(b, a) ? b : a);
            }
        }
        return List.copyOf(worst.values());
    }

    private static Answer stiff(List<Margin> margins, Optional<Spread> felt, Limits limits) {
        Answer answer = answer(margins, Mode.Question.STIFF);
        boolean scatters = felt.isPresent() && felt.get().low() < limits.feltStiffness();
        return answer == Answer.YES && scatters ? Answer.BARELY : answer;
    }

    private static Answer answer(List<Margin> margins, Mode.Question question) {
        Answer answer = Answer.YES;
        for (Margin margin : margins) {
            if (margin.mode().question() == question) {
                if (!margin.holds()) {
                    return Answer.NO;
                }
                if (margin.reserve() < 1 + margin.methodError()) {
                    answer = Answer.BARELY;
                }
            }
        }
        return answer;
    }

    private static Optional<Margin> stiffness(Job job, CaseCheck check) {
        LoadCase load = check.load();
        Place at = at(job, load);
        double total = check.response().deflection(at.x(), at.y()) + check.sinking();
        if (load.kind() == LoadCase.Kind.FELT) {
            double k = check.force() / total;
            double wanted = job.limits().feltStiffness();
            return Optional.of(
                    new Margin(
                            Mode.FELT_STIFFNESS,
                            load.name(),
                            false,
                            at,
                            k,
                            wanted,
                            k / wanted,
                            List.of(),
                            check.deflectionError(),
                            ""));
        }
        if (load.kind() == LoadCase.Kind.SPREAD) {
            double allowed =
                    job.limits().spanShare() * Math.min(job.panel().width(), job.panel().length());
            double sag = Math.abs(total);
            return Optional.of(
                    new Margin(
                            Mode.SAG,
                            load.name(),
                            false,
                            at,
                            sag,
                            allowed,
                            allowed / sag,
                            List.of(),
                            check.deflectionError(),
                            ""));
        }
        return Optional.empty();
    }

    private static Place at(Job job, LoadCase load) {
        for (Load part : load.loads()) {
            if (part instanceof Load.Press press) {
                return new Place("under the " + load.name(), press.x(), press.y(), 0);
            }
        }
        return new Place("in the middle", job.panel().width() / 2, job.panel().length() / 2, 0);
    }

    private List<Movement> movements(Job job, List<CaseCheck> cases) {
        List<List<Load>> loads = job.loads().stream().map(LoadCase::loads).toList();
        List<Response> firstOrder = SeriesAnalysis.firstOrder().cases(job.panel(), loads);
        boolean bare = job.panel().laminate().isBare();
        Panel other =
                bare
                        ? job.panel()
                        : job.panel().withLaminate(Varied.foamShear(job.panel().laminate(), 1.05));
        List<Response> stiffer = analysis.cases(other, loads);
        List<Movement> movements = new ArrayList<>();
        for (int i = 0; i < cases.size(); i++) {
            CaseCheck check = cases.get(i);
            LoadCase load = check.load();
            Place at = at(job, load);
            double layered = check.response().deflection(at.x(), at.y());
            double dent = check.sinking();
            // What would vanish with foam that does not shear: from the change when it shears a
            // twentieth less.
            double change = bare ? 0 : layered - stiffer.get(i).deflection(at.x(), at.y());
            double sliding = change * 1.05 / 0.05;
            movements.add(
                    new Movement(
                            load.name(),
                            check.force(),
                            layered + dent,
                            layered - sliding,
                            sliding,
                            dent,
                            firstOrder.get(i).deflection(at.x(), at.y())));
        }
        return movements;
    }

    /**
     * Scatter of the felt stiffness; the dent's own scatter is left out, it is a small part of the
     * movement.
     */
    private Spread spread(Job job, LoadCase load, Movement movement) {
        Map<PrimaryInput, Double> changes = new EnumMap<>(PrimaryInput.class);
        Place at = at(job, load);
        double nominal = movement.stiffness();
        for (PrimaryInput input : PrimaryInput.values()) {
            if (input != PrimaryInput.STRENGTHS) {
                Panel moved = job.panel().withLaminate(job.schedule().moved(input, 1).laminate());
                double layered = analysis.statics(moved, load.loads()).deflection(at.x(), at.y());
                changes.put(input, movement.force() / (layered + movement.dent()) - nominal);
            }
        }
        return Spread.of(nominal, changes);
    }
}
