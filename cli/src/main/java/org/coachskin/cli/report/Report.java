package org.coachskin.cli.report;

import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import java.util.List;
import org.coachskin.cli.report.page.JtereportGenerated;

/**
 * A whole report.
 *
 * @param title what it is about
 * @param size how large that is, in a few words
 * @param file the name of the panel file
 * @param version what made the report
 * @param answers the questions and what is answered
 * @param sheets at least one
 */
public record Report(
        String title,
        String size,
        String file,
        String version,
        List<Answered> answers,
        List<Sheet> sheets) {

    /** Copies the lists. */
    public Report {
        size = Typing.set(size);
        answers = List.copyOf(answers);
        sheets = List.copyOf(sheets);
    }

    /**
     * One question.
     *
     * @param question for example {@code Stiff enough?}
     * @param answer in a word
     * @param reason in a sentence
     * @param fails whether it does not hold
     */
    public record Answered(String question, String answer, String reason, boolean fails) {}

    /** Returns the page: one file that needs nothing else. */
    public String page() {
        StringOutput out = new StringOutput();
        JtereportGenerated.render(new OwaspHtmlTemplateOutput(out), null, this);
        return out.toString();
    }
}
