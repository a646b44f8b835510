package org.coachskin.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.coachskin.analysis.Held;
import org.coachskin.analysis.Owed;
import org.coachskin.analysis.Response;
import org.coachskin.failure.Mode;
import org.coachskin.laminate.PrimaryInput;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Panel;

/** How far a panel moves under its loads: against what limit, where from, with what scatter. */
final class Moving {

    /** Steps uphill to where a load moves a panel most, as a share of its shorter side. */
    private static final double FIRST_STEP = 0.05;

    /** And the smallest, for at a rim it moves on as steeply as it can [m]. */
    private static final double LAST_STEP = 1e-5;

    private Moving() {}

    /** Returns every limit on movement under one load case. */
    static List<Margin> margins(Job job, CaseCheck check) {
        return Stream.concat(stiffness(job, check).stream(), gap(job, check).stream()).toList();
    }

    /** Returns how far a load case moves the panel at a place [m]. */
    static double movement(CaseCheck check, Place at) {
        return check.response().deflection(at.x(), at.y()) + check.sinking();
    }

    /** Returns the felt stiffness under a palm, or the sag under a load that is spread. */
    private static Optional<Margin> stiffness(Job job, CaseCheck check) {
        LoadCase load = check.load();
        Place at = at(job, check);
        double total = movement(check, at);
        if (load.kind() == LoadCase.Kind.FELT) {
            double k = check.force() / total;
            double wanted = job.limits().feltStiffness();
            double softer = check.giveAtBevels() / total;
            double error = check.deflectionError();
            return Optional.of(
                    new Margin(
                            Mode.FELT_STIFFNESS,
                            load.name(),
                            false,
                            at,
                            k,
                            wanted,
                            k / wanted,
                            List.of(),
                            Math.max(error, softer),
                            0,
                            softer > error
                                    ? "up to "
                                            + Math.round(100 * softer)
                                            + " % softer, as the bevels of strips give"
                                    : ""));
        }
        if (load.kind() == LoadCase.Kind.SPREAD) {
            double allowed =
                    job.limits().spanShare() * Math.min(job.panel().width(), job.panel().length());
            double sag = Math.abs(total);
            return Optional.of(
                    new Margin(
                            Mode.SAG,
                            load.name(),
                            false,
                            at,
                            sag,
                            allowed,
                            allowed / sag,
                            List.of(),
                            check.deflectionError(),
                            0,
                            ""));
        }
        return Optional.empty();
    }

    private static Optional<Margin> gap(Job job, CaseCheck check) {
        return check.answer().held().seals().stream()
                .min(Comparator.comparingDouble(Held.SealPlace::squeeze))
                .filter(place -> place.squeeze() < 0)
                .map(
                        place -> {
                            double gap = Math.max(0, -place.squeeze());
                            double allowed = job.limits().sealGap();
                            String words = Surroundings.atRim(job.panel(), place.x(), place.y());
                            return new Margin(
                                    Mode.SEAL_GAP,
                                    check.load().name(),
                                    false,
                                    new Place(words, place.x(), place.y(), 0),
                                    gap,
                                    allowed,
                                    allowed / gap,
                                    List.of(),
                                    MethodError.AWAY.deflection(),
                                    0,
                                    "");
                        });
    }

    /** Where a load moves the panel: under it, or where a load that is spread moves it most. */
    static Place at(Job job, CaseCheck check) {
        LoadCase load = check.load();
        for (Load part : load.loads()) {
            if (part instanceof Load.Press press) {
                String words = "under the " + load.name();
                String where = load.softest() ? ", " + Surroundings.tape(press.x(), press.y()) : "";
                return new Place(words + where, press.x(), press.y(), 0);
            }
        }
        Response.Spot most =
                check.response().spots().stream()
                        .max(Comparator.comparingDouble(spot -> moved(check, spot)))
                        .map(spot -> climb(job.panel(), check, spot))
                        .orElse(null);
        return most == null
                ? new Place("in the middle", job.panel().width() / 2, job.panel().length() / 2, 0)
                : new Place(
                        Surroundings.atRim(job.panel(), most.x(), most.y()), most.x(), most.y(), 0);
    }

    private static double moved(CaseCheck check, Response.Spot at) {
        return Math.abs(check.response().deflection(at.x(), at.y()));
    }

    /** Steps from a place uphill, with ever smaller steps, until it moves nowhere more. */
    private static Response.Spot climb(Panel panel, CaseCheck check, Response.Spot from) {
        Response.Spot best = from;
        double most = moved(check, from);
        double step = FIRST_STEP * Math.min(panel.width(), panel.length());
        while (step > LAST_STEP) {
            Response.Spot before = best;
            boolean higher = false;
            for (int k = 0; k < 8; k++) {
                double angle = k * Math.PI / 4;
                double x = before.x() + step * StrictMath.cos(angle);
                double y = before.y() + step * StrictMath.sin(angle);
                if (panel.hasMaterialAt(x, y)) {
                    Response.Spot next = new Response.Spot(x, y);
                    double there = moved(check, next);
                    if (there > most) {
                        best = next;
                        most = there;
                        higher = true;
                    }
                }
            }
            step = higher ? step : step / 2;
        }
        return best;
    }

    /** Returns where the movement of each load comes from. */
    static List<Movement> movements(Job job, List<CaseCheck> cases) {
        List<Movement> movements = new ArrayList<>();
        for (CaseCheck check : cases) {
            Place at = at(job, check);
            Owed owed = check.response().owed(at.x(), at.y());
            double dent = check.sinking();
            movements.add(
                    new Movement(
                            check.load().name(),
                            check.force(),
                            owed.skins() + owed.foam() + owed.seals() + dent,
                            owed.skins(),
                            owed.foam(),
                            owed.seals(),
                            dent,
                            at));
        }
        return movements;
    }

    /**
     * Scatter of the felt stiffness; the dent's own scatter is left out, it is a small part of the
     * movement.
     */
    static Spread spread(Job job, CaseCheck check, Movement movement) {
        List<PrimaryInput> inputs =
                Arrays.stream(PrimaryInput.values())
                        .filter(input -> input != PrimaryInput.STRENGTHS)
                        .toList();
        List<Panel> moved =
                inputs.stream()
                        .map(input -> job.withSchedule(job.schedule().moved(input, 1)).panel())
                        .toList();
        Place at = at(job, check);
        List<Double> layered = check.response().nearby(moved, at.x(), at.y());
        Map<PrimaryInput, Double> changes = new EnumMap<>(PrimaryInput.class);
        double nominal = movement.stiffness();
        for (int i = 0; i < layered.size(); i++) {
            double there = movement.force() / (layered.get(i) + movement.dent());
            changes.put(inputs.get(i), there - nominal);
        }
        return Spread.of(nominal, changes);
    }
}
