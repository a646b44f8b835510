package org.coachskin.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.coachskin.check.Job;
import org.coachskin.check.PanelCheck;
import org.coachskin.check.Verdict;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.Cloth;
import org.coachskin.material.Foam;
import org.coachskin.material.FoamLaw;
import org.coachskin.material.MaterialLibrary;
import org.coachskin.material.Weave;

/**
 * What would cure a panel that does not hold, or what could be left out of one that does: single
 * changes, each judged by every limit.
 *
 * <p>Tried to cure: one more of each cloth already in the file and of the lightest cloth of the
 * table, inside and outside; the next sold foam thicknesses up to 13 mm more; the next sold
 * density. Tried to leave out: one ply of each skin, the next thinner foam, the next lighter foam.
 */
public final class Cures {

    private static final double MOST_FOAM = 0.013;

    private static final int MOST = 6;

    private final PanelCheck check = PanelCheck.brief();
    private final MaterialLibrary library;

    /** Creates the search with what can be bought. */
    public Cures(MaterialLibrary library) {
        this.library = library;
    }

    /** A change that has not been judged. */
    private record Candidate(String words, PanelCheck.Begun panel, double perArea) {}

    /**
     * Returns the changes that could cure {@code verdict}'s panel: those that hold first, by added
     * mass, six at most.
     */
    public List<Change> toCure(Verdict verdict) {
        Map<Boolean, List<Candidate>> byStiffness =
                byMass(verdict, stronger(verdict.job().schedule())).parallelStream()
                        .collect(
                                Collectors.partitioningBy(
                                        candidate -> candidate.panel().isStiffEnough()));
        List<Candidate> could = byStiffness.getOrDefault(true, List.of());
        List<Candidate> rest = byStiffness.getOrDefault(false, List.of());
        List<Change> hold = new ArrayList<>();
        List<Change> fail = new ArrayList<>();
        // A full verdict is dear: the lightest first, until enough of them hold.
        for (int next = 0; next < could.size() && hold.size() < MOST; ) {
            int end = Math.min(could.size(), next + MOST - hold.size());
            for (Change change : judged(could.subList(next, end), verdict.mass())) {
                (change.verdict().holds() ? hold : fail).add(change);
            }
            next = end;
        }
        int room = MOST - hold.size();
        fail.addAll(judged(rest.subList(0, Math.min(room, rest.size())), verdict.mass()));
        fail.sort(Comparator.comparingDouble(Change::addedMass));
        hold.addAll(fail.subList(0, Math.min(room, fail.size())));
        return List.copyOf(hold);
    }

    /**
     * Returns what can be left out of {@code verdict}'s panel so that it still holds, the most mass
     * saved first.
     */
    public List<Change> toLeaveOut(Verdict verdict) {
        List<Candidate> could =
                byMass(verdict, lighter(verdict.job().schedule())).parallelStream()
                        .filter(candidate -> candidate.panel().isStiffEnough())
                        .toList();
        return judged(could, verdict.mass()).stream()
                .filter(change -> change.verdict().holds())
                .limit(MOST)
                .toList();
    }

    private List<Candidate> byMass(Verdict verdict, Map<String, Schedule> schedules) {
        Job job = verdict.job();
        List<Candidate> candidates = new ArrayList<>();
        schedules.forEach(
                (words, schedule) -> {
                    Job changed = job.withSchedule(schedule);
                    double perArea = changed.panel().laminate().mass();
                    candidates.add(new Candidate(words, check.begin(changed), perArea));
                });
        candidates.sort(Comparator.comparingDouble(Candidate::perArea));
        return candidates;
    }

    private static List<Change> judged(List<Candidate> candidates, double before) {
        // Each change stands by itself, so the order of work matters to none of them.
        return candidates.parallelStream()
                .map(
                        candidate -> {
                            Verdict changed = candidate.panel().verdict();
                            return new Change(candidate.words(), changed, changed.mass() - before);
                        })
                .toList();
    }

    private Map<String, Schedule> stronger(Schedule schedule) {
        Map<String, Schedule> found = new LinkedHashMap<>();
        for (Cloth cloth : cloths(schedule)) {
            Schedule.Item ply = new Schedule.Wet(cloth, 0);
            if (!schedule.inside().isEmpty()) {
                found.put(
                        "one more " + grams(cloth) + " ply inside",
                        schedule.withInside(plus(schedule.inside(), ply)));
            }
            found.put(
                    "one more " + grams(cloth) + " ply outside",
                    schedule.withOutside(plus(schedule.outside(), ply)));
        }
        Schedule.Board board = schedule.board();
        if (board != null) {
            for (double thickness : MaterialLibrary.soldThicknesses()) {
                if (thickness > board.thickness() + 1e-6
                        && thickness < board.thickness() + MOST_FOAM + 1e-6) {
                    found.put(
                            "foam "
                                    + millimetres(thickness)
                                    + " instead of "
                                    + millimetres(board.thickness()),
                            schedule.withBoard(
                                    new Schedule.Board(
                                            board.foam(), thickness, board.thicknessSpread())));
                }
            }
            MaterialLibrary.soldDensities(board.foam().kind()).stream()
                    .filter(density -> density > board.foam().density() * 1.02)
                    .findFirst()
                    .ifPresent(
                            density ->
                                    found.put(
                                            "foam "
                                                    + Math.round(density)
                                                    + " kg/m^3 instead of "
                                                    + Math.round(board.foam().density()),
                                            withDensity(schedule, board, density)));
        }
        return found;
    }

    private Map<String, Schedule> lighter(Schedule schedule) {
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
                    .ifPresent(
                            thickness ->
                                    found.put(
                                            "foam "
                                                    + millimetres(thickness)
                                                    + " instead of "
                                                    + millimetres(board.thickness()),
                                            schedule.withBoard(
                                                    new Schedule.Board(
                                                            board.foam(),
                                                            thickness,
                                                            board.thicknessSpread()))));
            MaterialLibrary.soldDensities(board.foam().kind()).stream()
                    .filter(density -> density < board.foam().density() * 0.98)
                    .max(Comparator.naturalOrder())
                    .ifPresent(
                            density ->
                                    found.put(
                                            "foam "
                                                    + Math.round(density)
                                                    + " kg/m^3 instead of "
                                                    + Math.round(board.foam().density()),
                                            withDensity(schedule, board, density)));
        }
        return found;
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
        return schedule.withBoard(
                new Schedule.Board(foam, board.thickness(), board.thicknessSpread()));
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
