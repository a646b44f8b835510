package org.coachskin;

import java.util.Collections;
import org.coachskin.laminate.LayUp;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.Foam;
import org.coachskin.material.MaterialLibrary;

/** What many tests lay: twill glass 300 g/m^2 and epoxy on polyurethane of 64 kg/m^3. */
public final class TestSchedules {

    public static final MaterialLibrary TABLES = MaterialLibrary.standard();

    private TestSchedules() {}

    /** {@code outside} plies, foam of a thickness, {@code inside} plies. */
    public static Schedule sandwich(int outside, double thickness, int inside) {
        Schedule.Item ply =
                new Schedule.Wet(TABLES.cloth("twill glass 300 g/m^2").orElseThrow(), 0);
        Foam foam = TABLES.foam(Foam.Kind.POLYURETHANE, 64).orElseThrow();
        return new Schedule(
                Collections.nCopies(outside, ply),
                Collections.nCopies(inside, ply),
                new Schedule.Board(foam, thickness, 0.7e-3),
                TABLES.resin("epoxy").orElseThrow(),
                LayUp.USUAL,
                Schedule.SealCoatMass.USUAL,
                false);
    }
}
