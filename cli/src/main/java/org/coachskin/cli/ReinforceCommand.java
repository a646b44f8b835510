package org.coachskin.cli;

import java.util.List;
import java.util.Optional;
import org.coachskin.NoAnswerException;
import org.coachskin.check.Job;
import org.coachskin.cli.file.PanelFile;
import org.coachskin.material.MaterialLibrary;
import org.coachskin.reinforce.Reinforcement;
import org.coachskin.reinforce.Reinforcing;
import org.coachskin.reinforce.Target;
import org.coachskin.reinforce.Watch;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code coachskin reinforce}: what must go around an opening, a fitting, an edge, in a lip? */
final class ReinforceCommand implements Subcommand {

    @Override
    public CommandSpec spec() {
        return CommandSpec.create()
                .addOption(Subcommand.flag("--json"))
                .addOption(Subcommand.option("--units", "metric|us"))
                .addPositional(Subcommand.arguments("a panel file and a place in it", "2", "*"));
    }

    @Override
    public Outcome run(ParseResult given) {
        Figures figures = Panels.units(given);
        String[] words = Subcommand.argumentsOf(given);
        String name = words[0];
        String what = String.join(" ", List.of(words).subList(1, words.length));
        PanelFile file = Panels.read(name);
        Job job = file.asDrawn();
        Target target = Target.named(job, what).orElseThrow(() -> unknown(name, job, what));
        Reinforcement found;
        try (Interrupt interrupt = Interrupt.on();
                Seen seen = new Seen(interrupt)) {
            found = new Reinforcing(file.library()).of(job, target, seen);
        } catch (NoAnswerException e) {
            throw new Refused(Outcome.INPUT, "", List.of(e.problem()));
        }
        boolean holds = found.isNeedless() || found.chosen().isPresent();
        int status =
                found.stopped() ? Outcome.NO_ANSWER : holds ? Outcome.HOLDS : Outcome.DOES_NOT_HOLD;
        String text =
                given.hasMatchedOption("--json")
                        ? Json.text(ReinforceJson.of(found))
                        : new ReinforcePage(name, file, found, figures).text();
        return Outcome.answer(status, text);
    }

    private static Refused unknown(String name, Job job, String what) {
        List<String> known = Target.of(job).stream().map(Target::name).toList();
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
        private int steps;

        Seen(Interrupt interrupt) {
            this.interrupt = interrupt;
        }

        @Override
        public void tried(int count, int of) {
            Progress known =
                    Optional.ofNullable(progress).orElseGet(() -> Progress.of("trying", of));
            progress = known;
            for (; steps < count; steps++) {
                known.step();
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
