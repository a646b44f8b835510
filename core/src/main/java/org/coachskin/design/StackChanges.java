package org.coachskin.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.Cloth;
import org.coachskin.material.Foam;
import org.coachskin.material.FoamLaw;
import org.coachskin.material.MaterialLibrary;
import org.coachskin.material.Weave;

/** Single changes of what is laid. */
final class StackChanges {

    private static final double MOST_FOAM = 0.013;

    private final MaterialLibrary library;

    StackChanges(MaterialLibrary library) {
        this.library = library;
    }

    /** Returns what could cure a panel: words and stack. */
    Map<String, Schedule> stronger(Schedule schedule) {
        Map<String, Schedule> found = new LinkedHashMap<>();
        for (Cloth cloth : cloths(schedule)) {
            Schedule.Wet ply = new Schedule.Wet(cloth, 0);
            if (!schedule.inside().isEmpty()) {
                putInside(found, schedule, ply);
            }
            putOutside(found, schedule, ply, " outside");
        }
        Schedule.Board board = schedule.board();
        if (board != null) {
            MaterialLibrary.soldThicknesses().stream()
                    .filter(thickness -> thickness > board.thickness() + 1e-6)
                    .filter(thickness -> thickness < board.thickness() + MOST_FOAM + 1e-6)
                    .forEach(thickness -> putThickness(found, schedule, board, thickness));
            putDenser(found, schedule, board);
        }
        return found;
    }

    /** Returns what could be left out. */
    Map<String, Schedule> lighter(Schedule schedule) {
        Map<String, Schedule> found = new LinkedHashMap<>();
        if (schedule.outside().size() > 1) {
            found.put("one ply fewer outside", schedule.withOutside(less(schedule.outside())));
        }
        if (schedule.inside().size() > 1) {
            found.put("one ply fewer inside", schedule.withInside(less(schedule.inside())));
        }
        Schedule.Board board = schedule.board();
        if (board != null) {
            MaterialLibrary.soldThicknesses().stream()
                    .filter(thickness -> thickness < board.thickness() - 1e-6)
                    .max(Comparator.naturalOrder())
                    .ifPresent(thickness -> putThickness(found, schedule, board, thickness));
            MaterialLibrary.soldDensities(board.foam().kind()).stream()
                    .filter(density -> density < board.foam().density() * 0.98)
                    .max(Comparator.naturalOrder())
                    .ifPresent(density -> putDensity(found, schedule, board, density));
        }
        return found;
    }

    static void putInside(Map<String, Schedule> found, Schedule schedule, Schedule.Wet ply) {
        found.put(
                "one more " + grams(ply.cloth()) + " ply inside",
                schedule.withInside(plus(schedule.inside(), ply)));
    }

    /** Puts one more ply outside, or where there is no inside, {@code where} in words. */
    static void putOutside(
            Map<String, Schedule> found, Schedule schedule, Schedule.Wet ply, String where) {
        found.put(
                "one more " + grams(ply.cloth()) + " ply" + where,
                schedule.withOutside(plus(schedule.outside(), ply)));
    }

    private static void putThickness(
            Map<String, Schedule> found,
            Schedule schedule,
            Schedule.Board board,
            double thickness) {
        found.put(
                "foam " + millimetres(thickness) + " instead of " + millimetres(board.thickness()),
                schedule.withBoard(board.withThickness(thickness)));
    }

    /** Puts the next density that is sold, if there is one. */
    void putDenser(Map<String, Schedule> found, Schedule schedule, Schedule.Board board) {
        MaterialLibrary.soldDenser(board.foam()).stream()
                .findFirst()
                .ifPresent(density -> putDensity(found, schedule, board, density));
    }

    private void putDensity(
            Map<String, Schedule> found, Schedule schedule, Schedule.Board board, double density) {
        found.put(
                "foam "
                        + Math.round(density)
                        + " kg/m^3 instead of "
                        + Math.round(board.foam().density()),
                withDensity(schedule, board, density));
    }

    private Schedule withDensity(Schedule schedule, Schedule.Board board, double density) {
        // A foam of the tables goes by the tables, so that a later check of that density says the
        // same.
        Foam own = board.foam();
        Foam foam =
                library.foam(own.kind(), own.density())
                        .filter(table -> table.equals(own.withName(table.name())))
                        .flatMap(table -> library.foam(own.kind(), density))
                        .orElse(FoamLaw.atDensity(own, density));
        return schedule.withBoard(board.withFoam(foam));
    }

    /** Cloths of the file, heaviest last, and the lightest usual one of the table. */
    private List<Cloth> cloths(Schedule schedule) {
        Map<String, Cloth> cloths = new LinkedHashMap<>();
        for (List<Schedule.Item> skin : List.of(schedule.outside(), schedule.inside())) {
            for (Schedule.Item item : skin) {
                if (item instanceof Schedule.Wet wet) {
                    cloths.put(wet.cloth().name(), wet.cloth());
                }
            }
        }
        library.cloths().stream()
                .filter(cloth -> cloth.weave() != Weave.MAT && cloth.arealMass() >= 0.15)
                .min(Comparator.comparingDouble(Cloth::arealMass))
                .ifPresent(cloth -> cloths.put(cloth.name(), cloth));
        return cloths.values().stream()
                .sorted(Comparator.comparingDouble(Cloth::arealMass))
                .toList();
    }

    private static List<Schedule.Item> plus(List<Schedule.Item> skin, Schedule.Item ply) {
        List<Schedule.Item> more = new ArrayList<>(skin);
        more.add(ply);
        return more;
    }

    private static List<Schedule.Item> less(List<Schedule.Item> skin) {
        return skin.subList(0, skin.size() - 1);
    }

    private static String grams(Cloth cloth) {
        return Math.round(1000 * cloth.arealMass()) + " g";
    }

    private static String millimetres(double thickness) {
        double mm = 1000 * thickness;
        return (Math.abs(mm - Math.rint(mm)) < 0.05
                        ? String.format(Locale.ROOT, "%.0f", mm)
                        : String.format(Locale.ROOT, "%.1f", mm))
                + " mm";
    }
}
