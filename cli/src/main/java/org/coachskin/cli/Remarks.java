package org.coachskin.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coachskin.check.Answer;
import org.coachskin.check.Job;
import org.coachskin.check.Verdict;
import org.coachskin.cli.file.PanelFile;
import org.coachskin.design.Change;
import org.coachskin.failure.Mode;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;

/** The sentences beside a verdict: what was assumed, what was not asked, what to beware of. */
final class Remarks {

    /** What no answer may be taken for. */
    static final String NO_APPROVAL =
            "No approval for road use or for protecting people. Local rules come first.";

    private Remarks() {}

    /** Returns what to say where no load of the file bears on a question. */
    static String nothingAsked(Mode.Question question) {
        return switch (question) {
            case STIFF -> "Not asked: add  palm  under loads.";
            case STRONG -> "Not asked: no load of the file bears on it.";
            case UNMARKED -> "Not asked: add  thumb  under loads.";
        };
    }

    static boolean clearly(Verdict verdict) {
        boolean unmarked =
                verdict.unmarked() == Answer.YES || verdict.job().limits().marksAllowed();
        return verdict.stiff() == Answer.YES && verdict.strong() == Answer.YES && unmarked;
    }

    /** Returns which change is the best for its weight, and what to do where there is no room. */
    static String best(List<Change> changes) {
        Optional<Change> first = lightest(changes, "");
        if (first.isEmpty()) {
            return changes.stream().anyMatch(change -> change.verdict().holds())
                    ? "None of these clears every limit by more than hand work varies; two together may. Write "
                            + "them as variants and compare."
                    : "None of these is enough alone; two together may be. Write them as variants and compare.";
        }
        String words = "Lightest that clears every limit: " + first.get().words() + ".";
        if (first.get().addedMass() == 0) {
            return changes.stream()
                    .filter(change -> clearly(change.verdict()) && change.addedMass() > 0)
                    .findFirst()
                    .map(laid -> words + " With the fittings as drawn: " + laid.words() + ".")
                    .orElse(words);
        }
        if (first.get().words().contains("foam")) {
            return lightest(changes, "ply")
                    .map(ply -> words + " If there is no room: " + ply.words() + ".")
                    .orElse(words);
        }
        return words;
    }

    private static Optional<Change> lightest(List<Change> changes, String word) {
        return changes.stream()
                .filter(change -> clearly(change.verdict()) && change.words().contains(word))
                .findFirst();
    }

    static void takenForGranted(
            Page page, List<PanelFile.Assumption> assumptions, Figures figures) {
        if (!assumptions.isEmpty()) {
            page.line("Taken for granted");
            page.paragraph(
                    String.join(
                                    "; ",
                                    assumptions.stream()
                                            .map(assumption -> figures.words(assumption.words()))
                                            .toList())
                            + ".");
        }
    }

    static void notAsked(Page page, Job job, Figures figures) {
        page.line("Not asked");
        notAsked(job, figures).forEach(page::paragraph);
        page.blank();
    }

    /** Returns what no load of the file asks for, and what nobody can ask yet. */
    static List<String> notAsked(Job job, Figures figures) {
        List<String> missing = new ArrayList<>();
        if (!asks(job, LoadCase.Kind.FELT)) {
            missing.add("a palm");
        }
        if (!asks(job, LoadCase.Kind.PERSON)) {
            missing.add("a knee");
        }
        boolean wind = job.loads().stream().anyMatch(load -> load.name().contains("wind"));
        if (!wind) {
            missing.add("wind");
        }
        boolean heat =
                job.loads().stream()
                        .flatMap(load -> load.standing().stream())
                        .anyMatch(Load.Heat.class::isInstance);
        if (!heat) {
            missing.add("a dark panel in the sun");
        }
        List<String> words = new ArrayList<>();
        if (!missing.isEmpty()) {
            words.add(
                    CheckPage.sentence(String.join(", ", missing))
                            + "."
                            + (wind
                                    ? ""
                                    : " Add for example  wind:\u00a0"
                                            + figures.windToWrite()
                                            + "  under loads."));
        }
        words.add(
                (job.panel().rimCarried()
                                ? "Not worked out here: hinges, latch and rubber seal (say how it is held). "
                                : "")
                        + "Not worked out yet: snapping through of a crown, "
                        + "softening in heat, creep, slamming, impact, fatigue.");
        return words;
    }

    private static boolean asks(Job job, LoadCase.Kind kind) {
        return job.loads().stream().anyMatch(load -> load.kind() == kind);
    }

    static void careful(Page page, Verdict verdict, Figures figures) {
        page.line("Careful");
        cautions(verdict, figures).forEach(page::item);
        page.paragraph(NO_APPROVAL);
        page.blank();
    }

    /** Returns what to beware of. */
    static List<String> cautions(Verdict verdict, Figures figures) {
        List<String> words = new ArrayList<>();
        verdict.cautions().forEach(caution -> words.add(figures.words(caution)));
        words.add(
                "Unlatched, the air lifts it at about "
                        + figures.speed(verdict.liftOffSpeed())
                        + ". Fit a second catch.");
        words.add("Hinges, latch and their screws are not checked here.");
        words.add(
                "Resin vapour, foam and glass dust, a pot of resin that heats up: mask, gloves, fresh air, "
                        + "small batches.");
        return words;
    }
}
