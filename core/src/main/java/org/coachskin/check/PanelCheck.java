package org.coachskin.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coachskin.analysis.Analysis;
import org.coachskin.analysis.CaseResponse;
import org.coachskin.analysis.Held;
import org.coachskin.analysis.Response;
import org.coachskin.failure.Mode;
import org.coachskin.laminate.PrimaryInput;
import org.coachskin.panel.EverydayLoads;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Support;
import org.coachskin.series.SeriesAnalysis;
import org.coachskin.shell.ShellAnalysis;

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

    private static final Analysis FIRST_ORDER = new ShellAnalysis(ShellAnalysis.ORDER - 1, true);

    private final SeriesAnalysis series = new SeriesAnalysis();
    private final ShellAnalysis shell;

    /** Tells how far the elements are off. */
    private final ShellAnalysis coarse = new ShellAnalysis(ShellAnalysis.ORDER - 1, false);

    /** Whether elements that are one order coarser will do, without a look at their error. */
    private final boolean brief;

    /** Creates the check. */
    public PanelCheck() {
        this(false);
    }

    private PanelCheck(boolean brief) {
        this.brief = brief;
        shell = brief ? coarse : new ShellAnalysis();
    }

    /**
     * Returns a check for many panels that are much alike: elements one order coarser and no look
     * at their error, which is a few thousandths; the movement by first-order theory and the
     * frequency of a panel on fittings are left out (NaN).
     */
    public static PanelCheck brief() {
        return new PanelCheck(true);
    }

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
        List<Margin> margins = withMeshError(job, worstOfEachMode(job, cases));
        List<Movement> movements = movements(job, cases);
        Optional<Spread> felt = Optional.empty();
        for (int i = 0; i < movements.size() && felt.isEmpty(); i++) {
            LoadCase load = cases.get(i).load();
            if (load.kind() == LoadCase.Kind.FELT) {
                felt = Optional.of(spread(job, cases.get(i), movements.get(i)));
            }
        }
        double mass = solver(job.panel()).mass(job.panel());
        return new Verdict(
                job,
                stiff(margins, felt, job.limits()),
                answer(margins, Mode.Question.STRONG),
                answer(margins, Mode.Question.UNMARKED),
                margins,
                movements,
                felt,
                frequency(job.panel()),
                EverydayLoads.liftOffSpeed(mass / job.panel().area()),
                mass,
                cases.stream().map(check -> check.answer().atRest()).toList(),
                cases.stream().map(check -> check.answer().held()).toList(),
                Cautions.of(job, movements),
                cases.get(0).response().method());
    }

    /** Returns the worst margin of each mode, without what else a verdict holds. */
    List<Margin> margins(Job job) {
        return worstOfEachMode(job, cases(job));
    }

    private double frequency(Panel panel) {
        if (solver(panel) == series) {
            return series.frequency(panel);
        }
        return brief ? Double.NaN : coarse.frequency(panel);
    }

    /** The series where it applies, where it is exact; else the shell. */
    private Analysis solver(Panel panel) {
        boolean whole = panel.isPlain() && panel.support() instanceof Support.WholeRim;
        return whole && series.answers(panel) ? series : shell;
    }

    private List<CaseCheck> cases(Job job) {
        return cases(job, solver(job.panel()));
    }

    private static List<CaseCheck> cases(Job job, Analysis solver) {
        Stacks stacks = new Stacks(job.panel());
        List<CaseResponse> answers = solver.loadCases(job.panel(), job.loads());
        List<CaseCheck> cases = new ArrayList<>();
        for (int i = 0; i < answers.size(); i++) {
            cases.add(new CaseCheck(job, stacks, job.loads().get(i), answers.get(i)));
        }
        return cases;
    }

    /**
     * Gives every margin the error of the elements: the difference from elements one order lower,
     * which are the coarser by far.
     */
    private List<Margin> withMeshError(Job job, List<Margin> margins) {
        if (brief || solver(job.panel()) == series) {
            return margins;
        }
        Map<Mode, Double> rough = new EnumMap<>(Mode.class);
        for (Margin margin : worstOfEachMode(job, cases(job, coarse))) {
            rough.put(margin.mode(), margin.reserve());
        }
        return margins.stream()
                .map(
                        margin -> {
                            double fine = margin.reserve();
                            double other = rough.getOrDefault(margin.mode(), fine);
                            boolean known = Double.isFinite(fine) && fine > 0 && other > 0;
                            return margin.withMeshError(
                                    known ? Math.abs(1 - fine / Math.max(other, 1e-9)) : 0);
                        })
                .toList();
    }

    private static List<Margin> worstOfEachMode(Job job, List<CaseCheck> cases) {
        Map<Mode, Margin> worst = new EnumMap<>(Mode.class);
        for (CaseCheck check : cases) {
            List<Margin> margins = new ArrayList<>(check.margins());
            stiffness(job, check).ifPresent(margins::add);
            gap(job, check).ifPresent(margins::add);
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

    private static Optional<Margin> stiffness(Job job, CaseCheck check) {
        LoadCase load = check.load();
        Place at = at(job, check);
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
                            0,
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
                            0,
                            ""));
        }
        return Optional.empty();
    }

    private static Optional<Margin> gap(Job job, CaseCheck check) {
        return check.answer().held().seals().stream()
                .min(Comparator.comparingDouble(Held.SealPlace::squeeze))
                .filter(place -> place.squeeze() < 0)
                .map(
                        place -> {
                            double gap = Math.max(0, -place.squeeze());
                            double allowed = job.limits().sealGap();
                            String words = Surroundings.tape(place.x(), place.y());
                            return new Margin(
                                    Mode.SEAL_GAP,
                                    check.load().name(),
                                    false,
                                    new Place(words, place.x(), place.y(), 0),
                                    gap,
                                    allowed,
                                    allowed / gap,
                                    List.of(),
                                    MethodError.AWAY.deflection(),
                                    0,
                                    "");
                        });
    }

    /** Where a load moves the panel: under it, or where a load that is spread moves it most. */
    private static Place at(Job job, CaseCheck check) {
        LoadCase load = check.load();
        for (Load part : load.loads()) {
            if (part instanceof Load.Press press) {
                return new Place("under the " + load.name(), press.x(), press.y(), 0);
            }
        }
        List<Response.Spot> spots = check.response().spots();
        return spots.stream()
                .max(
                        Comparator.comparingDouble(
                                spot -> Math.abs(check.response().deflection(spot.x(), spot.y()))))
                .map(
                        spot ->
                                new Place(
                                        Surroundings.tape(spot.x(), spot.y()),
                                        spot.x(),
                                        spot.y(),
                                        0))
                .orElse(
                        new Place(
                                "in the middle",
                                job.panel().width() / 2,
                                job.panel().length() / 2,
                                0));
    }

    private List<Movement> movements(Job job, List<CaseCheck> cases) {
        Analysis solver = solver(job.panel());
        List<List<Load>> loads = job.loads().stream().map(LoadCase::loads).toList();
        List<CaseResponse> firstOrder =
                solver == series
                        ? SeriesAnalysis.firstOrder().loadCases(job.panel(), job.loads())
                        : brief ? List.of() : FIRST_ORDER.loadCases(job.panel(), job.loads());
        Panel other = Varied.panel(job.panel(), stack -> Varied.foamShear(stack, 1.05));
        List<Movement> movements = new ArrayList<>();
        for (int i = 0; i < cases.size(); i++) {
            CaseCheck check = cases.get(i);
            LoadCase load = check.load();
            Place at = at(job, check);
            double layered = check.response().deflection(at.x(), at.y());
            double dent = check.sinking();
            // What would vanish with foam that does not shear: from the change when it shears a
            // twentieth less.
            double stiffer =
                    solver.nearby(job.panel(), loads.get(i), at.x(), at.y(), List.of(other)).get(0);
            double sliding = (layered - stiffer) * (solver == series ? 1.05 / 0.05 : 1 / 0.05);
            double seal = solver.owedToSeals(job.panel(), loads.get(i), at.x(), at.y());
            movements.add(
                    new Movement(
                            load.name(),
                            check.force(),
                            layered + dent,
                            layered - sliding - seal,
                            sliding,
                            seal,
                            dent,
                            firstOrder.isEmpty()
                                    ? Double.NaN
                                    : firstOrder.get(i).loaded().deflection(at.x(), at.y())));
        }
        return movements;
    }

    /**
     * Scatter of the felt stiffness; the dent's own scatter is left out, it is a small part of the
     * movement.
     */
    private Spread spread(Job job, CaseCheck check, Movement movement) {
        List<PrimaryInput> inputs =
                Arrays.stream(PrimaryInput.values())
                        .filter(input -> input != PrimaryInput.STRENGTHS)
                        .toList();
        List<Panel> moved =
                inputs.stream()
                        .map(input -> job.withSchedule(job.schedule().moved(input, 1)).panel())
                        .toList();
        Place at = at(job, check);
        List<Double> layered =
                solver(job.panel())
                        .nearby(job.panel(), check.load().loads(), at.x(), at.y(), moved);
        Map<PrimaryInput, Double> changes = new EnumMap<>(PrimaryInput.class);
        double nominal = movement.stiffness();
        for (int i = 0; i < layered.size(); i++) {
            double there = movement.force() / (layered.get(i) + movement.dent());
            changes.put(inputs.get(i), there - nominal);
        }
        return Spread.of(nominal, changes);
    }
}
