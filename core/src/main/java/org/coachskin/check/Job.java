package org.coachskin.check;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coachskin.laminate.Compatibility;
import org.coachskin.laminate.Ply;
import org.coachskin.laminate.Schedule;
import org.coachskin.panel.Crown;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Support;
import org.coachskin.panel.ZoneRecipe;

/**
 * One panel to judge: how it is laid, how it is held, what presses on it, what is wanted of it.
 *
 * @param panel the panel, with the stacks that follow from schedule and recipes
 * @param schedule what is laid
 * @param recipes where it is laid otherwise
 * @param loads at least one load case
 * @param limits what is wanted
 */
public record Job(
        Panel panel,
        Schedule schedule,
        List<ZoneRecipe> recipes,
        List<LoadCase> loads,
        Limits limits) {

    /** Copies the lists; checks that there is a load and that foam and resin go together. */
    public Job {
        loads = List.copyOf(loads);
        recipes = List.copyOf(recipes);
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
     * Returns the job of a rectangular panel laid by {@code schedule} everywhere.
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
        return of(
                new Panel(name, width, length, crown, schedule.laminate(), support),
                schedule,
                List.of(),
                loads,
                limits);
    }

    /**
     * Returns the job of a panel of any outline.
     *
     * @param panel outline, crown, openings and support; its stack and zones are made anew
     */
    public static Job of(
            Panel panel,
            Schedule schedule,
            List<ZoneRecipe> recipes,
            List<LoadCase> loads,
            Limits limits) {
        return new Job(laid(panel, schedule, recipes), schedule, recipes, loads, limits);
    }

    private static Panel laid(Panel panel, Schedule schedule, List<ZoneRecipe> recipes) {
        return panel.withLaminate(schedule.laminate())
                .withZones(recipes.stream().map(recipe -> recipe.zone(schedule)).toList());
    }

    /** Returns the load that asks how stiff the panel feels; empty where none does. */
    public Optional<LoadCase> felt() {
        return loads.stream().filter(load -> load.kind() == LoadCase.Kind.FELT).findFirst();
    }

    /** Returns how much dry cloth lies in each ply of cloth, those of zones among them [kg/m^2]. */
    public Map<Ply, Double> cloth() {
        Map<Ply, Double> cloth = new LinkedHashMap<>(schedule.cloth());
        recipes.forEach(recipe -> cloth.putAll(recipe.laid(schedule).cloth()));
        return cloth;
    }

    /** Returns this job laid by another schedule. */
    public Job withSchedule(Schedule other) {
        return of(panel, other, recipes, loads, limits);
    }

    /** Returns this job with the panel held otherwise. */
    public Job withSupport(Support other) {
        return new Job(panel.withSupport(other), schedule, recipes, loads, limits);
    }

    /** Returns this job with another panel, whose stacks stay as they are. */
    Job withPanel(Panel other) {
        return new Job(other, schedule, recipes, loads, limits);
    }

    /** Returns this job with other loads. */
    public Job withLoads(List<LoadCase> other) {
        return new Job(panel, schedule, recipes, other, limits);
    }

    /** Returns this job with its loads where they are, even those whose place is looked for. */
    public Job withLoadsPlaced() {
        return withLoads(loads.stream().map(load -> load.withSoftest(false)).toList());
    }

    /** Returns this job with other limits. */
    public Job withLimits(Limits other) {
        return new Job(panel, schedule, recipes, loads, other);
    }
}
