package org.coachskin.check;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.analysis.CaseResponse;
import org.coachskin.analysis.Held;
import org.coachskin.laminate.Compatibility;
import org.coachskin.panel.LoadCase;

/** What has to be said beside an answer. */
final class Cautions {

    private Cautions() {}

    /**
     * @param cases what each load does
     */
    static List<String> of(Job job, List<Movement> movements, List<CaseCheck> cases) {
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
        List<String> lines =
                job.loads().stream().filter(LoadCase::isAlongLine).map(LoadCase::name).toList();
        if (!lines.isEmpty()) {
            cautions.add(
                    "What presses along a line ("
                            + String.join(", ", lines)
                            + ") has no width there: marks, dents and crushed foam right under it are not "
                            + "worked out. Press a patch as wide as it is to see them.");
        }
        RawEdges.caution(job.panel()).ifPresent(cautions::add);
        cautions.addAll(BevelRoom.cautions(job.panel()));
        List<String> beyond =
                cases.stream()
                        .filter(check -> isBeyondProportion(check.answer()))
                        .map(check -> "the " + check.load().name())
                        .toList();
        if (!beyond.isEmpty()) {
            cautions.add(
                    "Under "
                            + listed(beyond)
                            + " the rubber seal lets go or goes solid in places. Movements, gaps and forces "
                            + "are right for that load; how many times it is borne is only a rough figure.");
        }
        Compatibility.of(job.schedule()).forEach(finding -> cautions.add(finding.toString()));
        return cautions;
    }

    private static String listed(List<String> words) {
        int last = words.size() - 1;
        return last == 0
                ? words.get(0)
                : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }

    /** Returns whether a load changes where a seal touches or is solid. */
    private static boolean isBeyondProportion(CaseResponse answer) {
        List<Held.SealPlace> rest = answer.atRest().seals();
        List<Held.SealPlace> under = answer.held().seals();
        for (int i = 0; i < rest.size(); i++) {
            boolean lets = rest.get(i).squeeze() < 0 != under.get(i).squeeze() < 0;
            if (lets || rest.get(i).solid() != under.get(i).solid()) {
                return true;
            }
        }
        return false;
    }
}
