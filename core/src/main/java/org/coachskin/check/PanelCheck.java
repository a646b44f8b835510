package org.coachskin.check;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coachskin.analysis.Analysis;
import org.coachskin.analysis.CaseResponse;
import org.coachskin.failure.Mode;
import org.coachskin.panel.EverydayLoads;
import org.coachskin.panel.LoadCase;
import org.jspecify.annotations.Nullable;

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

    private final Solvers solvers;

    /** Creates the check. */
    public PanelCheck() {
        this(new Solvers(false, true));
    }

    private PanelCheck(Solvers solvers) {
        this.solvers = solvers;
    }

    /**
     * Returns a check for many panels that are much alike: elements one order coarser and no look
     * at how far that is off, as a rule a few thousandths; the movement by first-order theory and
     * the frequency of a panel on fittings are left out (NaN).
     */
    public static PanelCheck brief() {
        return new PanelCheck(new Solvers(true, false));
    }

    /** Returns a check that judges all there is and leaves out the frequency on fittings (NaN). */
    public static PanelCheck withoutFrequency() {
        return new PanelCheck(new Solvers(false, false));
    }

    /** Returns the verdict on {@code job}. */
    public Verdict check(Job job) {
        return begin(job).verdict();
    }

    /**
     * Begins to judge {@code job}: what a question asks for is worked out when it is asked. Presses
     * whose place is to be looked for are placed first; the verdict's job holds where.
     */
    public Begun begin(Job job) {
        return new Begun(Sweeping.placed(job, solvers.sweeping(job)));
    }

    /**
     * Returns how the panel of {@code job} feels under a press that is moved over it.
     *
     * @param load a press alone; where it stands does not matter, what stands beside it does
     */
    public Swept sweep(Job job, LoadCase load) {
        return Sweeping.of(job.panel(), load, solvers.sweeping(job));
    }

    /**
     * Returns what can be drawn of a verdict.
     *
     * @param weights to be set on the panel where its palm presses [kg]
     */
    public Picture picture(Verdict verdict, List<Double> weights) {
        return Drawing.of(verdict, weights, solvers.of(verdict.job()));
    }

    /** A job that is being judged; not to be used by two threads at once. */
    public final class Begun {
        private final Job job;
        private @Nullable List<CaseCheck> cases;

        private Begun(Job job) {
            this.job = job;
        }

        private List<CaseCheck> cases() {
            List<CaseCheck> known = cases;
            if (known == null) {
                known = PanelCheck.this.cases(job);
                cases = known;
            }
            return known;
        }

        /**
         * Returns whether the job meets every limit on movement as drawn, at a small part of the
         * cost of a verdict; if not, the verdict does not hold.
         */
        public boolean isStiffEnough() {
            return cases().stream()
                    .flatMap(check -> Moving.margins(job, check).stream())
                    .allMatch(Margin::holds);
        }

        /** Returns the verdict. */
        public Verdict verdict() {
            if (!solvers.areAsked(job)) {
                List<CaseCheck> exact = cases();
                return PanelCheck.this.verdict(
                        job, exact, worstOfEachMode(job, exact), solvers.frequency(job), List.of());
            }
            Elements elements = new Elements(job, solvers);
            Elements.Outcome outcome = elements.outcome(cases());
            return PanelCheck.this.verdict(
                    job, outcome.cases(), outcome.margins(), outcome.frequency(), outcome.errors());
        }
    }

    private Verdict verdict(
            Job job,
            List<CaseCheck> cases,
            List<Margin> margins,
            double frequency,
            List<NumericalError> errors) {
        List<Movement> movements = Moving.movements(job, cases);
        Optional<Spread> felt = Optional.empty();
        for (int i = 0; i < movements.size() && felt.isEmpty(); i++) {
            if (cases.get(i).load().kind() == LoadCase.Kind.FELT) {
                felt = Optional.of(Moving.spread(job, cases.get(i), movements.get(i)));
            }
        }
        double mass = solvers.of(job).mass(job.panel());
        return new Verdict(
                job,
                stiff(margins, felt, job.limits()),
                answer(margins, Mode.Question.STRONG),
                answer(margins, Mode.Question.UNMARKED),
                margins,
                movements,
                felt,
                frequency,
                EverydayLoads.liftOffSpeed(mass / job.panel().area()),
                mass,
                cases.stream().map(check -> check.answer().atRest()).toList(),
                cases.stream().map(check -> check.answer().held()).toList(),
                Cautions.of(job, movements, cases),
                errors,
                cases.get(0).response().method());
    }

    /** Returns the worst margin of each mode, without what else a verdict holds. */
    public List<Margin> margins(Job job) {
        Job placed = Sweeping.placed(job, solvers.sweeping(job));
        return worstOfEachMode(placed, cases(placed));
    }

    /** Returns the mass of the panel, turned edges and zones counted [kg]. */
    public double mass(Job job) {
        return solvers.of(job).mass(job.panel());
    }

    /**
     * Returns each movement of a verdict by first-order theory, in which skins and foam turn
     * together and no skin sinks into the foam [m].
     */
    public List<Double> firstOrder(Verdict verdict) {
        Job job = verdict.job();
        List<CaseResponse> answers = solvers.firstOrder(job).loadCases(job.panel(), job.loads());
        List<Double> out = new ArrayList<>();
        for (int i = 0; i < answers.size(); i++) {
            Place at = verdict.movements().get(i).at();
            out.add(answers.get(i).loaded().deflection(at.x(), at.y()));
        }
        return out;
    }

    /**
     * Returns the worst margin of each mode by finite elements for a verdict that a series gave,
     * which shares nothing with them but the stiffness of the stack; empty where elements gave it.
     */
    public List<Margin> otherwise(Verdict verdict) {
        Job job = verdict.job();
        return solvers.other(job)
                .map(solver -> worstOfEachMode(job, cases(job, solver)))
                .orElse(List.of());
    }

    private List<CaseCheck> cases(Job job) {
        return cases(job, solvers.of(job));
    }

    static List<CaseCheck> cases(Job job, Analysis solver) {
        Stacks stacks = new Stacks(job.panel());
        List<PadEffect> pads = PadEffect.of(job.panel());
        List<CaseResponse> answers = solver.loadCases(job.panel(), job.loads());
        List<CaseCheck> cases = new ArrayList<>();
        for (int i = 0; i < answers.size(); i++) {
            cases.add(new CaseCheck(job, stacks, pads, job.loads().get(i), answers.get(i)));
        }
        return cases;
    }

    static List<Margin> worstOfEachMode(Job job, List<CaseCheck> cases) {
        List<List<Margin>> all =
                cases.parallelStream()
                        .map(
                                check -> {
                                    List<Margin> margins = new ArrayList<>(check.margins());
                                    margins.addAll(Moving.margins(job, check));
                                    return margins;
                                })
                        .toList();
        Map<Mode, Margin> worst = new EnumMap<>(Mode.class);
        for (List<Margin> margins : all) {
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
                if (margin.reserve() < 1 + margin.methodError() + margin.meshError()) {
                    answer = Answer.BARELY;
                }
            }
        }
        return answer;
    }
}
