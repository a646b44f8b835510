package org.coachskin.check;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.laminate.Compatibility;

/** What has to be said beside an answer. */
final class Cautions {

    private Cautions() {}

    static List<String> of(Job job, List<Movement> movements) {
        List<String> cautions = new ArrayList<>();
        if (job.panel().rimCarried()) {
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
        RawEdges.caution(job.panel()).ifPresent(cautions::add);
        Compatibility.of(job.schedule()).forEach(finding -> cautions.add(finding.toString()));
        return cautions;
    }
}
