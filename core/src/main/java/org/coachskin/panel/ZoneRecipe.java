package org.coachskin.panel;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.coachskin.Require;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.Foam;

/**
 * How a part of a panel is laid otherwise than the rest, as a change of the panel's own schedule;
 * so it follows when that changes.
 *
 * @param name how it is called
 * @param region where it is
 * @param build what is done there
 */
public record ZoneRecipe(String name, Region region, Build build) {

    /** What is done in a zone. */
    public sealed interface Build {}

    /**
     * More plies, laid on those of the panel.
     *
     * @param outside in the order of laying; may be empty
     * @param inside in the order of laying; may be empty
     */
    public record MorePlies(List<Schedule.Item> outside, List<Schedule.Item> inside)
            implements Build {
        /** Copies the lists. */
        public MorePlies {
            outside = List.copyOf(outside);
            inside = List.copyOf(inside);
        }
    }

    /**
     * Other or thicker foam, on the inside; a solid insert is foam with constants of its own.
     *
     * @param foam in place of the panel's; empty to keep it
     * @param thickness of the foam there [m]
     * @param over plies laid on the inside skin there, in the order of laying; may be empty
     */
    public record OtherFoam(Optional<Foam> foam, double thickness, List<Schedule.Item> over)
            implements Build {
        /** Copies the list and checks the thickness. */
        public OtherFoam {
            over = List.copyOf(over);
            Require.positive("foam thickness of a zone", thickness, "m");
        }
    }

    /**
     * A strip of the panel's own foam glued on its inside, under the inside skin.
     *
     * @param more thickness beside that of the panel's foam [m]
     * @param over plies laid on the inside skin there, in the order of laying; may be empty
     * @param slope rise over run of the bevel at its edges [-]
     */
    public record FoamStrip(double more, List<Schedule.Item> over, double slope) implements Build {
        /** Copies the list and checks the numbers. */
        public FoamStrip {
            over = List.copyOf(over);
            Require.positive("thickness of a foam strip", more, "m");
            Require.positive("slope of a bevel", slope, "");
        }

        /** Bevelled as usual. */
        public FoamStrip(double more, List<Schedule.Item> over) {
            this(more, over, Zone.USUAL_SLOPE);
        }
    }

    /**
     * No foam: both skins lie on one another, with more plies between or on them.
     *
     * @param more plies beside those of both skins; may be empty
     * @param flush the surface of the panel that runs on over it
     */
    public record NoFoam(List<Schedule.Item> more, Height flush) implements Build {
        /** Copies the list and refuses mid-height. */
        public NoFoam {
            more = List.copyOf(more);
            if (flush == Height.MIDDLE) {
                throw new IllegalArgumentException(
                        "a lip is flush with the outside or with the inside");
            }
        }
    }

    /**
     * Returns the zone of a panel laid by {@code schedule}.
     *
     * @throws IllegalArgumentException when foam is wanted in a panel that has none
     */
    public Zone zone(Schedule schedule) {
        Laminate stack = laid(schedule).laminate();
        double whole = schedule.laminate().thickness();
        if (build instanceof MorePlies plies) {
            Schedule outer = schedule.withOutside(joined(schedule.outside(), plies.outside()));
            return new Zone(name, region, stack, whole - outer.laminate().thickness());
        }
        if (build instanceof FoamStrip strip) {
            return new Zone(name, region, stack, 0, strip.slope());
        }
        boolean inside = build instanceof NoFoam lip && lip.flush() != Height.OUTSIDE;
        return new Zone(name, region, stack, inside ? whole - stack.thickness() : 0);
    }

    /**
     * Returns what is laid in the zone of a panel laid by {@code schedule}.
     *
     * @throws IllegalArgumentException when foam is wanted in a panel that has none
     */
    public Schedule laid(Schedule schedule) {
        if (build instanceof MorePlies plies) {
            Schedule outer = schedule.withOutside(joined(schedule.outside(), plies.outside()));
            return schedule.board() == null
                    ? outer.withOutside(joined(turned(plies.inside()), outer.outside()))
                    : outer.withInside(joined(schedule.inside(), plies.inside()));
        }
        if (build instanceof OtherFoam other) {
            Schedule.Board board = board(schedule);
            return foamed(
                    schedule,
                    board.withFoam(other.foam().orElse(board.foam()))
                            .withThickness(other.thickness()),
                    other.over());
        }
        if (build instanceof FoamStrip strip) {
            Schedule.Board board = board(schedule);
            return foamed(
                    schedule, board.withThickness(board.thickness() + strip.more()), strip.over());
        }
        NoFoam lip = (NoFoam) build;
        List<Schedule.Item> all = turned(schedule.inside());
        all.addAll(lip.more());
        all.addAll(schedule.outside());
        return schedule.withBoard(null).withInside(List.of()).withOutside(all);
    }

    private Schedule.Board board(Schedule schedule) {
        Schedule.Board board = schedule.board();
        if (board == null) {
            throw new IllegalArgumentException(name + " wants foam in a panel without foam");
        }
        return board;
    }

    private static Schedule foamed(
            Schedule schedule, Schedule.Board board, List<Schedule.Item> over) {
        return schedule.withBoard(board).withInside(joined(schedule.inside(), over));
    }

    private static List<Schedule.Item> turned(List<Schedule.Item> plies) {
        List<Schedule.Item> turned = new ArrayList<>(plies);
        Collections.reverse(turned);
        return turned;
    }

    private static List<Schedule.Item> joined(List<Schedule.Item> first, List<Schedule.Item> then) {
        List<Schedule.Item> all = new ArrayList<>(first);
        all.addAll(then);
        return all;
    }
}
