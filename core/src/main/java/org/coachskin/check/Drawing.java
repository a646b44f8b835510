package org.coachskin.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.coachskin.analysis.Analysis;
import org.coachskin.analysis.CaseResponse;
import org.coachskin.analysis.Field;
import org.coachskin.analysis.Response;
import org.coachskin.failure.Mode;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Panel;

/** Reads off the answers of a solver what is drawn. */
final class Drawing {

    /** Places along a cut. */
    private static final int STEPS = 120;

    private static final double GRAVITY = 9.80665;

    /** Of what the first thing goes at, set on a panel at most [-]. */
    private static final double SAFE = 2.0 / 3;

    private Drawing() {}

    static Picture of(Verdict verdict, List<Double> weights, Analysis solver) {
        Job job = verdict.job();
        List<CaseCheck> cases = PanelCheck.cases(job, solver);
        List<Picture.Moved> moved = new ArrayList<>();
        for (CaseCheck check : cases) {
            moved.add(moved(job.panel(), check));
        }
        return new Picture(moved, through(verdict, cases), readings(verdict, weights, solver));
    }

    private static Picture.Moved moved(Panel panel, CaseCheck check) {
        Response response = check.response();
        Field field = response.movement();
        Field.Node most =
                field.nodes().stream()
                        .max(Comparator.comparingDouble(node -> Math.abs(node.value())))
                        .orElseThrow();
        return new Picture.Moved(
                check.load().name(),
                field,
                most,
                cut(panel, response, panel.width(), at -> new Response.Spot(at, most.y())),
                cut(panel, response, panel.length(), at -> new Response.Spot(most.x(), at)));
    }

    private static List<Picture.Cut> cut(
            Panel panel, Response response, double length, DoubleFunction<Response.Spot> place) {
        List<Picture.Cut> cut = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double at = length * i / STEPS;
            Response.Spot spot = place.apply(at);
            cut.add(
                    new Picture.Cut(
                            at,
                            panel.hasMaterialAt(spot.x(), spot.y())
                                    ? response.deflection(spot.x(), spot.y())
                                    : Double.NaN));
        }
        return cut;
    }

    private static Optional<Through> through(Verdict verdict, List<CaseCheck> cases) {
        for (Margin margin : verdict.margins()) {
            // Round fittings and under patches other things are judged than the layers.
            boolean breaks =
                    margin.mode().question() == Mode.Question.STRONG
                            && margin.mode() != Mode.PUNCHING
                            && margin.mode() != Mode.CRUSHING
                            && Double.isFinite(margin.multiplier());
            for (CaseCheck check : cases) {
                if (breaks && check.load().name().equals(margin.loadCase())) {
                    Optional<Through> through = check.through(margin);
                    if (through.isPresent()) {
                        return through;
                    }
                }
            }
        }
        return Optional.empty();
    }

    private static List<Picture.Reading> readings(
            Verdict verdict, List<Double> weights, Analysis solver) {
        Job job = verdict.job();
        Optional<LoadCase> palm =
                job.felt().filter(load -> load.loads().get(0) instanceof Load.Press);
        if (palm.isEmpty() || verdict.felt().isEmpty()) {
            return List.of();
        }
        Load.Press press = (Load.Press) palm.get().loads().get(0);
        double most = SAFE * breaking(verdict, palm.get().name()) * Math.abs(press.force());
        List<Double> hung = weights.stream().filter(w -> w * GRAVITY <= most).toList();
        List<LoadCase> cases = new ArrayList<>();
        for (double weight : hung) {
            cases.add(
                    palm.get()
                            .withSoftest(false)
                            .withLoads(
                                    List.of(
                                            new Load.Press(
                                                    weight * GRAVITY,
                                                    press.patch(),
                                                    press.x(),
                                                    press.y()))));
        }
        Spread felt = verdict.felt().get();
        List<CaseResponse> answers = solver.loadCases(job.panel(), cases);
        List<Picture.Reading> readings = new ArrayList<>();
        for (int i = 0; i < answers.size(); i++) {
            double movement = answers.get(i).loaded().deflection(press.x(), press.y());
            readings.add(
                    new Picture.Reading(
                            hung.get(i),
                            movement,
                            movement * felt.nominal() / felt.high(),
                            movement * felt.nominal() / felt.low()));
        }
        return readings;
    }

    /** Returns at how many times a load the first thing goes. */
    private static double breaking(Verdict verdict, String load) {
        return verdict.margins().stream()
                .filter(margin -> margin.loadCase().equals(load))
                .filter(margin -> margin.mode().question() != Mode.Question.STIFF)
                .mapToDouble(Margin::multiplier)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }
}
