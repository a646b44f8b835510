package org.coachskin.reinforce;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.coachskin.NoAnswerException;
import org.coachskin.Problem;
import org.coachskin.check.Job;
import org.coachskin.check.Verdict;
import org.coachskin.failure.Mode;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.Foam;
import org.coachskin.material.Inserts;
import org.coachskin.material.MaterialLibrary;
import org.coachskin.material.Weave;
import org.coachskin.panel.Opening;
import org.coachskin.panel.Shape;

/**
 * What is tried: within the rules of {@link Practice}, with cloth that is in the file, in the room
 * there is.
 */
final class Offers {

    /** Widths that are tried at most. */
    private static final int WIDTHS = 3;

    /** Foam strips about as thick as these shares of the panel's foam. */
    private static final List<Double> STRIPS = List.of(2.0 / 3, 1.0, 4.0 / 3);

    private final MaterialLibrary library;
    private final Job bare;
    private final Target target;
    private final Rules rules;
    private final Room room;

    /** Cloths of the file, the heaviest first. */
    private final List<Schedule.Item> cloths;

    /**
     * @param drawn the job as the file draws it, whose cloths are at hand
     * @param bare without what it lays to reinforce the target
     */
    Offers(MaterialLibrary library, Job drawn, Job bare, Target target, Rules rules) {
        this.library = library;
        this.bare = bare;
        this.target = target;
        this.rules = rules;
        room = Room.round(bare, target);
        cloths = AtHand.plies(bare, drawn);
    }

    /**
     * Refuses a search for nothing.
     *
     * @throws NoAnswerException saying whether room or rules leave nothing
     */
    void refuseNone() {
        boolean some = builds().stream().anyMatch(build -> !widths(build).isEmpty());
        if (some || edges().contains(true)) {
            return;
        }
        String round = "the " + target.name();
        if (room.plies() < Practice.OVERLAP) {
            throw new NoAnswerException(
                    new Problem(
                            "",
                            "",
                            "There is no room to reinforce "
                                    + round
                                    + ": a band wants 20 mm, and there are "
                                    + Math.max(0, (int) Math.floor(1000 * room.plies() + 1e-6))
                                    + " mm.",
                            "Move it, or make it smaller."));
        }
        throw new NoAnswerException(
                new Problem(
                        "",
                        "",
                        "Of what is allowed nothing is left to try for " + round + ".",
                        "Allow more, or wider:  coachskin reinforce --help"));
    }

    /**
     * Returns everything that is tried.
     *
     * @param verdict on the panel without any of it
     */
    List<Measure> all(Verdict verdict) {
        List<Build> offered = new ArrayList<>(builds());
        offered.addAll(aslant(verdict));
        List<Measure> found = new ArrayList<>();
        for (double radius : radii(verdict)) {
            for (boolean turned : edges()) {
                if (turned || radius > 0) {
                    found.add(new Measure(new Build.Nothing(), 0, turned, radius));
                }
                for (Build build : offered) {
                    for (double width : widths(build)) {
                        found.add(new Measure(build, width, turned, radius));
                    }
                }
            }
        }
        return found;
    }

    /** Returns whether the edge is left raw, turned, or either is tried. */
    List<Boolean> edges() {
        boolean raw =
                target.turned().isPresent() && hasTwoSkins() && rules.allows(Rules.Means.TURNED);
        return raw ? List.of(false, true) : List.of(false);
    }

    private boolean hasFoam() {
        return bare.schedule().board() != null;
    }

    private boolean hasTwoSkins() {
        return hasFoam() && !bare.schedule().inside().isEmpty();
    }

    /** The radius it has; a better one too where skins are short of strength at a tight corner. */
    private List<Double> radii(Verdict verdict) {
        boolean skins =
                rules.allows(Rules.Means.CORNERS)
                        && verdict.margins().stream()
                                .anyMatch(
                                        m ->
                                                !m.holds()
                                                        && (m.mode().isOfPlies()
                                                                || m.mode() == Mode.WRINKLING
                                                                || m.mode() == Mode.CORE_SHEAR));
        if (skins
                && target instanceof Target.Hole hole
                && hole.opening().shape() instanceof Shape.Rectangle r) {
            double least = Math.min(r.x(), r.y());
            double better =
                    Math.ceil(200 * Math.max(Practice.RADIUS, Practice.SHARE * least) - 1e-9) / 200;
            if (better > r.cornerRadius() + 1e-9 && better <= least / 2) {
                return List.of(0.0, better);
            }
        }
        return List.of(0.0);
    }

    /** Returns what may be laid, of every width. */
    List<Build> builds() {
        return everything().stream().filter(this::isAllowed).toList();
    }

    private boolean isAllowed(Build build) {
        if (build instanceof Build.Plies plies) {
            boolean shows = plies.outside() > 0 && hasFoam();
            return rules.allows(Rules.Means.PLIES) && (!shows || rules.allows(Rules.Means.OUTSIDE));
        }
        if (build instanceof Build.Strip strip) {
            return rules.allows(Rules.Means.STRIP) && strip.thickness() <= rules.highest() + 1e-9;
        }
        if (build instanceof Build.Insert insert) {
            return rules.allows(
                    insert.foam().kind() == Foam.Kind.OTHER
                            ? Rules.Means.INSERT
                            : Rules.Means.FOAM);
        }
        return rules.allows(Rules.Means.PLIES);
    }

    private List<Build> everything() {
        List<Build> builds = new ArrayList<>();
        if (target instanceof Target.Lip) {
            for (Schedule.Item ply : cloths) {
                for (int count = 1; count <= Practice.LIP; count++) {
                    builds.add(new Build.InLip(ply, count));
                }
            }
            return builds;
        }
        boolean both = hasTwoSkins();
        for (Schedule.Item ply : cloths) {
            if (both && target instanceof Target.Hardware) {
                builds.add(new Build.Plies(ply, 1, 0));
                builds.add(new Build.Plies(ply, 2, 0));
                builds.add(new Build.Plies(ply, 1, 1));
            } else if (both) {
                builds.add(new Build.Plies(ply, 1, 0));
                builds.add(new Build.Plies(ply, 2, 0));
                builds.add(new Build.Plies(ply, 1, 1));
                builds.add(new Build.Plies(ply, 3, 0));
                builds.add(new Build.Plies(ply, 3, 1));
                builds.add(new Build.Plies(ply, 2, 2));
            } else {
                builds.add(new Build.Plies(ply, 0, 1));
                builds.add(new Build.Plies(ply, 0, 2));
                builds.add(new Build.Plies(ply, 0, 3));
            }
        }
        Schedule.Board board = bare.schedule().board();
        if (board == null) {
            return builds;
        }
        List<Schedule.Item> one = List.of(cloths.get(0));
        if (target instanceof Target.Hardware) {
            Inserts.all().forEach(insert -> builds.add(new Build.Insert(insert, List.of())));
        } else if (both) {
            for (double thickness : strips(board.thickness())) {
                builds.add(strip(thickness, one));
            }
        }
        MaterialLibrary.soldDenser(board.foam()).stream()
                .limit(target instanceof Target.Hardware ? 3 : 1)
                .flatMap(density -> library.foam(board.foam().kind(), density).stream())
                .forEach(foam -> builds.add(new Build.Insert(foam, List.of())));
        return builds;
    }

    /**
     * The heaviest cloth at 45 degrees, where plies beside the opening are short of strength: there
     * they are sheared, and its tows run the way they are pulled.
     */
    private List<Build> aslant(Verdict verdict) {
        boolean isShort =
                verdict.margins().stream()
                        .filter(margin -> !margin.holds() && margin.mode().isOfPlies())
                        .flatMap(margin -> verdict.openingBeside(margin).stream())
                        .anyMatch(opening -> opening.name().equals(target.name()));
        if (!isShort || !hasTwoSkins() || !(target instanceof Target.Hole)) {
            return List.of();
        }
        return cloths.stream()
                .filter(Schedule.Wet.class::isInstance)
                .map(Schedule.Wet.class::cast)
                .filter(wet -> wet.cloth().weave() != Weave.MAT)
                .limit(1)
                .map(wet -> new Schedule.Wet(wet.cloth(), Math.PI / 4))
                .flatMap(wet -> Stream.of(new Build.Plies(wet, 1, 0), new Build.Plies(wet, 2, 0)))
                .map(Build.class::cast)
                .filter(this::isAllowed)
                .toList();
    }

    /** Bevelled as gently as there is room for, for the skin over a steep bevel comes off. */
    private Build.Strip strip(double thickness, List<Schedule.Item> over) {
        List<Build.Strip> strips =
                Practice.BEVELS.stream()
                        .map(
                                times ->
                                        new Build.Strip(
                                                thickness,
                                                over,
                                                Practice.rounded(times * thickness)))
                        .toList();
        return strips.stream()
                .filter(strip -> columns().stream().anyMatch(width -> fits(strip, width)))
                .findFirst()
                .orElse(strips.get(0));
    }

    /** Sold thicknesses next to those that serve. */
    private static List<Double> strips(double foam) {
        return STRIPS.stream()
                .map(
                        share ->
                                MaterialLibrary.soldThicknesses().stream()
                                        .min(
                                                Comparator.comparingDouble(
                                                        t -> Math.abs(t - share * foam)))
                                        .orElseThrow())
                .distinct()
                .toList();
    }

    /** Returns the widths of a build that there is room for, the narrowest first. */
    List<Double> widths(Build build) {
        if (build instanceof Build.InLip) {
            return List.of(0.0);
        }
        if (target instanceof Target.Hardware) {
            return Practice.PAST.stream()
                    .filter(past -> past <= Math.min(rules.widest(), room.plies()) + 1e-9)
                    .toList();
        }
        return columns().stream().filter(width -> fits(build, width)).toList();
    }

    /**
     * Returns the widths that are tried, the narrowest first: the widest there is room for, and
     * narrower ones.
     */
    List<Double> columns() {
        List<Double> fitting =
                Practice.WIDTHS.stream()
                        .filter(w -> w <= Math.min(rules.widest(), room.plies()) + 1e-9)
                        .toList();
        List<Double> some = new ArrayList<>(fitting.subList(0, Math.min(1, fitting.size())));
        for (double width : fitting) {
            boolean usual = width == 0.06 || width == 0.04 || fitting.size() <= WIDTHS;
            if (usual && !some.contains(width) && some.size() < WIDTHS) {
                some.add(width);
            }
        }
        Collections.sort(some);
        return some;
    }

    /** Returns the rims of all bands that are tried, the widest first [m]. */
    List<Double> lines() {
        TreeSet<Double> lines = new TreeSet<>(Comparator.reverseOrder());
        for (Build build : builds()) {
            for (double width : widths(build)) {
                lines.add(width);
                if (build instanceof Build.Plies plies) {
                    for (int k = 1; k < plies.most(); k++) {
                        lines.add(Practice.rounded(width - k * Practice.STEP));
                    }
                } else if (build instanceof Build.Strip strip && !strip.over().isEmpty()) {
                    lines.add(Practice.rounded(width + Laying.landing(strip)));
                }
            }
        }
        return List.copyOf(lines);
    }

    private boolean fits(Build build, double width) {
        double slack = 1e-9;
        if (build instanceof Build.Strip strip) {
            return width >= Practice.STRIP - slack
                    && width + strip.bevel() <= room.raised() + slack
                    && width + Laying.landing(strip) <= room.plies() + slack;
        }
        return width <= room.plies() + slack
                && (!(build instanceof Build.Plies plies) || Laying.fits(width, plies.most()));
    }

    /** Returns the opening that is reinforced, a fifth smaller. */
    static Opening smaller(Opening opening) {
        double by = 0.8;
        Shape shape = opening.shape();
        Shape less;
        if (shape instanceof Shape.Circle circle) {
            less = new Shape.Circle(by * circle.diameter());
        } else if (shape instanceof Shape.Rectangle r) {
            less = new Shape.Rectangle(by * r.x(), by * r.y(), by * r.cornerRadius());
        } else {
            less =
                    new Shape.Polygon(
                            ((Shape.Polygon) shape)
                                    .corners().stream()
                                            .map(p -> new Shape.Point(by * p.x(), by * p.y()))
                                            .toList());
        }
        return new Opening(opening.name(), less, opening.x(), opening.y());
    }
}
