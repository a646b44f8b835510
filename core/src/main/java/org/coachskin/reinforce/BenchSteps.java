package org.coachskin.reinforce;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.coachskin.bench.Piece;
import org.coachskin.bench.Pieces;
import org.coachskin.material.Foam;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Region;
import org.coachskin.panel.Shape;
import org.coachskin.panel.TurnedEdge;

/** What to do at the bench for a reinforcement, in order, in sizes a tape gives. */
final class BenchSteps {

    private final Panel panel;
    private final Target target;
    private final Measure measure;
    private final List<String> steps = new ArrayList<>();

    private BenchSteps(Panel panel, Target target, Measure measure) {
        this.panel = panel;
        this.target = target;
        this.measure = measure;
    }

    /**
     * Returns the steps.
     *
     * @param panel with the reinforcement
     */
    static List<String> of(Panel panel, Target target, Measure measure) {
        BenchSteps bench = new BenchSteps(panel, target, measure);
        bench.cut();
        Build build = measure.build();
        if (build instanceof Build.Strip strip) {
            bench.strip(strip);
        } else if (build instanceof Build.Insert insert) {
            bench.insert(insert);
        } else if (build instanceof Build.Plies plies) {
            bench.plies(plies);
        } else if (build instanceof Build.InLip more) {
            bench.steps.add(
                    "Lay "
                            + Words.counted(more.count(), more.ply())
                            + " more in the lip, between the outside skin and the inside one.");
        }
        if (measure.turned()) {
            bench.steps.add(
                    "Round the raw edge, turn the inside skin with all its plies over it and "
                            + Words.millimetres(TurnedEdge.OVERLAP)
                            + " onto the outside skin: no bare foam.");
        }
        return bench.steps;
    }

    private void cut() {
        if (!(target instanceof Target.Hole hole)) {
            return;
        }
        Shape shape = panel.opening(hole.name()).shape();
        if (shape instanceof Shape.Rectangle r && r.cornerRadius() > 0) {
            steps.add(
                    "Cut the "
                            + target.name()
                            + ": drill its corners "
                            + Words.millimetres(2 * r.cornerRadius())
                            + " (radius "
                            + Words.millimetres(r.cornerRadius())
                            + "), then join them.");
        } else {
            steps.add(
                    "Cut the "
                            + target.name()
                            + (shape instanceof Shape.Circle
                                    ? "."
                                    : ": drill a hole in every corner first, the saw stops in it."));
        }
    }

    private void strip(Build.Strip strip) {
        double bevel = strip.bevel();
        steps.add(
                (panel.laminate().outsideSkin().isEmpty() ? "" : "Outside skin first. ")
                        + "Inside, foam "
                        + Words.millimetres(strip.thickness())
                        + " thick: "
                        + boards(bevel)
                        + "; bevel the outer "
                        + Words.millimetres(bevel)
                        + " down to nothing. Glue, seal coat, let it go tacky.");
        if (strip.over().isEmpty()) {
            steps.add("Inside skin over panel and strip.");
        } else {
            steps.add(
                    "Inside skin over panel and strip, then "
                            + Words.counted(strip.over().size(), strip.over().get(0))
                            + " more, "
                            + outer(measure.width() + Laying.landing(strip))
                            + ": past the bevel "
                            + Words.millimetres(Laying.landing(strip) - bevel)
                            + ".");
        }
    }

    private void insert(Build.Insert insert) {
        boolean solid = insert.foam().kind() == Foam.Kind.OTHER;
        double depth = panel.laminate().foamThickness();
        boolean inside = !panel.laminate().insideSkin().isEmpty();
        boolean outside = !panel.laminate().outsideSkin().isEmpty();
        steps.add(
                (inside ? "Before the inside skin is laid take the foam out" : "Take the foam out")
                        + (outside ? ", the outside skin stays whole: " : ": ")
                        + boards(0)
                        + ". Glue in "
                        + (solid
                                ? insert.foam().name()
                                : "foam of " + Math.round(insert.foam().density()) + " kg/m^3")
                        + ", "
                        + Words.millimetres(depth)
                        + " thick, flush"
                        + (solid ? ", and fill the gaps with thickened resin." : "."));
        if (inside) {
            steps.add("Inside skin over all.");
        }
    }

    private void plies(Build.Plies plies) {
        for (boolean inside : new boolean[] {false, true}) {
            int count = inside ? plies.inside() : plies.outside();
            if (count == 0) {
                continue;
            }
            List<String> sizes = new ArrayList<>();
            for (int k = 0; k < count; k++) {
                sizes.add(outer(measure.width() - k * Practice.STEP));
            }
            steps.add(
                    "On the "
                            + (inside ? "inside" : "outside")
                            + (panel.laminate().isBare() ? "" : " skin")
                            + ", wet on wet, "
                            + Words.counted(count, plies.ply())
                            + " more: "
                            + String.join(", then ", sizes)
                            + (count == 1
                                    ? "."
                                    : "; each ends "
                                            + Words.millimetres(Practice.STEP)
                                            + " before the one under it."));
        }
    }

    /** Boards that make up the band, and a bevel beyond it. */
    private String boards(double bevel) {
        List<Piece> boards = Pieces.boards(panel, region(measure.width()), bevel);
        if (boards.isEmpty() && region(measure.width()) instanceof Region.Around ring) {
            Piece over = Pieces.around(panel, ring, bevel);
            return "a ring "
                    + Words.millimetres(measure.width() + bevel)
                    + " wide, "
                    + (over.round()
                            ? Words.millimetres(over.one()) + " across"
                            : Words.sizes(over.one(), over.other()) + " over all")
                    + ", in four pieces or more";
        }
        return boards.stream()
                .map(
                        board ->
                                (board.count() == 1 ? "one piece " : board.count() + " strips ")
                                        + Words.sizes(board.one(), board.other()))
                .collect(Collectors.joining(", "));
    }

    /** The outer size of a piece of cloth that reaches so far. */
    private String outer(double width) {
        Piece piece = Pieces.cloth(panel, region(width)).get(0);
        String size = Words.sizes(piece.one(), piece.other());
        if (!(target instanceof Target.Hole hole)) {
            return size;
        }
        return panel.opening(hole.name()).shape() instanceof Shape.Polygon
                ? "a ring " + Words.millimetres(width) + " wide, from a piece " + size
                : (piece.round() ? "round, " + Words.millimetres(piece.one()) + " across," : size)
                        + " with the "
                        + target.name()
                        + " cut out";
    }

    private Region region(double width) {
        return target.region(panel, Practice.rounded(width));
    }
}
