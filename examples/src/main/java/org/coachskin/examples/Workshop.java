package org.coachskin.examples;

import java.util.Collections;
import java.util.List;
import org.coachskin.laminate.LayUp;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.Foam;
import org.coachskin.material.MaterialLibrary;

/** What stands on the workshop's shelf, and the lid that is laid from it. */
final class Workshop {

    static final MaterialLibrary TABLES = MaterialLibrary.standard();

    private Workshop() {}

    /** Returns plies of one cloth, square to the edges. */
    static List<Schedule.Item> plies(int count, String cloth) {
        return Collections.nCopies(count, new Schedule.Wet(TABLES.cloth(cloth).orElseThrow(), 0));
    }

    /** Returns two plies of 300 g twill outside and one inside on 12 mm of urethane foam. */
    static Schedule luggageLid() {
        Foam foam = TABLES.foam(Foam.Kind.POLYURETHANE, 64).orElseThrow();
        return new Schedule(
                plies(2, "twill glass 300 g/m^2"),
                plies(1, "twill glass 300 g/m^2"),
                new Schedule.Board(foam, 0.012, Schedule.Board.USUAL_SPREAD),
                TABLES.resin("epoxy").orElseThrow(),
                LayUp.USUAL,
                Schedule.SealCoatMass.USUAL,
                false);
    }
}
