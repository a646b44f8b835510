package org.coachskin.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.coachskin.laminate.LayUp;
import org.coachskin.laminate.Patch;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.Foam;
import org.coachskin.material.MaterialLibrary;
import org.coachskin.panel.Crown;
import org.coachskin.panel.Edge;
import org.coachskin.panel.EverydayLoads;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Height;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Opening;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Region;
import org.coachskin.panel.Shape;
import org.coachskin.panel.Stretch;
import org.coachskin.panel.Support;
import org.coachskin.panel.ZoneRecipe;

/** Panels drawn by lot, the same each time, of every sort of a workshop. */
final class DrawnPanels {

    private static final MaterialLibrary TABLES = MaterialLibrary.standard();

    /** Sorts of panel. */
    enum Sort {
        RIM,
        CROWNED_RIM,
        SEALED,
        LIFTED,
        CORNERS,
        OPENING,
        LIP,
        STRIPS
    }

    private final Random lot;
    private final Sort sort;
    private final double a;
    private final double b;

    private DrawnPanels(int number) {
        lot = new Random(7919L * number + 17);
        lot.nextDouble();
        sort = sort(number);
        a = mm(450, 1100);
        b = Math.min(mm(450, 1100), 2 * a);
    }

    static Sort sort(int number) {
        return Sort.values()[number % Sort.values().length];
    }

    static Job job(int number) {
        return new DrawnPanels(number).job("panel " + number);
    }

    private double mm(int low, int high) {
        return (low + lot.nextInt(high - low + 1)) / 1000.0;
    }

    private boolean coin() {
        return lot.nextBoolean();
    }

    private static Schedule.Item ply() {
        return new Schedule.Wet(TABLES.cloth("twill glass 300 g/m^2").orElseThrow(), 0);
    }

    private Job job(String name) {
        int outside = 1 + lot.nextInt(3);
        int inside = 1 + lot.nextInt(2);
        Schedule schedule =
                new Schedule(
                        Collections.nCopies(outside, ply()),
                        Collections.nCopies(inside, ply()),
                        new Schedule.Board(
                                TABLES.foam(Foam.Kind.POLYURETHANE, coin() ? 64 : 96).orElseThrow(),
                                mm(8, 25),
                                0.7e-3),
                        TABLES.resin("epoxy").orElseThrow(),
                        LayUp.USUAL,
                        Schedule.SealCoatMass.USUAL,
                        false);
        Panel panel =
                new Panel(
                        name,
                        a,
                        b,
                        crown(),
                        schedule.laminate(),
                        support(),
                        outline(),
                        openings(),
                        List.of());
        return Job.of(panel, schedule, zones(), loads(panel), Limits.STANDARD);
    }

    private Crown crown() {
        boolean crowned = sort == Sort.CROWNED_RIM || (sort != Sort.RIM && lot.nextInt(3) == 0);
        return crowned ? Crown.ofRise(mm(0, 25), a, mm(5, 25), b) : Crown.FLAT;
    }

    private Shape outline() {
        boolean held = sort == Sort.RIM || sort == Sort.CROWNED_RIM || sort == Sort.OPENING;
        if (sort == Sort.STRIPS && coin()) {
            double cut = mm(60, 150);
            return new Shape.Polygon(
                    List.of(
                            new Shape.Point(0, 0),
                            new Shape.Point(a, 0),
                            new Shape.Point(a, b - cut),
                            new Shape.Point(a - cut, b),
                            new Shape.Point(0, b)));
        }
        return new Shape.Rectangle(a, b, held || coin() ? 0 : mm(20, 90));
    }

    private Support support() {
        return switch (sort) {
            case RIM, CROWNED_RIM, OPENING -> new Support.WholeRim();
            case CORNERS -> new Support.Fittings(corners());
            case STRIPS -> new Support.Fittings(coin() ? corners() : oneEdge());
            default -> new Support.Fittings(hinged());
        };
    }

    private List<Fitting> hinged() {
        double in = mm(20, 40);
        List<Fitting> all = new ArrayList<>();
        double from = a * (0.15 + 0.15 * lot.nextDouble());
        all.add(Fitting.Pad.hinge("left hinge", from, in));
        all.add(Fitting.Pad.hinge("right hinge", a - from, in));
        if (sort == Sort.LIFTED && coin()) {
            double side = mm(110, 160);
            all.add(Fitting.Pad.latch("left latch", side, b - in));
            all.add(Fitting.Pad.latch("right latch", a - side, b - in));
        } else {
            all.add(Fitting.Pad.latch("latch", a / 2, b - in));
        }
        all.add(Fitting.RubberSeal.allRound());
        return all;
    }

    private List<Fitting> corners() {
        double in = mm(25, 45);
        List<Fitting> all = new ArrayList<>();
        all.add(Fitting.Pad.hinge("front left rest", in, in));
        all.add(Fitting.Pad.latch("front right rest", a - in, in));
        all.add(Fitting.Pad.latch("rear left rest", in, b - in));
        boolean stay = coin();
        double backX = sort == Sort.STRIPS ? a - 0.2 : a - in;
        double size = coin() ? 0.04 : 0.025;
        all.add(
                new Fitting.Pad(
                        "rear right rest",
                        backX,
                        b - in,
                        size,
                        size,
                        Set.of(Fitting.Direction.X, Fitting.Direction.Z),
                        stay ? 2e5 : Double.POSITIVE_INFINITY,
                        Height.INSIDE));
        return all;
    }

    /** One edge held rigidly, a latch opposite. */
    private List<Fitting> oneEdge() {
        return List.of(
                coin() ? Fitting.HeldEdge.clamped(Edge.FRONT) : sliding(),
                new Fitting.HeldEdge(
                        new Stretch(Edge.LEFT, 0, b / 2),
                        Set.of(Fitting.Motion.DEFLECTION, Fitting.Motion.ACROSS),
                        Height.INSIDE));
    }

    private static Fitting sliding() {
        return new Fitting.HeldEdge(
                Stretch.whole(Edge.FRONT),
                Set.of(Fitting.Motion.DEFLECTION, Fitting.Motion.ALONG, Fitting.Motion.ACROSS),
                Height.MIDDLE);
    }

    private List<Opening> openings() {
        if (sort != Sort.OPENING && !(sort == Sort.STRIPS && coin())) {
            return List.of();
        }
        double size = Math.min(a, b) * (0.25 + 0.15 * lot.nextDouble());
        Shape shape =
                coin()
                        ? new Shape.Circle(size)
                        : new Shape.Rectangle(size, 0.8 * size, coin() ? 0 : 0.15 * size);
        return List.of(new Opening("window", shape, a * 0.55, b * 0.62));
    }

    private List<ZoneRecipe> zones() {
        List<ZoneRecipe> all = new ArrayList<>();
        if (sort == Sort.OPENING && coin()) {
            all.add(
                    new ZoneRecipe(
                            "ring",
                            new Region.Around("window", mm(30, 50)),
                            new ZoneRecipe.MorePlies(List.of(), List.of(ply(), ply()))));
        }
        if (sort == Sort.LIP) {
            all.add(
                    new ZoneRecipe(
                            "lip",
                            new Region.AlongEdges(List.of(Edge.values()), mm(50, 80)),
                            new ZoneRecipe.NoFoam(
                                    List.of(ply(), ply()),
                                    coin() ? Height.OUTSIDE : Height.INSIDE)));
        }
        if (sort == Sort.STRIPS || (sort == Sort.SEALED && coin())) {
            all.add(
                    new ZoneRecipe(
                            "band",
                            new Region.AlongEdges(List.of(Edge.FRONT), mm(60, 90)),
                            new ZoneRecipe.MorePlies(List.of(), List.of(ply()))));
        }
        if (sort == Sort.STRIPS) {
            double x = a * (0.2 + 0.1 * lot.nextDouble());
            all.add(
                    new ZoneRecipe(
                            "strip",
                            new Region.Box(x, x + mm(40, 70), b * 0.2, b * 0.8),
                            new ZoneRecipe.FoamStrip(mm(8, 20), List.of(ply()))));
        }
        return all;
    }

    private List<LoadCase> loads(Panel panel) {
        List<LoadCase> all = new ArrayList<>();
        double x = a * (0.4 + 0.2 * lot.nextDouble());
        double y = b * (panel.openings().isEmpty() ? 0.35 + 0.3 * lot.nextDouble() : 0.2);
        all.add(EverydayLoads.named("palm").orElseThrow().at(x, y));
        switch (lot.nextInt(3)) {
            case 0 -> all.add(touch().at(a * 0.3, b * 0.25));
            case 1 -> all.add(EverydayLoads.luggage(8, luggage(), x, y, true));
            default ->
                    all.add(
                            LoadCase.of(
                                    "even pressure",
                                    LoadCase.Kind.SPREAD,
                                    new Load.Pressure(coin() ? 400 : -300)));
        }
        if (sort == Sort.LIFTED) {
            all.add(EverydayLoads.wind(20 + 20 * lot.nextDouble(), b));
        }
        return all;
    }

    /** The series takes a square for a disc, so beside it nothing round presses. */
    private EverydayLoads.Named touch() {
        return EverydayLoads.named(isForSeries() ? "hip" : "thumb").orElseThrow();
    }

    private Patch luggage() {
        return isForSeries() ? new Patch.Rectangle(0.12, 0.12) : new Patch.Disc(0.12);
    }

    private boolean isForSeries() {
        return sort == Sort.RIM || sort == Sort.CROWNED_RIM;
    }
}
