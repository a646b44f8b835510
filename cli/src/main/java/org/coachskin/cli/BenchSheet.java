package org.coachskin.cli;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.check.Picture;
import org.coachskin.check.Verdict;
import org.coachskin.cli.report.Block;
import org.coachskin.cli.report.ReadingDrawing;
import org.coachskin.cli.report.Sheet;
import org.coachskin.cli.report.StripDrawing;
import org.coachskin.laminate.Schedule;
import org.coachskin.prove.StripTest;

/** The sheets for the bench: what to lay, in order; what should be read before and after. */
final class BenchSheet {

    private final Verdict verdict;
    private final Figures figures;

    BenchSheet(Verdict verdict, Figures figures) {
        this.verdict = verdict;
        this.figures = figures;
    }

    /**
     * Returns the sheets: one to lay by, one to prove it by.
     *
     * @param first what stands above the laying list
     */
    List<Sheet> sheets(List<Block> first, Picture picture) {
        List<Block> lay = new ArrayList<>(first);
        LayingBlocks laying = new LayingBlocks(verdict.job(), figures);
        lay.add(laying.list());
        lay.add(laying.stages());
        List<String> careful = new ArrayList<>(Remarks.cautions(verdict, figures));
        careful.add(Remarks.NO_APPROVAL);
        lay.add(new Block.Words("Careful", careful, true, "careful"));
        List<Block> prove = new ArrayList<>();
        Schedule schedule = verdict.job().schedule();
        strip(StripTest.of(schedule), schedule.board() != null, prove);
        if (!picture.readings().isEmpty()) {
            finished(picture.readings(), prove);
        }
        return List.of(
                new Sheet("lay", "Lay it", "for the bench", lay),
                new Sheet("prove", "Prove it", "for the bench", prove));
    }

    private void strip(StripTest strip, boolean foam, List<Block> blocks) {
        String reading = figures.movement(strip.reading());
        String low = figures.movementNumber(strip.low());
        String high = figures.movementNumber(strip.high());
        blocks.add(
                new Block.Figure(
                        "Before cloth is cut: bend a strip",
                        "It should read "
                                + reading
                                + ", "
                                + low
                                + " to "
                                + high
                                + ". If it reads more than "
                                + high
                                + " "
                                + figures.lengthName()
                                + ", stop: "
                                // More resin makes skins thicker: it reads less.
                                + (foam
                                        ? "less glass or softer foam than planned."
                                        : "less glass or less resin than planned."),
                        StripDrawing.of(
                                figures.size(strip.span()) + " between rests",
                                figures.size(strip.width()),
                                figures.hung(strip.mass()),
                                reading),
                        List.of()));
        List<List<String>> rows = new ArrayList<>();
        for (String which : List.of("first", "second")) {
            rows.add(List.of(which, low + " to " + high, ""));
        }
        blocks.add(
                new Block.Rows(
                        "Strips, " + figures.hung(strip.mass()) + " hung up",
                        "Eight strips of ten read within the range. Read when it has come to rest, and "
                                + "take off what the gauge showed before.",
                        List.of("strip", figures.lengthName(), "read"),
                        rows,
                        "fill",
                        false));
    }

    private void finished(List<Picture.Reading> readings, List<Block> blocks) {
        List<String> weights = readings.stream().map(r -> figures.hung(r.mass())).toList();
        blocks.add(
                new Block.Figure(
                        "The finished panel: load it and read",
                        "Held as on the vehicle, weights on a pad as large as the palm where the palm is "
                                + "drawn, gauge under it. The slope of the line is the felt stiffness; "
                                + "eight panels of ten lie in the band.",
                        ReadingDrawing.of(readings, weights, figures),
                        List.of()));
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < readings.size(); i++) {
            Picture.Reading reading = readings.get(i);
            rows.add(
                    List.of(
                            weights.get(i),
                            figures.movementNumber(reading.movement()),
                            figures.movementNumber(reading.low())
                                    + " to "
                                    + figures.movementNumber(reading.high()),
                            ""));
        }
        blocks.add(
                new Block.Rows(
                        "Readings, " + figures.lengthName(),
                        "",
                        List.of("weight", "expected", "range", "read"),
                        rows,
                        "fill",
                        false));
    }
}
