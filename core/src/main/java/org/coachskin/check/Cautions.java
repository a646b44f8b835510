package org.coachskin.check;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.Foam;
import org.coachskin.panel.Support;

/** What has to be said beside an answer. */
final class Cautions {

    /**
     * A seal coat above this sits under the cloth as a brittle layer [kg/m^2] [common practice, no
     * source].
     */
    private static final double HEAVY_COAT = 0.6;

    private Cautions() {}

    static List<String> of(Job job, List<Movement> movements) {
        List<String> cautions = new ArrayList<>();
        if (job.panel().support() instanceof Support.WholeRim) {
            cautions.add(
                    "Counted as carried along its whole rim. On hinges, a latch and a rubber seal it will be clearly "
                            + "softer, 1.4 to 1.6 times or more; do not build to this answer alone.");
        }
        double thickness = job.panel().laminate().thickness();
        for (Movement movement : movements) {
            if (Math.abs(movement.total()) > thickness) {
                cautions.add(
                        "Under the "
                                + movement.loadCase()
                                + " it moves further than it is thick: outside what this "
                                + "calculation holds for (small movement). In truth it stiffens as it goes in.");
            }
        }
        Schedule schedule = job.schedule();
        if (Math.max(schedule.sealCoat().outside(), schedule.sealCoat().inside()) > HEAVY_COAT) {
            cautions.add(
                    "The seal coat is heavy: a thick brittle layer of resin under the cloth cracks first. Wipe it down "
                            + "or fill the pores with a light slurry.");
        }
        Schedule.Board board = schedule.board();
        if (board != null && board.foam().kind() == Foam.Kind.POLYISOCYANURATE) {
            cautions.add(
                    "Isocyanurate board is friable: the skin can come off with a layer of crumbs under bending or "
                            + "vibration. Pull a test disc before you trust the bond.");
        }
        return cautions;
    }
}
