package org.coachskin.check;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.analysis.Response;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.SectionState;
import org.coachskin.panel.Height;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Panel;

/**
 * Where a load case is judged: under and beside each patch, and where the solver says; for a solver
 * that leaves the choice, in the middle, at the rim, and on a coarse grid.
 */
final class Stations {

    /** What a patch does locally has died out this many panel thicknesses beside it. */
    static final double REACH = 4;

    private static final int GRID = 3;

    /** Places along a load along a line, less one. */
    private static final int ALONG = 8;

    /** Places under a patch, in bending lengths of the outside skin from its edge. */
    private static final double[] UNDER = {1, 1.5};

    /** Bending length of a skin on foam over its thickness and the root of their moduli. */
    private static final double LENGTH = 0.7;

    /** Where there is no skin to bend on foam, as a share of the half side. */
    private static final double SHARE = 0.3;

    /** The place by a corner of a patch, where a skin is sheared most, as a share of it. */
    private static final double CORNER = 0.9;

    /** Where foam beside a patch is sheared most, in bending lengths from the edge. */
    private static final double SHEARED = 0.5;

    /** And where both skins are bent the other way, in panel thicknesses. */
    private static final double BESIDE = 1;

    /** A crown bends its inside skin most this far out. */
    private static final double RING = 2;

    private final Panel panel;
    private final LoadCase load;
    private final List<Station> stations = new ArrayList<>();

    private Stations(Panel panel, LoadCase load) {
        this.panel = panel;
        this.load = load;
    }

    /** What is judged at a place. */
    enum Judged {
        /** All that can fail there. */
        ALL,
        /** What the foam bears. */
        FOAM,
        /** All but what the foam bears. */
        SKINS,
        /** Only the shear of the foam, since what else may fail is read otherwise. */
        FOAM_SHEAR,
        /** All but the shear of the foam. */
        NO_SHEAR,
        /** Only the plies. */
        PLIES;

        boolean plies() {
            return this != FOAM && this != FOAM_SHEAR;
        }

        boolean skins() {
            return this == ALL || this == SKINS || this == NO_SHEAR;
        }

        boolean foamTension() {
            return this == ALL || this == FOAM || this == NO_SHEAR;
        }

        boolean foamShear() {
            return this == ALL || this == FOAM || this == FOAM_SHEAR;
        }
    }

    /**
     * One place of several whose weighted mean is read.
     *
     * @param x from the left edge [m]
     * @param y from the front edge [m]
     * @param weight in any unit
     */
    record Sample(double x, double y, double weight) {}

    /**
     * One place to judge.
     *
     * @param words where, as a maker says it
     * @param x from the left edge [m]
     * @param y from the front edge [m]
     * @param judged what is judged there
     * @param samples places whose mean is read; all within one stack
     * @param remark how it was read, where that is not right there; else empty
     * @param spot whether the solver chose it, for its own field alone
     */
    record Station(
            String words,
            double x,
            double y,
            Judged judged,
            List<Sample> samples,
            String remark,
            boolean spot) {
        Station(String words, double x, double y) {
            this(words, x, y, Judged.ALL, List.of(new Sample(x, y, 1)), "", false);
        }

        /** Returns a place that the solver chose. */
        static Station at(Response.Spot spot, Surroundings around) {
            return new Station(
                    around.words(spot.x(), spot.y()),
                    spot.x(),
                    spot.y(),
                    Judged.ALL,
                    List.of(new Sample(spot.x(), spot.y(), 1)),
                    "",
                    true);
        }

        /** Returns what a panel does here. */
        SectionState state(Response response) {
            SectionState sum = SectionState.ZERO;
            double weight = 0;
            for (Sample sample : samples) {
                sum = sum.plus(response.state(sample.x(), sample.y()), sample.weight());
                weight += sample.weight();
            }
            return SectionState.ZERO.plus(sum, 1 / weight);
        }

        /** Returns this place with the shear of the foam only, where it is judged at all. */
        Station foamShear() {
            return judged(Judged.FOAM_SHEAR);
        }

        Station judged(Judged what) {
            return new Station(words, x, y, what, samples, remark, spot);
        }
    }

    static List<Station> of(Panel panel, LoadCase load, List<Response.Spot> spots) {
        Stations found = new Stations(panel, load);
        boolean middle = found.addPatches(spots.isEmpty());
        if (spots.isEmpty()) {
            found.addOverall(middle);
        }
        Surroundings around = new Surroundings(panel);
        Reading reading = new Reading(panel, around);
        List<Station> read = new ArrayList<>();
        found.stations.forEach(at -> reading.besideSharpPlaces(at, read));
        for (Response.Spot spot : spots) {
            if (!found.isByPatch(spot)) {
                reading.besideAll(Station.at(spot, around), read);
            }
        }
        found.stations.clear();
        PadPlace.of(panel).forEach(found::addPad);
        found.stations.forEach(at -> reading.byPad(at, read));
        read.replaceAll(
                at -> OpeningRims.near(panel, at.x(), at.y()).isPresent() ? at.foamShear() : at);
        read.addAll(OpeningRims.of(panel, around));
        return read;
    }

    /**
     * Adds places at every patch.
     *
     * @param mirrored whether a panel loaded in its middle does the same on all sides of it
     * @return whether nothing presses but in the middle
     */
    private boolean addPatches(boolean mirrored) {
        boolean alone = true;
        for (Load part : load.loads()) {
            if (part instanceof Load.Press press) {
                boolean middle =
                        Math.abs(press.x() - panel.width() / 2) < 1e-9
                                && Math.abs(press.y() - panel.length() / 2) < 1e-9;
                addPatch(press, mirrored && middle);
                alone = alone && middle;
            } else if (part instanceof Load.StripPressure strip) {
                alone = false;
                stations.add(
                        new Station(
                                "in the strip behind the front edge",
                                panel.width() / 2,
                                (strip.from() + strip.to()) / 2));
            } else if (part instanceof Load.Line line) {
                alone = false;
                addLine(line);
            }
        }
        return alone;
    }

    /** Adds places along a line and on both sides of it, where they lie on the panel. */
    private void addLine(Load.Line line) {
        for (int i = 0; i <= ALONG; i++) {
            double s = (double) i / ALONG;
            double x = line.x1() + s * (line.x2() - line.x1());
            double y = line.y1() + s * (line.y2() - line.y1());
            double beside = panel.laminateAt(x, y).thickness() / 2;
            double acrossX = beside * (line.y1() - line.y2()) / line.length();
            double acrossY = beside * (line.x2() - line.x1()) / line.length();
            add("under the " + load.name(), x, y);
            add("beside the " + load.name(), x + acrossX, y + acrossY);
            add("beside the " + load.name(), x - acrossX, y - acrossY);
        }
    }

    /** Returns whether a place is so near to a patch that the places chosen there stand for it. */
    private boolean isByPatch(Response.Spot spot) {
        for (Load part : load.loads()) {
            if (part instanceof Load.Press press) {
                double reach = REACH * panel.laminateAt(press.x(), press.y()).thickness();
                if (Math.abs(spot.x() - press.x()) < Patches.halfX(press.patch()) + reach
                        && Math.abs(spot.y() - press.y()) < Patches.halfY(press.patch()) + reach) {
                    return true;
                }
            }
        }
        return false;
    }

    private void addOverall(boolean middle) {
        double a = panel.width();
        double b = panel.length();
        stations.add(new Station("in the middle", a / 2, b / 2));
        stations.add(new Station("at the left edge", 0, b / 2));
        stations.add(new Station("at the front edge", a / 2, 0));
        if (!middle) {
            stations.add(new Station("at the right edge", a, b / 2));
            stations.add(new Station("at the rear edge", a / 2, b));
        }
        // A panel loaded in its middle does the same in all four quarters.
        double part = middle ? 0.5 : 1;
        for (int i = 0; i < GRID; i++) {
            for (int j = 0; j < GRID; j++) {
                double x = a * part * (i + 0.5) / GRID;
                double y = b * part * (j + 0.5) / GRID;
                stations.add(new Station(Surroundings.tape(x, y), x, y));
            }
        }
    }

    private void addPatch(Load.Press press, boolean symmetric) {
        addPatch(
                "under the ",
                load.name(),
                press.x(),
                press.y(),
                Patches.halfX(press.patch()),
                Patches.halfY(press.patch()),
                panel.laminateAt(press.x(), press.y()),
                symmetric);
        for (int side = symmetric ? 1 : -1; side <= 1; side += 2) {
            for (int other = symmetric ? 1 : -1; other <= 1; other += 2) {
                add(
                        "at the corner of the " + load.name(),
                        press.x() + side * CORNER * Patches.halfX(press.patch()),
                        press.y() + other * CORNER * Patches.halfY(press.patch()));
            }
        }
    }

    /**
     * Adds places at a pad, but none by its corners, which would cost more than all others: there
     * the local effect uses a third to a half of what it uses of a skin's strength inside the
     * sides.
     */
    private void addPad(PadPlace place) {
        Laminate stack = panel.laminateAt(place.x(), place.y());
        boolean inside = place.pad().height() == Height.INSIDE;
        addPatch(
                "at the ",
                place.pad().name(),
                place.x(),
                place.y(),
                place.halfX(),
                place.halfY(),
                inside ? stack.turnedOver() : stack,
                false);
    }

    /**
     * Adds places at a patch.
     *
     * @param under how a place within it is told
     * @param stack as seen from the face that is pressed: that one is its outside
     */
    private void addPatch(
            String under,
            String name,
            double x,
            double y,
            double hx,
            double hy,
            Laminate stack,
            boolean symmetric) {
        add(under + name, x, y);
        for (int side = symmetric ? 1 : -1; side <= 1; side += 2) {
            // Skin stress peaks within the patch, foam shear just outside it.
            double bentX = bendingLength(stack, hx);
            double bentY = bendingLength(stack, hy);
            for (double lengths : UNDER) {
                if (hx > lengths * bentX) {
                    add(under + name, x + side * (hx - lengths * bentX), y);
                }
                if (hy > lengths * bentY) {
                    add(under + name, x, y + side * (hy - lengths * bentY));
                }
            }
            String edge = "at the edge of the " + name;
            add(edge, x + side * hx, y);
            add(edge, x, y + side * hy);
            add(edge, x + side * (hx + SHEARED * bentX), y);
            add(edge, x, y + side * (hy + SHEARED * bentY));
            String beside = "beside the " + name;
            double away = BESIDE * stack.thickness();
            add(beside, x + side * (hx + away), y);
            add(beside, x, y + side * (hy + away));
            if (!panel.crown().isFlat()) {
                double ring = RING * stack.thickness();
                add(beside, x + side * (hx + ring), y);
                add(beside, x, y + side * (hy + ring));
            }
        }
    }

    /**
     * How far inside the edge of a patch the skin under it is bent most: t (E skin / E foam)^(1/3),
     * as for a plate on a half-space.
     */
    private static double bendingLength(Laminate laminate, double half) {
        if (laminate.isBare() || laminate.hasNoOutsideSkin()) {
            return SHARE * half;
        }
        double t = 0;
        double stretch = 0;
        for (Layer layer : laminate.outsideSkin()) {
            t += layer.thickness();
            stretch += layer.thickness() * layer.stiffness().m11();
        }
        int core = laminate.outermostCore();
        double foam = ((Layer.Core) laminate.layers().get(core)).foam().eThrough();
        return LENGTH * t * StrictMath.cbrt(stretch / t / foam);
    }

    private void add(String words, double x, double y) {
        if (x >= 0
                && x <= panel.width()
                && y >= 0
                && y <= panel.length()
                && panel.hasMaterialAt(x, y)) {
            stations.add(new Station(words, x, y));
        }
    }
}
