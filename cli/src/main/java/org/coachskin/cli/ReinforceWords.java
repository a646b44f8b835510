package org.coachskin.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coachskin.check.Answer;
import org.coachskin.check.Margin;
import org.coachskin.check.Verdict;
import org.coachskin.failure.Mode;
import org.coachskin.reinforce.Build;
import org.coachskin.reinforce.Measure;
import org.coachskin.reinforce.Reinforcement;
import org.coachskin.reinforce.Target;
import org.coachskin.reinforce.Tried;

/** What a search for a reinforcement comes to, in sentences; every one follows from verdicts. */
final class ReinforceWords {

    private final Reinforcement found;
    private final Figures figures;
    private final Verdict bare;

    ReinforceWords(Reinforcement found, Figures figures) {
        this.found = found;
        this.figures = figures;
        bare = found.bare();
    }

    /** Returns the chosen one, or the nearest where none holds; empty where nothing is needed. */
    Optional<Tried> shown() {
        return found.isNeedless() || found.isBesideThePoint()
                ? Optional.empty()
                : found.chosen().or(found::nearest);
    }

    /** Returns the verdict on the panel with what is shown. */
    Verdict verdict() {
        return shown().flatMap(Tried::verdict).orElse(bare);
    }

    /** Returns what stands side by side: uncut, bare, as drawn and with what goes around. */
    Map<String, Verdict> states() {
        Map<String, Verdict> states = new LinkedHashMap<>();
        found.uncut().ifPresent(verdict -> states.put("uncut", verdict));
        states.put(found.uncut().isPresent() ? "cut, bare" : "as it is", bare);
        found.drawn().ifPresent(verdict -> states.put("as drawn", verdict));
        shown().flatMap(Tried::verdict)
                .ifPresent(
                        verdict ->
                                states.put(
                                        found.chosen().isPresent() || !found.cured().isEmpty()
                                                ? "with it"
                                                : "nearest",
                                        verdict));
        return states;
    }

    /** Returns what stands over the steps at the bench. */
    String bench() {
        return found.chosen().isPresent() || !found.cured().isEmpty()
                ? "At the bench, in this order"
                : "The nearest at the bench, in this order";
    }

    /** Returns whether stiffness is all that is short, so that the table is of it. */
    boolean isOfStiffness() {
        return bare.felt().isPresent()
                && bare.margins().stream()
                        .filter(margin -> !margin.holds())
                        .allMatch(margin -> margin.mode() == Mode.FELT_STIFFNESS);
    }

    /** Returns the answer: what to do, and what was short. */
    List<String> answer() {
        List<String> said = new ArrayList<>();
        if (found.isNeedless()) {
            said.add(
                    "Nothing more is needed for the "
                            + found.target().name()
                            + ": it holds every limit "
                            + (found.target() instanceof Target.Lip ? "as drawn" : "without")
                            + (Remarks.clearly(bare) ? "." : ", if barely.")
                            + " Nearest to its limit: "
                            + shortest(bare)
                            + ".");
        } else if (found.chosen().isPresent()) {
            said.add(chosen(found.chosen().get()));
            said.add(wasShort());
        } else if (found.isBesideThePoint()) {
            said.add(
                    "The "
                            + found.target().name()
                            + " has little to do with it: nothing that was tried there holds, "
                            + (found.uncut().isPresent()
                                    ? "nor does the panel with it filled."
                                    : "or gains much."));
            said.add(wasShort());
        } else if (found.nearest().isPresent()) {
            said.add(
                    found.stopped()
                            ? "None that was tried so far holds."
                            : "Nothing that was tried holds.");
            said.add(nearest(found.nearest().get()));
            said.add(wasShort());
            if (!found.cured().isEmpty()) {
                said.add("None of what was tried there cures the rest.");
            }
        } else {
            said.add(
                    found.stopped()
                            ? "None was tried yet."
                            : "Nothing that was tried comes near to what is wanted.");
            said.add(wasShort());
        }
        if (found.stopped()) {
            said.add("Stopped after " + found.tried().size() + " of " + found.offered() + ".");
        }
        found.drawn()
                .ifPresent(
                        drawn ->
                                said.add(
                                        "What the file has there was set aside for this; as drawn it adds "
                                                + figures.grams(drawn.mass() - bare.mass())
                                                + " and "
                                                + (drawn.holds() ? "holds." : "does not hold.")));
        return said;
    }

    private String chosen(Tried best) {
        Verdict verdict = best.verdict().orElseThrow();
        boolean barely = !Remarks.clearly(verdict);
        String words =
                figures.words(sentence(best.measure()))
                        + ". With that it holds"
                        + (barely ? ", if barely" : "")
                        + " ("
                        + shortest(verdict)
                        + missing(verdict)
                        + "), and weighs "
                        + figures.grams(best.addedMass())
                        + " more.";
        return found.clear()
                .map(
                        clear ->
                                words
                                        + " For a clear yes: "
                                        + figures.words(clear.measure().words())
                                        + ", "
                                        + figures.grams(clear.addedMass())
                                        + ".")
                .orElse(words);
    }

    /** Says how many of those laid alike would miss the limit on stiffness, where some would. */
    private String missing(Verdict verdict) {
        if (verdict.stiff() != Answer.BARELY || verdict.felt().isEmpty()) {
            return "";
        }
        double share = verdict.felt().get().below(verdict.job().limits().feltStiffness());
        return share > 0
                ? "; about one in " + Math.round(1 / share) + " laid from this file would miss it"
                : "";
    }

    private String nearest(Tried best) {
        String what =
                figures.words(sentence(best.measure()))
                        + ", "
                        + figures.grams(best.addedMass())
                        + ". ";
        if (found.cured().isEmpty()) {
            Margin margin = best.governing().orElseThrow();
            return "Nearest: "
                    + what
                    + "It misses by "
                    + Figures.percent(1 - margin.reserve())
                    + ": "
                    + shortest(best.verdict().orElse(bare))
                    + ".";
        }
        List<String> cured = found.cured().stream().map(Mode::words).toList();
        return "The lightest that cures what can be cured there: "
                + what
                + "It cures: "
                + String.join(", ", cured)
                + ". Still short: "
                + String.join("; ", failing(best.verdict().orElse(bare)))
                + ".";
    }

    /** Returns the figure that comes nearest to its limit. */
    private String shortest(Verdict verdict) {
        Margin margin = verdict.governing();
        boolean felt = margin.mode() == Mode.FELT_STIFFNESS;
        return (felt ? "" : figures.words(Rows.words(margin)) + " at ")
                + Rows.failsAt(margin, figures)
                + ", "
                + Rows.wanted(margin, figures)
                + " wanted";
    }

    /** Says whether stiffness or strength was short, with figures of the bare panel. */
    private String wasShort() {
        List<Margin> failing = bare.margins().stream().filter(m -> !m.holds()).toList();
        boolean stiff = failing.stream().anyMatch(m -> m.mode().question() == Mode.Question.STIFF);
        boolean strong =
                failing.stream().anyMatch(m -> m.mode().question() == Mode.Question.STRONG);
        return "Short without it: "
                + (stiff && strong
                        ? "stiffness and strength"
                        : stiff
                                ? "stiffness, not strength"
                                : strong ? "strength, not stiffness" : "the surface")
                + ": "
                + String.join("; ", failing(bare))
                + ".";
    }

    /** Returns what does not hold, with its figures. */
    private List<String> failing(Verdict verdict) {
        return verdict.margins().stream()
                .filter(margin -> !margin.holds())
                .map(
                        margin ->
                                figures.words(Rows.words(margin))
                                        + " ("
                                        + Rows.failsAt(margin, figures)
                                        + ", "
                                        + Rows.wanted(margin, figures)
                                        + " wanted)")
                .toList();
    }

    /** Returns where and what, as an order to a maker. */
    private String sentence(Measure measure) {
        Target target = found.target();
        String where =
                target instanceof Target.Hole
                        ? "Round the " + target.name()
                        : target instanceof Target.Along
                                ? "Along the " + target.name()
                                : target instanceof Target.Hardware
                                        ? "Under the " + target.name()
                                        : "In the lip";
        List<String> parts = new ArrayList<>();
        String wide = Figures.METRIC.size(measure.width());
        if (measure.build() instanceof Build.Strip strip) {
            int over = strip.over().size();
            parts.add(
                    "a foam strip "
                            + wide
                            + " wide and "
                            + Figures.METRIC.size(strip.thickness())
                            + " thick on the inside with "
                            + (over == 1 ? "one extra ply" : over + " extra plies")
                            + " over it");
        } else if (!(measure.build() instanceof Build.Nothing)) {
            String words = measure.build().words().replace(" in the lip", "");
            parts.add(
                    words
                            + (measure.width() <= 0
                                    ? ""
                                    : target instanceof Target.Hardware
                                            ? ", " + wide + " past it on every side"
                                            : ", " + wide + " wide"));
        }
        if (measure.turned()) {
            parts.add("the inside skin turned round the raw edge");
        }
        if (measure.radius() > 0) {
            parts.add("corners of radius " + Figures.METRIC.size(measure.radius()));
        }
        return where + ": " + String.join(", and ", parts);
    }

    /** Returns what the table comes to. */
    List<String> underTheTable() {
        List<String> said = new ArrayList<>();
        said.add(
                (found.chosen().isPresent()
                                ? "Chosen: the lightest of "
                                        + found.offered()
                                        + " that holds every limit. "
                                : "")
                        + judged());
        if (isOfStiffness()) {
            reached().ifPresent(said::add);
            wider().ifPresent(said::add);
        }
        return said;
    }

    /** Says how many were judged by every limit, and what the others were told from. */
    private String judged() {
        int solved = found.solved();
        int told = found.tried().size() - solved;
        if (told == 0) {
            return "Each was judged by every limit, by coarser elements, a few per cent off.";
        }
        String others =
                "the stiffness was told from a few that were solved, as a rule 0 to 3 % high.";
        return solved == 0
                ? "Of all " + told + " " + others
                : solved
                        + (solved == 1 ? " was" : " were")
                        + " judged by every limit; of the other "
                        + told
                        + " "
                        + others;
    }

    /** Compares how far plies get with how far a strip does. */
    private Optional<String> reached() {
        Optional<Tried> plies = stiffest(Build.Plies.class);
        Optional<Tried> strip = stiffest(Build.Strip.class);
        if (plies.isEmpty() || strip.isEmpty()) {
            return Optional.empty();
        }
        boolean enough = plies.get().felt() >= bare.job().limits().feltStiffness();
        return Optional.of(
                (enough ? "Plies get to " : "Plies alone do not get there: ")
                        + figures.stiffness(plies.get().felt())
                        + " "
                        + figures.stiffnessName()
                        + " at most, for "
                        + figures.grams(plies.get().addedMass())
                        + "; a strip gets to "
                        + figures.stiffness(strip.get().felt())
                        + " for "
                        + figures.grams(strip.get().addedMass())
                        + ".");
    }

    private Optional<Tried> stiffest(Class<? extends Build> kind) {
        return found.tried().stream()
                .filter(one -> kind.isInstance(one.measure().build()))
                .filter(one -> !Double.isNaN(one.felt()))
                .max(Comparator.comparingDouble(Tried::felt));
    }

    /** Says what more width would bring to the chosen one. */
    private Optional<String> wider() {
        return found.chosen()
                .flatMap(
                        best ->
                                found
                                        .rows(best.measure())
                                        .getOrDefault(best.measure().build(), List.of())
                                        .stream()
                                        .filter(
                                                one ->
                                                        one.measure().width()
                                                                > best.measure().width())
                                        .min(
                                                Comparator.comparingDouble(
                                                        one -> one.measure().width()))
                                        .map(
                                                one ->
                                                        figures.size(one.measure().width())
                                                                + " wide it would be "
                                                                + figures.stiffness(
                                                                        one.felt() - best.felt())
                                                                + " "
                                                                + figures.stiffnessName()
                                                                + " stiffer for "
                                                                + figures.grams(
                                                                        one.addedMass()
                                                                                - best.addedMass())
                                                                + " more."));
    }
}
