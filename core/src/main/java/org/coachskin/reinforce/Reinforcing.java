package org.coachskin.reinforce;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.coachskin.NoAnswerException;
import org.coachskin.check.Answer;
import org.coachskin.check.Job;
import org.coachskin.check.Margin;
import org.coachskin.check.PanelCheck;
import org.coachskin.check.Verdict;
import org.coachskin.design.Change;
import org.coachskin.design.Cures;
import org.coachskin.failure.Mode;
import org.coachskin.material.MaterialLibrary;

/**
 * Looks for the lightest reinforcement that holds every limit.
 *
 * <p>All offers are ordered by the mass they add, those of one weight by how alike they leave the
 * skins. What the felt stiffness of each round an opening should come to is told from some that are
 * solved ({@link Learning}), as a rule a little too high; those that fall short even so are passed
 * over. The others are judged by every limit from the lightest on, in full where stiffness alone is
 * short, else by elements one order coarser first; the first one that holds in full is chosen. The
 * answer is the same whatever the number of threads.
 */
public final class Reinforcing {

    /** So many are judged side by side, whatever the number of threads. */
    private static final int BATCH = 4;

    /** As good as the best, if it is lighter [-]. */
    private static final double ALIKE = 0.99;

    /** One that comes so near is told, though another cures more of what is short [-]. */
    private static final double WITHIN = 0.8;

    /** So many heavier ones are looked at for one that holds clearly. */
    private static final int LOOKED = 3;

    /** So many are looked at for one that is strong where none is stiff enough. */
    private static final int STRENGTHENED = 12;

    /** A forecast below this share of the limit is hopeless [-]. */
    private static final double HOPELESS = 0.99;

    private final MaterialLibrary library;

    /** Creates the search with what can be bought. */
    public Reinforcing(MaterialLibrary library) {
        this.library = library;
    }

    /**
     * Returns what must go around {@code target}.
     *
     * @throws NoAnswerException when there is no room for anything, or the rules leave nothing
     */
    public Reinforcement of(Job job, Target target, Rules rules, Watch watch) {
        Job bareJob = Laying.bare(job, target);
        Offers offers = new Offers(library, job, bareJob, target, rules);
        offers.refuseNone();
        // In full, as check tells them, so that what is told of them is not what elements are off.
        Verdict bare = full(bareJob);
        Optional<Verdict> uncut = Laying.uncut(bare.job(), target).map(Reinforcing::full);
        Optional<Verdict> drawn =
                bareJob.recipes().equals(job.recipes())
                                && bareJob.panel().turned().equals(job.panel().turned())
                        ? Optional.empty()
                        : Optional.of(full(job));
        Search search = new Search(bare, bareJob, target, watch);
        if (!bare.holds()) {
            search.run(offers.all(bare), offers);
        }
        return search.answer(uncut, drawn);
    }

    /**
     * Every verdict by a check of its own: a check keeps the last panels it has factored, and none
     * is asked for twice here.
     */
    private static Verdict full(Job job) {
        return PanelCheck.withoutFrequency().check(job);
    }

    private static Verdict brief(Job job) {
        return PanelCheck.brief().check(job);
    }

    /** One search. */
    private final class Search {
        private final Verdict bare;
        private final Job drawnLoads;
        private final Target target;
        private final Watch watch;
        private final PanelCheck weighing = PanelCheck.brief();
        private final List<Tried> tried = new ArrayList<>();

        /** Of those that weigh the same at the bench, the more alike skins first. */
        private final Comparator<Tried> lightest =
                Comparator.<Tried>comparingLong(one -> Practice.weighed(one.addedMass()))
                        .thenComparingInt(this::unlike)
                        .thenComparingDouble(Tried::addedMass);

        private double without;
        private int offered;
        private boolean stopped;
        private Optional<Tried> chosen = Optional.empty();

        Search(Verdict bare, Job drawnLoads, Target target, Watch watch) {
            this.bare = bare;
            this.drawnLoads = drawnLoads;
            this.target = target;
            this.watch = watch;
        }

        void run(List<Measure> measures, Offers offers) {
            without = weighing.mass(bare.job());
            Optional<Learning> learning = Learning.of(bare, target, offers);
            List<Tried> all =
                    measures.parallelStream()
                            .map(measure -> offer(measure, learning))
                            .sorted(lightest)
                            .toList();
            offered = all.size();
            watch.tried(0, offered);
            boolean whole = learning.isEmpty() || !isShortOfStiffness();
            double limit = HOPELESS * bare.job().limits().feltStiffness();
            List<Tried> batch = new ArrayList<>();
            stopped = watch.isStopped();
            for (int i = 0; i < offered && !stopped; i++) {
                Tried one = all.get(i);
                boolean hopeless = one.felt() < limit;
                if (hopeless || (chosen.isPresent() && !(whole && isLike(one)))) {
                    tried.add(one);
                } else {
                    batch.add(one);
                }
                // Where the forecast is all but sure, coarser elements would only cost time.
                int most = whole ? BATCH : 1;
                if (batch.size() == most || i == offered - 1) {
                    if (whole) {
                        settle(batch);
                    } else {
                        batch.forEach(each -> settled(inFull(each)));
                    }
                    batch.clear();
                    watch.tried(i + 1, offered);
                    stopped = watch.isStopped() && i < offered - 1;
                }
            }
            tried.sort(lightest);
        }

        private int unlike(Tried one) {
            return Laying.unlike(one.job(), target, one.measure());
        }

        private Tried offer(Measure measure, Optional<Learning> learning) {
            Job job = Laying.on(bare.job().withLoadsPlaced(), target, measure);
            double added = weighing.mass(job) - without;
            double felt =
                    learning.map(known -> known.felt(measure, job.panel())).orElse(Double.NaN);
            return new Tried(measure, job, added, felt, List.of(), Optional.empty());
        }

        /** Edge and corners as in the chosen one: it stands in one table with it. */
        private boolean isLike(Tried one) {
            Measure best = chosen.orElseThrow().measure();
            return one.measure().turned() == best.turned()
                    && one.measure().radius() == best.radius();
        }

        private boolean isShortOfStiffness() {
            return bare.margins().stream()
                    .filter(margin -> !margin.holds())
                    .allMatch(margin -> margin.mode() == Mode.FELT_STIFFNESS);
        }

        private void settle(List<Tried> batch) {
            for (Tried one : batch.parallelStream().map(this::judged).toList()) {
                boolean asked = chosen.isEmpty() && Tried.mayHold(one.job(), one.margins());
                settled(asked ? inFull(one) : one);
            }
        }

        private void settled(Tried one) {
            if (chosen.isEmpty() && one.verdict().isPresent() && one.reserve() >= 1) {
                chosen = Optional.of(one);
            }
            tried.add(one);
        }

        private Tried judged(Tried one) {
            List<Margin> margins = PanelCheck.brief().margins(one.job());
            return new Tried(
                    one.measure(),
                    one.job(),
                    one.addedMass(),
                    felt(margins),
                    margins,
                    Optional.empty());
        }

        private double felt(List<Margin> margins) {
            return margins.stream()
                    .filter(margin -> margin.mode() == Mode.FELT_STIFFNESS)
                    .mapToDouble(Margin::applied)
                    .findFirst()
                    .orElse(Double.NaN);
        }

        /** Judges in full, loads whose place is looked for looked for again. */
        private Tried inFull(Tried one) {
            Job job = Laying.on(drawnLoads, target, one.measure());
            return one.confirmed(full(job));
        }

        Reinforcement answer(Optional<Verdict> uncut, Optional<Verdict> drawn) {
            Optional<Tried> lighter =
                    chosen.flatMap(
                            best ->
                                    tried.stream()
                                            .filter(one -> one.addedMass() < best.addedMass())
                                            .filter(one -> one.isSolved() && one.reserve() < 1)
                                            .max(Comparator.comparingDouble(Tried::reserve)));
            Optional<Tried> clear = Optional.empty();
            if (chosen.isPresent() && !isClear(chosen.get()) && !stopped) {
                clear = clear(chosen.get());
            }
            Optional<Tried> nearest =
                    chosen.isPresent()
                            ? Optional.empty()
                            : told().map(one -> one.verdict().isPresent() ? one : inFull(one));
            boolean beside = Reinforcement.isBeside(uncut, bare, nearest);
            List<Change> further =
                    nearest.isEmpty() || stopped
                            ? List.of()
                            : further(
                                    beside ? bare : nearest.get().verdict().orElseThrow(), beside);
            return new Reinforcement(
                    target, uncut, bare, drawn, tried, chosen, lighter, clear, nearest, further,
                    offered, stopped);
        }

        /** Returns what is told where none holds: what comes near, else what cures something. */
        private Optional<Tried> told() {
            Optional<Tried> nearest = nearest();
            return nearest.filter(one -> likely(one) >= WITHIN).or(this::curing).or(() -> nearest);
        }

        /**
         * Returns the lightest that cures all of what is short that any one tried does cure; empty
         * where none cures anything. What none cures is short elsewhere, and no reason to lay more
         * here.
         */
        private Optional<Tried> curing() {
            Set<Mode> failing = Tried.failing(bare.job(), bare.margins());
            List<Tried> solved = tried.stream().filter(Tried::isSolved).toList();
            if (solved.isEmpty()) {
                return stopped || failing.equals(Set.of(Mode.FELT_STIFFNESS))
                        ? Optional.empty()
                        : strong();
            }
            Set<Mode> never = EnumSet.copyOf(failing);
            solved.forEach(one -> never.retainAll(one.failing()));
            return never.equals(failing)
                    ? Optional.empty()
                    : solved.stream().filter(one -> never.containsAll(one.failing())).findFirst();
        }

        /** Returns the lightest of some to which nothing but stiffness is wanting. */
        private Optional<Tried> strong() {
            for (int i = 0; i < Math.min(STRENGTHENED, tried.size()); i += BATCH) {
                List<Tried> batch = tried.subList(i, Math.min(i + BATCH, tried.size()));
                Optional<Tried> found =
                        batch.parallelStream().map(this::judged).toList().stream()
                                .filter(
                                        one ->
                                                Set.of(Mode.FELT_STIFFNESS)
                                                        .containsAll(one.failing()))
                                .findFirst();
                if (found.isPresent()) {
                    return found;
                }
            }
            return Optional.empty();
        }

        /**
         * Returns the lightest of those that come within a hundredth of the best; one that was only
         * forecast where all were hopeless.
         */
        private Optional<Tried> nearest() {
            double best =
                    tried.stream()
                            .mapToDouble(this::likely)
                            .filter(reserve -> !Double.isNaN(reserve))
                            .max()
                            .orElse(Double.NaN);
            return tried.stream().filter(one -> likely(one) >= ALIKE * best).findFirst();
        }

        private double likely(Tried one) {
            return one.isSolved()
                    ? one.reserve()
                    : one.felt() / bare.job().limits().feltStiffness();
        }

        /** Returns the lightest that holds by more than hand work varies. */
        private Optional<Tried> clear(Tried best) {
            int looked = 0;
            double wanted = wanted(best);
            for (Tried one : tried) {
                boolean fails = one.isSolved() && one.reserve() < 1;
                if (one.addedMass() > best.addedMass()
                        && !fails
                        && !(one.felt() < wanted)
                        && looked < LOOKED) {
                    looked++;
                    Tried roughly = one.confirmed(brief(one.job()));
                    Tried settled = isClear(roughly) ? inFull(one) : roughly;
                    if (isClear(settled)) {
                        return Optional.of(settled);
                    }
                }
            }
            return Optional.empty();
        }

        /** The felt stiffness whose weakest tenth still meets the limit, by the scatter of one. */
        private double wanted(Tried best) {
            return best.verdict()
                    .flatMap(Verdict::felt)
                    .map(
                            spread ->
                                    best.job().limits().feltStiffness()
                                            * spread.nominal()
                                            / spread.low())
                    .orElse(0.0);
        }

        private List<Change> further(Verdict verdict, boolean beside) {
            List<Change> found = new ArrayList<>();
            if (target instanceof Target.Hole hole && !beside) {
                Job smaller =
                        Laying.withOpening(
                                verdict.job().withLoadsPlaced(), Offers.smaller(hole.opening()));
                Verdict there = brief(smaller);
                found.add(
                        new Change(
                                "a " + target.name() + " a fifth smaller",
                                there,
                                there.mass() - verdict.mass()));
            }
            found.addAll(new Cures(library).toCure(verdict));
            return found;
        }
    }

    private static boolean isClear(Tried one) {
        return one.verdict()
                .map(
                        v ->
                                v.holds()
                                        && v.stiff() == Answer.YES
                                        && v.strong() == Answer.YES
                                        && (v.unmarked() == Answer.YES
                                                || v.job().limits().marksAllowed()))
                .orElse(false);
    }
}
