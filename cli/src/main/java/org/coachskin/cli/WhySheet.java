package org.coachskin.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.coachskin.analysis.Held;
import org.coachskin.check.Job;
import org.coachskin.check.Margin;
import org.coachskin.check.Movement;
import org.coachskin.check.NumericalError;
import org.coachskin.check.Picture;
import org.coachskin.check.Through;
import org.coachskin.check.Verdict;
import org.coachskin.cli.file.PanelFile;
import org.coachskin.cli.report.Block;
import org.coachskin.cli.report.MovementDrawing;
import org.coachskin.cli.report.SealDrawing;
import org.coachskin.cli.report.Sheet;
import org.coachskin.cli.report.StressDrawing;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;

/** The sheet for the engineer: why. */
final class WhySheet {

    private final Verdict verdict;
    private final Job job;
    private final Figures figures;
    private final WhyPage why;

    WhySheet(Verdict verdict, Figures figures) {
        this.verdict = verdict;
        this.figures = figures;
        job = verdict.job();
        why = new WhyPage(verdict, figures);
    }

    Sheet sheet(Picture picture, PanelFile file) {
        List<Block> blocks = new ArrayList<>();
        int first = job.felt().map(job.loads()::indexOf).orElse(0);
        movement(first, picture, blocks);
        picture.through().ifPresent(through -> blocks.add(through(through)));
        seal(picture, blocks);
        blocks.add(modes());
        for (int i = 0; i < job.loads().size(); i++) {
            // A touch moves a panel as a palm does.
            if (i != first && job.loads().get(i).kind() != LoadCase.Kind.TOUCH) {
                movement(i, picture, blocks);
            }
        }
        held(blocks);
        blocks.addAll(ScatterBlocks.of(verdict, figures));
        blocks.add(
                new Block.Words(
                        "Taken for granted",
                        file.assumptions().stream().map(a -> figures.words(a.words())).toList(),
                        true,
                        ""));
        blocks.add(new Block.Words("Not asked", Remarks.notAsked(job, figures), false, ""));
        blocks.add(method());
        blocks.add(folds());
        blocks.add(new Block.Raw("The panel file", file.text()));
        blocks.add(checked());
        return new Sheet("why", "Why", "for the engineer", blocks);
    }

    /** Returns room for whoever answers for the sheet. */
    static Block checked() {
        return new Block.Rows(
                "Checked",
                "",
                List.of("by", "date", "remarks"),
                List.of(List.of("", "", "")),
                "fill",
                true);
    }

    /** Draws how one load moves the panel. */
    private void movement(int number, Picture picture, List<Block> blocks) {
        LoadCase load = job.loads().get(number);
        Picture.Moved moved = picture.moved().get(number);
        Movement movement = verdict.movements().get(number);
        if (movement.total() == 0) {
            return;
        }
        double most = moved.most().value();
        double reach = MovementDrawing.reach(moved);
        boolean apart =
                load.loads().get(0) instanceof Load.Press press
                        && Math.hypot(press.x() - moved.most().x(), press.y() - moved.most().y())
                                > press.patch().halfX() + press.patch().halfY();
        blocks.add(
                new Block.Figure(
                        "How it gives under " + Rows.called(load.name()),
                        "A line every "
                                + MovementDrawing.step(reach, figures)
                                + ". It moves most "
                                + (apart ? "not where it is pressed but " : "")
                                + figures.place(moved.most().x())
                                + " from left, "
                                + figures.place(moved.most().y())
                                + " from front: "
                                + figures.movement(Math.abs(most))
                                + (most < 0 ? " outward." : " inward."),
                        MovementDrawing.of(
                                "moved" + number,
                                job.panel(),
                                moved,
                                reach,
                                List.of(load),
                                figures),
                        List.of()));
        MovementParts parts = MovementParts.of(verdict, movement);
        List<Block.Bar> bars = new ArrayList<>();
        for (MovementParts.Part part : parts.parts()) {
            bars.add(
                    new Block.Bar(
                            part.words(),
                            part.share(),
                            figures.movement(part.movement())
                                    + ", "
                                    + Figures.percent(part.share()),
                            "",
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
                        WantedBars.reserve(
                                figures.words(Rows.words(margin)),
                                margin.reserve(),
                                margin.holds() ? "" : "does not hold",
                                !margin.holds()));
            }
        }
        return WantedBars.reserves(
                "What limits it",
                (fails == 0
                                ? "Every bar passes the line: all hold."
                                : fails == 1
                                        ? "One bar ends short of the line."
                                        : fails + " bars end short of the line.")
                        + " Reserve: how often the load fits, over the factor of safety; bars beyond "
                        + Figures.decimals(WantedBars.LONGEST, 0)
                        + " are cut there.",
                bars);
    }

    private Block through(Through through) {
        Margin margin = through.margin();
        return new Block.Figure(
                "Stress through the thickness",
                (through.foam().isEmpty()
                                ? "Where it goes first: "
                                : "Where skins and foam go first: ")
                        + figures.words(Rows.words(margin))
                        + ", at "
                        + Figures.times(margin.multiplier())
                        + " times the load, "
                        + Figures.fixed(margin.factor(), 1)
                        + " wanted"
                        + (margin.holds() ? ". " : ": does not hold. ")
                        + (through.foam().isEmpty()
                                ? "Its layers bear pull and push "
                                        + StressDrawing.way(through, figures)
                                        + "."
                                : "Skins bear pull and push "
                                        + StressDrawing.way(through, figures)
                                        + ", the foam the shear."),
                StressDrawing.of(through, figures),
                List.of());
    }

    /** Draws the seal under the load that opens it most. */
    private void seal(Picture picture, List<Block> blocks) {
        int worst = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < verdict.held().size(); i++) {
            for (Held.SealPlace place : verdict.held().get(i).seals()) {
                if (place.squeeze() < least) {
                    least = place.squeeze();
                    worst = i;
                }
            }
        }
        if (worst >= 0) {
            Held under = verdict.held().get(worst);
            String load = job.loads().get(worst).name();
            blocks.add(
                    new Block.Figure(
                            "The rubber seal under " + Rows.called(load),
                            under.widestGap() == 0
                                    ? "It touches all the way round."
                                    : "It stands off its seal by up to "
                                            + figures.movement(under.widestGap())
                                            + ". Thin line: at rest.",
                            SealDrawing.of(
                                    job.panel(),
                                    picture.moved().get(0).field(),
                                    verdict.atRest().get(worst).seals(),
                                    under.seals(),
                                    load,
                                    job.limits().sealGap(),
                                    figures),
                            List.of()));
        }
    }

    /** Lists what everything bears that holds the panel. */
    private void held(List<Block> blocks) {
        if (HeldBlock.bears(verdict)) {
            List<List<String>> rows =
                    new ArrayList<>(HeldBlock.rows(verdict, figures, 0, verdict.held().size()));
            List<String> head = rows.remove(0);
            blocks.add(
                    new Block.Rows(
                            "What holds it bears",
                            "The panel pulls it out or pushes it in.",
                            head,
                            rows,
                            "numbers",
                            true));
        }
    }

    private Block method() {
        List<String> words = new ArrayList<>();
        words.add(CheckPage.sentence(verdict.method()) + ".");
        Rows.unsettled(verdict.margins(), true).ifPresent(words::add);
        Optional<NumericalError> worst =
                verdict.numericalErrors().stream()
                        .max(Comparator.comparingDouble(NumericalError::error));
        worst.ifPresent(
                error ->
                        words.add(
                                "Of movements, forces and frequency the least settled is "
                                        + error.figure()
                                        + ", within "
                                        + Figures.percent(error.error())
                                        + "."));
        for (int i = 0; i < verdict.movements().size(); i++) {
            Movement movement = verdict.movements().get(i);
            if (movement.total() != 0) {
                words.add(
                        "A second answer, first-order theory, in which skins and foam turn together: under "
                                + Rows.called(movement.loadCase())
                                + " "
                                + figures.fineMovement(why.firstOrder().get(i))
                                + " in place of "
                                + figures.fineMovement(movement.total())
                                + ".");
            }
        }
        words.add(
                "Linear but for the seal, small movement, shallow crown. It knows no impact, fatigue, fire, "
                        + "creep, snapping through or softening in heat, no play in hinges and no frame that gives.");
        return new Block.Words("Method and its limits", words, true, "");
    }

    private Block folds() {
        List<Block.Fold> folds = new ArrayList<>();
        Told told = new Told();
        for (Margin margin : verdict.margins()) {
            if (Double.isFinite(margin.multiplier())) {
                folds.add(
                        new Block.Fold(
                                CheckPage.sentence(figures.words(Rows.words(margin)))
                                        + ": reserve "
                                        + Figures.reserve(margin.reserve()),
                                told.more(why.passages(margin))));
            }
        }
        return new Block.Folds(
                "Why, row by row", "Formula, where it is from, the numbers that went in.", folds);
    }
}
