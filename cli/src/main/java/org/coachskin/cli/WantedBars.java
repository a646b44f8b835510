package org.coachskin.cli;

import java.util.List;
import org.coachskin.cli.report.Block;

/** Bars beside the line of what is wanted. */
final class WantedBars {

    /** Reserves beyond this have a bar as long as this. */
    static final double LONGEST = 5;

    private WantedBars() {}

    /** Returns the bar of one reserve. */
    static Block.Bar reserve(String words, double reserve, String more, boolean fails) {
        return new Block.Bar(
                words, Math.min(LONGEST, reserve), Figures.reserve(reserve), more, fails);
    }

    static Block.Bars reserves(String heading, String sentence, List<Block.Bar> bars) {
        return new Block.Bars(heading, sentence, "reserve", 1, "1.00 wanted", bars, true);
    }

    /** Returns bars of felt stiffness, of which {@code wanted} is wanted [N/m]. */
    static Block.Bars stiffnesses(
            String heading, String sentence, double wanted, List<Block.Bar> bars, Figures figures) {
        return new Block.Bars(
                heading,
                sentence,
                figures.stiffnessName(),
                wanted,
                figures.stiffness(wanted) + " wanted",
                bars,
                true);
    }
}
