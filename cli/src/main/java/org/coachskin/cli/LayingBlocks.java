package org.coachskin.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.coachskin.bench.LayingList;
import org.coachskin.bench.Piece;
import org.coachskin.bench.Pieces;
import org.coachskin.bench.Step;
import org.coachskin.bench.Weight;
import org.coachskin.check.Job;
import org.coachskin.cli.report.Block;
import org.coachskin.cli.report.Typing;
import org.coachskin.laminate.Schedule;
import org.coachskin.panel.Height;
import org.coachskin.panel.Region;
import org.coachskin.panel.Shape;
import org.coachskin.panel.TurnedEdge;

/** What to cut and lay, in order, to tick off, and what is mixed for it. */
final class LayingBlocks {

    private static final List<String> HEAD =
            List.of("done", "ply", "what", "cut", "cloth", "resin");

    private final Job job;
    private final LayingList list;
    private final Figures figures;
    private final ZoneWords zones;

    LayingBlocks(Job job, Figures figures) {
        this.job = job;
        this.figures = figures;
        list = LayingList.of(job);
        zones = new ZoneWords(figures);
    }

    /** Returns the list. */
    Block list() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(row("", "Lay and bend a strip: next sheet.", "", Weight.NONE));
        Schedule.Board board = job.schedule().board();
        if (board != null) {
            double x = job.panel().width();
            double y = job.panel().length();
            rows.add(
                    row(
                            "",
                            CheckPage.sentence(zones.foam(board.foam()))
                                    + ", "
                                    + figures.size(board.thickness())
                                    + " thick when shaped and sanded",
                            cut(List.of(new Piece(1, x, y))),
                            Weight.NONE));
        }
        for (LayingList.Stage stage : list.stages()) {
            if (!stage.equals(list.stages().get(0))) {
                rows.add(row("", "Let it cure, turn it over.", "", Weight.NONE));
            }
            stage.steps().forEach(step -> rows.add(row(step)));
        }
        Weight all = list.weight();
        rows.add(
                List.of(
                        "sum",
                        "",
                        "what stays in the part, foam aside",
                        "",
                        figures.weighed(all.cloth()),
                        figures.weighed(all.resin())));
        return new Block.Rows(
                "Laying list",
                "Numbered plies are cut "
                        + figures.size(Pieces.TRIM)
                        + " larger than the panel on every side, to be trimmed when cured [common "
                        + "practice, no source]. Pieces with a letter, that of the plan, are as large "
                        + "as they stay: leave as much where they come to an edge or an opening. "
                        + "Weights stay in the part: what is trimmed off, resin left in pot and brush, "
                        + "and glue come on top.",
                HEAD,
                rows,
                "tick laying",
                true);
    }

    /** Returns what is mixed for each stage, with boxes for what is known at the bench. */
    Block stages() {
        List<List<String>> rows = new ArrayList<>();
        for (LayingList.Stage stage : list.stages()) {
            double resin = stage.weight().resin();
            rows.add(
                    List.of(
                            stage.skin().name().toLowerCase(Locale.ROOT),
                            resin > 0 ? figures.weighed(resin) : "-",
                            "",
                            "",
                            ""));
        }
        return new Block.Rows(
                "Mixed for each side",
                "The data sheet of your resin says how long a pot can be worked and when it can be "
                        + "trimmed; write the times in here.",
                List.of("side", "resin", "mixed at", "laid by", "trim at"),
                rows,
                "fill stages",
                true);
    }

    private List<String> row(String ply, String what, String cut, Weight weight) {
        return List.of("", ply, what, cut, weighed(weight.cloth()), weighed(weight.resin()));
    }

    private String weighed(double kilograms) {
        return kilograms > 0 ? figures.weighed(kilograms) : "";
    }

    private List<String> row(Step step) {
        if (step instanceof Step.Ply ply) {
            return row(
                    "" + ply.number(),
                    zones.ply(ply.item()),
                    cut(List.of(ply.cut())),
                    ply.weight());
        }
        if (step instanceof Step.ZonePly ply) {
            return row(
                    ZoneWords.letter(ply.zone()),
                    zones.ply(ply.item())
                            + ", "
                            + where(ply.zone())
                            + (ply.between() ? ", between the skins" : "")
                            + without(ply.without()),
                    ring(ply.zone())
                            .map(ring -> ring(ring, ply.cut().get(0)))
                            .orElseGet(() -> cut(ply.cut())),
                    ply.weight());
        }
        if (step instanceof Step.Strip strip) {
            return row(
                    ZoneWords.letter(strip.zone()),
                    "Foam strip "
                            + figures.size(strip.thickness())
                            + " thick, "
                            + where(strip.zone())
                            + ": bevel the "
                            + figures.size(strip.bevel())
                            + " beyond that down to nothing, glue on"
                            + without(strip.without())
                            + ".",
                    boards(strip.zone(), strip.bevel(), strip.cut()),
                    Weight.NONE);
        }
        if (step instanceof Step.Insert insert) {
            return row(
                    ZoneWords.letter(insert.zone()),
                    "Take the foam out "
                            + where(insert.zone())
                            + without(insert.without())
                            + ", glue in "
                            + insert.foam().map(zones::foam).orElse("foam")
                            + " "
                            + figures.size(insert.thickness())
                            + " thick.",
                    boards(insert.zone(), 0, insert.cut()),
                    Weight.NONE);
        }
        if (step instanceof Step.NoFoam lip) {
            return row(
                    ZoneWords.letter(lip.zone()),
                    "Take the foam out " + where(lip.zone()) + ", down to the skin.",
                    "",
                    Weight.NONE);
        }
        if (step instanceof Step.Hem hem) {
            return row("", turned(hem), "leave " + figures.size(hem.over()) + " on", hem.weight());
        }
        return row("", "Seal the foam with resin.", "", step.weight());
    }

    private String where(int zone) {
        return zones.where(job.recipes().get(zone).region());
    }

    private static String without(List<Integer> zones) {
        return zones.isEmpty()
                ? ""
                : ", but not in "
                        + zones.stream()
                                .map(ZoneWords::letter)
                                .collect(Collectors.joining(" and "));
    }

    private Optional<Region.Around> ring(int zone) {
        return job.recipes().get(zone).region() instanceof Region.Around ring
                ? Optional.of(ring)
                : Optional.empty();
    }

    /** Cloth round an opening: of a shape that is no disc and no rectangle what it makes. */
    private String ring(Region.Around ring, Piece piece) {
        String cut = cut(piece);
        return job.panel().opening(ring.opening()).shape() instanceof Shape.Polygon
                ? "a ring " + figures.size(ring.width()) + " wide, from a piece " + cut
                : cut + ", " + ring.opening() + " cut out";
    }

    private String boards(int zone, double bevel, List<Piece> boards) {
        // Only a ring is not straight.
        return boards.isEmpty()
                ? ring(zone).map(ring -> foamRing(ring, bevel)).orElse("")
                : cut(boards);
    }

    private String foamRing(Region.Around ring, double bevel) {
        Piece over = Pieces.around(job.panel(), ring, bevel);
        return "a ring "
                + figures.size(ring.width() + bevel)
                + " wide, "
                + (over.round()
                        ? figures.size(over.one()) + " across"
                        : figures.sizes(over.one(), over.other()) + " over all")
                + ", in four pieces or more";
    }

    private String cut(List<Piece> pieces) {
        return pieces.stream().map(this::cut).collect(Collectors.joining(", "));
    }

    /** One size, which is not broken between two lines. */
    private String cut(Piece piece) {
        if (piece.round()) {
            return Typing.whole("round, " + figures.size(piece.one()) + " across");
        }
        String count = piece.count() == 1 ? "" : piece.count() + " of ";
        return Typing.whole(count + figures.sizes(piece.one(), piece.other()));
    }

    private String turned(Step.Hem hem) {
        TurnedEdge edge = hem.edge();
        boolean inside = edge.skin() == Height.INSIDE;
        String where =
                edge instanceof TurnedEdge.Round round
                        ? "of the " + round.opening()
                        : "along the " + ((TurnedEdge.Along) edge).edge().words();
        return "Turn the "
                + (inside ? "inside" : "outside")
                + " skin round the raw foam "
                + where
                + " and "
                + figures.size(TurnedEdge.OVERLAP)
                + " onto the "
                + (inside ? "outside" : "inside")
                + " skin.";
    }
}
