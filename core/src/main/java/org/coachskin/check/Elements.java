package org.coachskin.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.coachskin.analysis.CaseResponse;
import org.coachskin.analysis.Response;
import org.coachskin.shell.ShellAnalysis;

/**
 * The answer of finite elements and how far it is off: the same figures, read at the same places,
 * of elements one and two orders lower on the same mesh ({@link Convergence}). An answer that could
 * turn within what the elements are off is worked out again one order higher, twice at most.
 */
final class Elements {

    private static final int HIGHEST = ShellAnalysis.ORDER + 2;

    private final Job job;
    private final Solvers solvers;

    /** Solutions that are known or on their way on another thread. */
    private final Map<Integer, CompletableFuture<Solved>> begun = new LinkedHashMap<>();

    /** Begins to work out what the estimates need, besides the answer itself. */
    Elements(Job job, Solvers solvers) {
        this.job = job;
        this.solvers = solvers;
        for (int below = 1; below <= 2; below++) {
            int order = ShellAnalysis.ORDER - below;
            boolean vibrating = below == 1;
            begun.put(order, begin(() -> solve(order, vibrating)));
        }
    }

    private static <T> CompletableFuture<T> begin(Supplier<T> work) {
        return CompletableFuture.supplyAsync(work);
    }

    /** Answers to all load cases, and the lowest frequency where it is asked [Hz]. */
    private record Solved(List<CaseResponse> answers, double frequency) {}

    private Solved solve(int order, boolean vibrating) {
        ShellAnalysis solver = solvers.ofOrder(order);
        return new Solved(
                solver.loadCases(job.panel(), job.loads()),
                vibrating ? solvers.frequency(job, order) : Double.NaN);
    }

    /**
     * What elements say.
     *
     * @param cases judged
     * @param margins the worst of each mode, with what the elements are off
     * @param frequency lowest [Hz]
     * @param errors of what no margin holds
     */
    record Outcome(
            List<CaseCheck> cases,
            List<Margin> margins,
            double frequency,
            List<NumericalError> errors) {}

    /**
     * Returns the outcome.
     *
     * @param cases judged by elements of the usual order
     */
    Outcome outcome(List<CaseCheck> cases) {
        Outcome outcome = outcome(ShellAnalysis.ORDER, cases);
        for (int order = ShellAnalysis.ORDER + 1;
                order <= HIGHEST && outcome.margins().stream().anyMatch(Elements::couldTurn);
                order++) {
            outcome = outcome(order, PanelCheck.cases(job, solvers.ofOrder(order)));
        }
        return outcome;
    }

    private static boolean couldTurn(Margin margin) {
        return !margin.isSettled() && Math.abs(margin.reserve() - 1) < margin.meshError();
    }

    private Outcome outcome(int order, List<CaseCheck> cases) {
        CompletableFuture<Double> vibrating = begin(() -> solvers.frequency(job, order));
        List<Margin> worst = PanelCheck.worstOfEachMode(job, cases);
        Read read = new Read(worst, cases);
        Solved lower = solved(order - 1, true);
        Solved lowest = solved(order - 2, false);
        double frequency = value(vibrating);
        List<CaseResponse> answers = cases.stream().map(CaseCheck::answer).toList();
        begun.put(order, CompletableFuture.completedFuture(new Solved(answers, frequency)));
        Map<String, Figure> answer = Figure.of(worst, cases, read.moved, frequency);
        Convergence convergence =
                new Convergence(
                        answer,
                        read.figures(lower.answers(), lower.frequency()),
                        read.figures(lowest.answers(), lowest.frequency()),
                        read.astray(lower.answers()));
        List<Margin> margins = new ArrayList<>();
        for (Margin margin : worst) {
            margins.add(margin.withMeshError(convergence.error(margin.mode().words())));
        }
        List<NumericalError> errors = new ArrayList<>();
        for (Figure figure : answer.values()) {
            if (figure.mode().isEmpty()) {
                errors.add(new NumericalError(figure.name(), convergence.error(figure.name())));
            }
        }
        return new Outcome(cases, margins, frequency, errors);
    }

    private Solved solved(int order, boolean vibrating) {
        CompletableFuture<Solved> underWay = begun.get(order);
        return underWay == null ? solve(order, vibrating) : value(underWay);
    }

    /** The places at which an answer is worst, at which others are read too. */
    private final class Read {
        private final List<CaseCheck> cases;
        private final Set<Response.Spot> places = new HashSet<>();
        private final List<Place> moved;

        Read(List<Margin> worst, List<CaseCheck> cases) {
            this.cases = cases;
            worst.forEach(
                    margin ->
                            places.add(new Response.Spot(margin.place().x(), margin.place().y())));
            moved = cases.stream().map(check -> Moving.at(job, check)).toList();
        }

        private Map<String, Figure> figures(List<CaseResponse> answers, double frequency) {
            List<CaseCheck> checks = new ArrayList<>();
            for (int i = 0; i < answers.size(); i++) {
                checks.add(cases.get(i).again(answers.get(i), places));
            }
            List<Margin> worst = PanelCheck.worstOfEachMode(job, checks);
            return Figure.of(worst, checks, moved, frequency);
        }

        /** Returns the figures of the answer, astray by as much as others differ from it. */
        private List<Map<String, Figure>> astray(List<CaseResponse> others) {
            return IntStream.range(0, Astray.PLACES)
                    .parallel()
                    .mapToObj(
                            which -> {
                                List<CaseResponse> answers = new ArrayList<>();
                                for (int i = 0; i < others.size(); i++) {
                                    CaseResponse answer = cases.get(i).answer();
                                    answers.add(Astray.of(answer, others.get(i), which));
                                }
                                return figures(answers, Double.NaN);
                            })
                    .toList();
        }
    }

    private static <T> T value(CompletableFuture<T> future) {
        try {
            return future.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw e;
        }
    }
}
