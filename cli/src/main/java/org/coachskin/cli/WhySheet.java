package org.coachskin.cli;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.check.Job;
import org.coachskin.check.Margin;
import org.coachskin.check.Movement;
import org.coachskin.check.Picture;
import org.coachskin.check.Verdict;
import org.coachskin.cli.file.PanelFile;
import org.coachskin.cli.report.Block;
import org.coachskin.cli.report.MovementDrawing;
import org.coachskin.cli.report.Sheet;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;

/** The sheet for the engineer: why. */
final class WhySheet {

    /** Reserves beyond this have a bar as long as this. */
    private static final double LONGEST = 5;

    private final Verdict verdict;
    private final Job job;
    private final Figures figures;

    WhySheet(Verdict verdict, Figures figures) {
        this.verdict = verdict;
        this.figures = figures;
        job = verdict.job();
    }

    Sheet sheet(Picture picture, PanelFile file) {
        List<Block> blocks = new ArrayList<>();
        movements(picture, blocks);
        blocks.add(modes());
        blocks.add(
                new Block.Words(
                        "Taken for granted",
                        "",
                        file.assumptions().stream().map(a -> figures.words(a.words())).toList(),
                        true,
                        true));
        blocks.add(new Block.Words("Not asked", "", Remarks.notAsked(job, figures), false, true));
        blocks.add(new Block.Raw("The panel file", "", file.text()));
        return new Sheet("why", "Why", "for the engineer", blocks);
    }

    /** Draws the palm first, then what is spread or a person; a touch moves a panel like a palm. */
    private void movements(Picture picture, List<Block> blocks) {
        for (LoadCase.Kind kind :
                List.of(LoadCase.Kind.FELT, LoadCase.Kind.SPREAD, LoadCase.Kind.PERSON)) {
            for (int i = 0; i < job.loads().size(); i++) {
                LoadCase load = job.loads().get(i);
                if (load.kind() == kind) {
                    movement(i, load, picture.moved().get(i), blocks);
                }
            }
        }
        if (blocks.isEmpty()) {
            movement(0, job.loads().get(0), picture.moved().get(0), blocks);
        }
    }

    private void movement(int number, LoadCase load, Picture.Moved moved, List<Block> blocks) {
        Movement movement = verdict.movements().get(number);
        if (movement.total() == 0) {
            return;
        }
        double most = moved.most().value();
        boolean apart =
                load.loads().get(0) instanceof Load.Press press
                        && Math.hypot(press.x() - moved.most().x(), press.y() - moved.most().y())
                                > press.patch().halfX() + press.patch().halfY();
        blocks.add(
                new Block.Figure(
                        "How it gives under " + Rows.called(load.name()),
                        "A line every "
                                + MovementDrawing.step(job.panel(), moved, figures)
                                + ". It moves most "
                                + (apart ? "not where it is pressed but " : "")
                                + figures.size(Math.rint(100 * moved.most().x()) / 100)
                                + " from left, "
                                + figures.size(Math.rint(100 * moved.most().y()) / 100)
                                + " from front: "
                                + figures.movement(Math.abs(most))
                                + (most < 0 ? " outward." : " inward."),
                        MovementDrawing.of(
                                "moved" + number, job.panel(), moved, List.of(load), figures),
                        List.of(),
                        false));
        MovementParts parts = MovementParts.of(verdict, movement);
        List<Block.Bar> bars = new ArrayList<>();
        for (MovementParts.Part part : parts.parts()) {
            bars.add(
                    new Block.Bar(
                            part.words(),
                            part.share(),
                            figures.movement(part.movement()),
                            Figures.percent(part.share()),
                            false));
        }
        blocks.add(
                new Block.Bars(
                        "Where " + parts.title(figures),
                        largest(parts),
                        "",
                        Double.NaN,
                        "",
                        bars,
                        false));
    }

    private static String largest(MovementParts parts) {
        MovementParts.Part most = parts.parts().get(0);
        for (MovementParts.Part part : parts.parts()) {
            if (part.share() > most.share()) {
                most = part;
            }
        }
        return CheckPage.sentence(most.words()) + " is the largest part: change that first.";
    }

    private Block modes() {
        List<Block.Bar> bars = new ArrayList<>();
        int fails = 0;
        for (Margin margin : verdict.margins()) {
            if (Double.isFinite(margin.multiplier())) {
                fails += margin.holds() ? 0 : 1;
                bars.add(
                        new Block.Bar(
                                figures.words(Rows.words(margin)),
                                Math.min(LONGEST, margin.reserve()),
                                Figures.reserve(margin.reserve()),
                                margin.holds() ? "" : "does not hold",
                                !margin.holds()));
            }
        }
        return new Block.Bars(
                "What limits it",
                (fails == 0
                                ? "Every bar passes the line: all hold."
                                : fails == 1
                                        ? "One bar ends short of the line."
                                        : fails + " bars end short of the line.")
                        + " Reserve: how often the load fits, over the factor of safety; bars beyond "
                        + Figures.decimals(LONGEST, 0)
                        + " are cut there.",
                "reserve",
                1,
                "1.00",
                bars,
                true);
    }
}
