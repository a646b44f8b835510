package org.coachskin.check;

import java.util.List;
import org.coachskin.laminate.Compatibility;
import org.coachskin.laminate.Schedule;
import org.coachskin.panel.Crown;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Support;

/**
 * One panel to judge: how it is laid, how it is held, what presses on it, what is wanted of it.
 *
 * @param panel the panel, with the stack that follows from the schedule
 * @param schedule what is laid
 * @param loads at least one load case
 * @param limits what is wanted
 */
public record Job(Panel panel, Schedule schedule, List<LoadCase> loads, Limits limits) {

    /** Copies the loads; checks that there is one and that foam and resin go together. */
    public Job {
        loads = List.copyOf(loads);
        if (loads.isEmpty()) {
            throw new IllegalArgumentException(panel.name() + " has no load to be judged by");
        }
        Compatibility.of(schedule).stream()
                .filter(finding -> finding.severity() == Compatibility.Severity.REFUSED)
                .findFirst()
                .ifPresent(
                        finding -> {
                            throw new IllegalArgumentException(
                                    panel.name() + " cannot be laid so: " + finding.reason());
                        });
    }

    /**
     * Returns the job of a panel laid by {@code schedule}.
     *
     * @param name how the panel is called
     * @param width left to right [m]
     * @param length front to rear [m]
     */
    public static Job of(
            String name,
            double width,
            double length,
            Crown crown,
            Support support,
            Schedule schedule,
            List<LoadCase> loads,
            Limits limits) {
        return new Job(
                new Panel(name, width, length, crown, schedule.laminate(), support),
                schedule,
                loads,
                limits);
    }

    /** Returns this job laid by another schedule. */
    public Job withSchedule(Schedule other) {
        return new Job(panel.withLaminate(other.laminate()), other, loads, limits);
    }
}
