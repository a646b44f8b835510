package org.coachskin.design;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.coachskin.TestFittings;
import org.coachskin.TestSchedules;
import org.coachskin.analysis.Held;
import org.coachskin.check.Answer;
import org.coachskin.check.Job;
import org.coachskin.check.Limits;
import org.coachskin.check.Margin;
import org.coachskin.check.Movement;
import org.coachskin.check.Place;
import org.coachskin.check.Verdict;
import org.coachskin.failure.Mode;
import org.coachskin.laminate.Schedule;
import org.coachskin.panel.Crown;
import org.coachskin.panel.EverydayLoads;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Shape;
import org.coachskin.panel.Support;

/** A lid of 900 x 600 mm on two hinges in front, a latch in the rear and a rubber seal. */
final class FittingLid {

    static final LoadCase WIND = EverydayLoads.wind(110 / 3.6, 0.6);

    static final LoadCase PALM = EverydayLoads.named("palm").orElseThrow().at(0.45, 0.3);

    private FittingLid() {}

    static List<Fitting> fittings() {
        return TestFittings.hinged(0.9, 0.6, 0.02);
    }

    static Job job(double foam, double cornerRadius, List<Fitting> fittings, LoadCase... loads) {
        Schedule schedule = TestSchedules.sandwich(2, foam, 1);
        Panel panel =
                new Panel(
                        "lid",
                        0.9,
                        0.6,
                        Crown.FLAT,
                        schedule.laminate(),
                        new Support.Fittings(fittings),
                        new Shape.Rectangle(0.9, 0.6, cornerRadius),
                        List.of(),
                        List.of());
        return Job.of(panel, schedule, List.of(), List.of(loads), Limits.STANDARD);
    }

    /** Returns a margin of half of what is wanted at a place. */
    static Margin half(Mode mode, String load, double x, double y) {
        return new Margin(
                mode, load, false, new Place("there", x, y, 0), 2, 1, 0.5, List.of(), 0, 0, "");
    }

    /**
     * Returns a verdict made up of these margins alone; a fifth of each movement is the seal's, and
     * nothing pulls at rest.
     */
    static Verdict verdict(Job job, Margin... margins) {
        List<Movement> movements = new ArrayList<>();
        for (LoadCase load : job.loads()) {
            movements.add(
                    new Movement(
                            load.name(),
                            250,
                            0.01,
                            0.005,
                            0.003,
                            0.002,
                            0,
                            new Place("", 0, 0, 0)));
        }
        List<Held> none = Collections.nCopies(job.loads().size(), Held.NONE);
        return new Verdict(
                job,
                Answer.NO,
                Answer.NO,
                Answer.YES,
                List.of(margins),
                movements,
                Optional.empty(),
                30,
                7,
                1.7,
                none,
                none,
                List.of(),
                List.of(),
                "made up");
    }
}
