package org.coachskin.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.coachskin.check.Answer;
import org.coachskin.check.Job;
import org.coachskin.check.Margin;
import org.coachskin.check.Movement;
import org.coachskin.check.Verdict;
import org.coachskin.failure.Mode;

/** The head of the first screen: stiff enough, strong enough, unmarked? */
final class Answers {

    private final Verdict verdict;
    private final Job job;
    private final Figures figures;

    Answers(Verdict verdict, Figures figures) {
        this.verdict = verdict;
        this.figures = figures;
        job = verdict.job();
    }

    /**
     * One question.
     *
     * @param question for example {@code Stiff enough?}
     * @param answer in a word; empty where no load asks
     * @param reason in a sentence
     * @param fails whether what is wanted is not met
     */
    record Said(String question, String answer, String reason, boolean fails) {}

    void write(Page page) {
        for (Said said : said()) {
            String question = said.question().toUpperCase(Locale.ROOT);
            String lead = "  " + question + " ".repeat(16 - question.length());
            String word = said.answer().isEmpty() ? "" : said.answer() + ".";
            if (word.isEmpty()) {
                page.wrap(lead + " ".repeat(8), said.reason());
            } else {
                String gap = " ".repeat(Math.max(1, 8 - word.length()));
                page.wrap(lead + word + gap, 26, said.reason());
            }
        }
        page.blank();
    }

    /** Returns what is answered to the three questions. */
    List<Said> said() {
        return List.of(
                said("Stiff enough?", verdict.stiff(), Mode.Question.STIFF),
                said("Strong enough?", verdict.strong(), Mode.Question.STRONG),
                said("Unmarked?", verdict.unmarked(), Mode.Question.UNMARKED));
    }

    private Said said(String question, Answer answer, Mode.Question kind) {
        Optional<Margin> governing =
                verdict.governing(kind).filter(m -> Double.isFinite(m.multiplier()));
        boolean dents = kind == Mode.Question.UNMARKED && job.panel().laminate().isBare();
        if (governing.isEmpty() && !dents) {
            return new Said(question, "", Remarks.nothingAsked(kind), false);
        }
        String reason =
                governing
                        .map(margin -> reason(margin, answer))
                        .orElse("There is no foam that a load could dent.");
        return new Said(question, answer.toString(), reason, answer == Answer.NO);
    }

    private String reason(Margin margin, Answer answer) {
        return switch (margin.mode()) {
            case FELT_STIFFNESS -> feltStiffness(margin, answer);
            case SAG -> sag(margin);
            case SEAL_GAP ->
                    "It lifts off its rubber seal by "
                            + figures.movement(margin.applied())
                            + " under "
                            + Rows.called(margin.loadCase())
                            + "; "
                            + figures.movement(margin.allowable())
                            + " is allowed.";
            case LASTING_MARK -> mark(margin);
            default ->
                    "First to go: "
                            + figures.words(Rows.words(margin))
                            + ", "
                            + fits(margin)
                            + "; "
                            + Figures.fixed(margin.factor(), 1)
                            + " is wanted."
                            + (answer == Answer.BARELY
                                    ? " The error of the method could turn it."
                                    : "");
        };
    }

    private static String fits(Margin margin) {
        return margin.multiplier() <= 0
                ? "before any load"
                : "at " + Figures.times(margin.multiplier()) + " times the load";
    }

    private String feltStiffness(Margin margin, Answer answer) {
        Movement movement = verdict.movementUnder(margin.loadCase());
        String words =
                held()
                        + ", "
                        + Rows.oneOf(margin.loadCase())
                        + " ("
                        + figures.force(movement.force())
                        + ") goes in by "
                        + figures.movement(movement.total())
                        + softest(margin)
                        + ": "
                        + figures.stiffness(margin.applied(), margin.allowable())
                        + " "
                        + figures.stiffnessName()
                        + "; "
                        + figures.stiffness(margin.allowable())
                        + " is wanted.";
        return answer == Answer.BARELY ? words + " Hand work could turn it." : words;
    }

    /** Returns where the softest place is, if the file asks for it. */
    private String softest(Margin margin) {
        boolean asked =
                job.loads().stream()
                        .anyMatch(load -> load.softest() && load.name().equals(margin.loadCase()));
        return asked
                ? " at its softest place, "
                        + figures.size(margin.place().x())
                        + " from left, "
                        + figures.size(margin.place().y())
                        + " from front"
                : "";
    }

    private String sag(Margin margin) {
        return held()
                + ", it moves "
                + figures.movement(margin.applied())
                + " under "
                + Rows.called(margin.loadCase())
                + "; "
                + figures.movement(margin.allowable())
                + " is allowed.";
    }

    private String mark(Margin margin) {
        Movement movement = verdict.movementUnder(margin.loadCase());
        return CheckPage.sentence(Rows.oneOf(margin.loadCase()))
                + " ("
                + figures.force(movement.force())
                + ") starts to mark it at "
                + Figures.times(margin.multiplier())
                + " times."
                + (job.limits().marksAllowed() ? " Marks are allowed by the file." : "");
    }

    private String held() {
        return job.panel().rimCarried() ? "Its whole rim carried" : "As it is held";
    }
}
