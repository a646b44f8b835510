package org.coachskin.cli;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.coachskin.NoAnswerException;
import org.coachskin.check.Job;
import org.coachskin.cli.file.PanelFile;
import org.coachskin.material.MaterialLibrary;
import org.coachskin.reinforce.Reinforcement;
import org.coachskin.reinforce.Reinforcing;
import org.coachskin.reinforce.Rules;
import org.coachskin.reinforce.Target;
import org.coachskin.reinforce.Watch;
import org.coachskin.units.Dimension;
import org.coachskin.units.Quantity;
import org.coachskin.units.QuantityException;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code coachskin reinforce}: what must go around an opening, a fitting, an edge, in a lip? */
final class ReinforceCommand implements Subcommand {

    @Override
    public CommandSpec spec() {
        return Subcommand.answering(
                        Subcommand.arguments("a panel file and a place in it", "1", "*"))
                .addOption(Subcommand.option("--only", "MEANS"))
                .addOption(Subcommand.option("--without", "MEANS"))
                .addOption(Subcommand.option("--widest", "LENGTH"))
                .addOption(Subcommand.option("--highest", "LENGTH"))
                .addOption(ReportFile.option());
    }

    @Override
    public Outcome run(ParseResult given) {
        Figures figures = Panels.units(given);
        String[] words = Subcommand.argumentsOf(given);
        String name = words[0];
        String what = String.join(" ", List.of(words).subList(1, words.length));
        Rules rules = rules(given);
        PanelFile file = Panels.read(name);
        Optional<ReportFile> report = ReportFile.wanted(given, List.of(name));
        Job job = file.asDrawn();
        if (what.isBlank()) {
            throw unnamed(name, job);
        }
        Target target = Target.named(job, what).orElseThrow(() -> unknown(name, job, what));
        Reinforcement found;
        try (Interrupt interrupt = Interrupt.on();
                Seen seen = new Seen(interrupt)) {
            found = new Reinforcing(file.library()).of(job, target, rules, seen);
        } catch (NoAnswerException e) {
            throw new Refused(Outcome.INPUT, "", List.of(e.problem()));
        }
        boolean holds = found.isNeedless() || found.chosen().isPresent();
        int status =
                found.stopped() ? Outcome.NO_ANSWER : holds ? Outcome.HOLDS : Outcome.DOES_NOT_HOLD;
        report.ifPresent(to -> to.write(() -> ReinforceReport.of(name, file, found, figures)));
        String text =
                given.hasMatchedOption("--json")
                        ? Json.text(ReinforceJson.of(found))
                        : new ReinforcePage(name, file, found, figures).text();
        return Outcome.answer(status, text);
    }

    private static Rules rules(ParseResult given) {
        Set<Rules.Means> means = EnumSet.noneOf(Rules.Means.class);
        means.addAll(
                given.hasMatchedOption("--only")
                        ? means(given, "--only")
                        : EnumSet.allOf(Rules.Means.class));
        means.removeAll(means(given, "--without"));
        if (means.isEmpty()) {
            throw Panels.refused(
                    "What --only allows --without takes away: nothing is left to try.",
                    "Leave one of the two out.");
        }
        return new Rules(means, length(given, "--widest"), length(given, "--highest"));
    }

    private static Set<Rules.Means> means(ParseResult given, String option) {
        Set<Rules.Means> found = EnumSet.noneOf(Rules.Means.class);
        String text = given.matchedOptionValue(option, "");
        for (String word : text.toLowerCase(Locale.ROOT).strip().split("[ ,]+", -1)) {
            if (!word.isEmpty()) {
                found.add(
                        Arrays.stream(Rules.Means.values())
                                .filter(one -> one.words().equals(word))
                                .findFirst()
                                .orElseThrow(() -> noMeans(option, word)));
            }
        }
        if (given.hasMatchedOption(option) && found.isEmpty()) {
            throw noMeans(option, text);
        }
        return found;
    }

    private static Refused noMeans(String option, String word) {
        List<String> known = Rules.Means.names();
        return Panels.refused(
                option + " does not know  " + word,
                "Write   "
                        + option
                        + " "
                        + MaterialLibrary.nearest(word, known)
                        + "   or several of: "
                        + String.join(", ", known));
    }

    /** Returns a length; infinite where none is given. */
    private static double length(ParseResult given, String option) {
        if (!given.hasMatchedOption(option)) {
            return Double.POSITIVE_INFINITY;
        }
        String text = given.matchedOptionValue(option, "");
        double length;
        try {
            length = Quantity.parse(text, Dimension.LENGTH);
        } catch (QuantityException e) {
            throw Panels.refused(
                    option + " " + text + ": " + e.getMessage(),
                    "Write   " + option + " \"60 mm\"");
        }
        if (!(length > 0)) {
            throw Panels.refused(
                    option + " is above zero, not  " + text, "Write   " + option + " \"60 mm\"");
        }
        return length;
    }

    private static Refused unnamed(String name, Job job) {
        List<String> known = names(job);
        return Panels.refused(
                "Reinforce what? In " + name + " there are: " + String.join(", ", known) + ".",
                "Write   coachskin reinforce "
                        + Texts.asArgument(name)
                        + " "
                        + Texts.asArgument(known.get(0)));
    }

    private static List<String> names(Job job) {
        return Target.of(job).stream().map(Target::name).toList();
    }

    private static Refused unknown(String name, Job job, String what) {
        List<String> known = names(job);
        return Panels.refused(
                name + " has nothing called  " + what + "  that could be reinforced.",
                "Write   "
                        + MaterialLibrary.nearest(what, known)
                        + "   or one of: "
                        + String.join(", ", known));
    }

    /** Draws how far it is, and asks whether somebody wants it to stop. */
    private static final class Seen implements Watch, AutoCloseable {
        private final Interrupt interrupt;
        private @Nullable Progress progress;

        Seen(Interrupt interrupt) {
            this.interrupt = interrupt;
        }

        @Override
        public void tried(int count, int of) {
            Progress known =
                    Optional.ofNullable(progress).orElseGet(() -> Progress.of("trying", of));
            progress = known;
            known.at(count);
            if (count > 0) {
                interrupt.begin();
            }
        }

        @Override
        public boolean isStopped() {
            return interrupt.isWanted();
        }

        @Override
        public void close() {
            if (progress != null) {
                progress.close();
            }
        }
    }
}
