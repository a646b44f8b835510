package org.coachskin.examples;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.coachskin.check.Job;
import org.coachskin.design.Comparison;
import org.coachskin.laminate.Schedule;

/** A light last ply or another heavy one on the luggage lid? */
public final class WhichLastPly {

    private WhichLastPly() {}

    /** Prints mass, felt stiffness and stiffness gained per kilogram of each. */
    public static void main(String[] args) {
        Comparison comparison = comparison();
        for (Comparison.Column column : comparison.columns()) {
            double stiffness = column.verdict().felt().orElseThrow().nominal();
            System.out.printf(
                    "%-16s %5.2f kg  %4.0f N/mm  gained %4.0f N/mm per kg%n",
                    column.name(),
                    column.mass(),
                    stiffness / 1000,
                    comparison.gainPerMass(column) / 1000);
        }
    }

    static Comparison comparison() {
        Job lid = FirstPanel.verdict().job();
        Map<String, Job> jobs = new LinkedHashMap<>();
        jobs.put("as drawn", lid);
        jobs.put("light last ply", lid.withSchedule(withLast("plain glass 160 g/m^2")));
        jobs.put("heavy last ply", lid.withSchedule(withLast("twill glass 300 g/m^2")));
        return Comparison.of(jobs);
    }

    private static Schedule withLast(String cloth) {
        Schedule lid = Workshop.luggageLid();
        List<Schedule.Item> outside = new ArrayList<>(lid.outside());
        outside.addAll(Workshop.plies(1, cloth));
        return lid.withOutside(outside);
    }
}
