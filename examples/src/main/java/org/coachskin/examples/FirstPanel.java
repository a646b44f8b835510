package org.coachskin.examples;

import java.util.List;
import org.coachskin.check.Job;
import org.coachskin.check.Limits;
import org.coachskin.check.Margin;
import org.coachskin.check.PanelCheck;
import org.coachskin.check.Verdict;
import org.coachskin.panel.Crown;
import org.coachskin.panel.EverydayLoads;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Support;

/** The buggy's luggage lid from the tables to a verdict. */
public final class FirstPanel {

    private FirstPanel() {}

    /** Prints the three answers and every mode with its reserve. */
    public static void main(String[] args) {
        Verdict verdict = verdict();
        System.out.printf(
                "stiff: %s, strong: %s, unmarked: %s%n",
                verdict.stiff(), verdict.strong(), verdict.unmarked());
        for (Margin margin : verdict.margins()) {
            System.out.printf(
                    "%-22s %-50s reserve %6.2f%n",
                    margin.mode().words(), margin.place().words(), margin.reserve());
        }
    }

    static Verdict verdict() {
        double width = 0.9;
        double length = 0.6;
        LoadCase palm = EverydayLoads.named("palm").orElseThrow().at(width / 2, length / 2);
        LoadCase thumb = EverydayLoads.named("thumb").orElseThrow().at(width / 2, length / 2);
        Job job =
                Job.of(
                        "luggage lid",
                        width,
                        length,
                        Crown.FLAT,
                        new Support.WholeRim(),
                        Workshop.luggageLid(),
                        List.of(palm, thumb),
                        Limits.STANDARD);
        return new PanelCheck().check(job);
    }
}
