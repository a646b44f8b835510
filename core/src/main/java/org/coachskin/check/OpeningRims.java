package org.coachskin.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coachskin.failure.OpenHole;
import org.coachskin.panel.Opening;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Shape;
import org.coachskin.panel.Zone;

/**
 * How skins are read beside an opening.
 *
 * <p><b>Reading rule.</b> Right at the rim cloth is stressed most and a sharp corner has no finite
 * stress at all, but a laminate breaks by what happens over some millimetres. So as far from a rim
 * as {@link OpenHole#mean} plies are judged twice, along the normal to the rim: by the strains
 * {@link OpenHole#point} away and by their mean over {@link OpenHole#mean}; the worse of the two
 * counts. Wrinkling, foam torn and skins pulled off go by the mean. At a sharp corner every
 * direction away from it is tried.
 */
final class OpeningRims {

    /** Two places on an arc or round a sharp corner are no further apart [rad]. */
    private static final double TURN = Math.PI / 24;

    /** Nor two on a straight side [m]. */
    private static final double STEP = 0.02;

    private final Panel panel;
    private final Surroundings around;
    private final List<Stations.Station> stations = new ArrayList<>();

    private OpeningRims(Panel panel, Surroundings around) {
        this.panel = panel;
        this.around = around;
    }

    /** Returns the readings round all openings. */
    static List<Stations.Station> of(Panel panel, Surroundings around) {
        OpeningRims rims = new OpeningRims(panel, around);
        for (Opening opening : panel.openings()) {
            for (RimPlace place : round(opening.shape())) {
                rims.read(opening, place);
            }
        }
        return rims.stations;
    }

    /** Returns the opening so near to whose rim a place is that this rule holds there. */
    static Optional<Opening> near(Panel panel, double x, double y) {
        return panel.openings().stream()
                .filter(opening -> opening.distance(x, y) < OpenHole.STANDARD.mean())
                .findFirst();
    }

    /**
     * A place on a rim, from the middle of the opening, and the way from it into the panel.
     *
     * @param x [m]
     * @param y [m]
     * @param outX cosine of the way to the x axis [-]
     * @param outY to the y axis [-]
     * @param along rim that it stands for [m]
     * @param turn by which the rim turns along that [rad]
     */
    record RimPlace(double x, double y, double outX, double outY, double along, double turn) {}

    /** Returns places all round a shape. */
    static List<RimPlace> round(Shape shape) {
        List<RimPlace> places = new ArrayList<>();
        if (shape instanceof Shape.Circle circle) {
            arc(places, 0, 0, circle.diameter() / 2, 0, 2 * Math.PI);
        } else if (shape instanceof Shape.Rectangle r) {
            double hx = r.x() / 2 - r.cornerRadius();
            double hy = r.y() / 2 - r.cornerRadius();
            for (int k = 0; k < 4; k++) {
                double cx = k == 0 || k == 3 ? hx : -hx;
                double cy = k < 2 ? hy : -hy;
                arc(places, cx, cy, r.cornerRadius(), k * Math.PI / 2, Math.PI / 2);
            }
            for (int side = -1; side <= 1; side += 2) {
                line(places, side * r.x() / 2, -side * hy, side * r.x() / 2, side * hy);
                line(places, side * hx, side * r.y() / 2, -side * hx, side * r.y() / 2);
            }
        } else if (shape instanceof Shape.Polygon polygon) {
            polygon(places, polygon.corners());
        }
        return places;
    }

    private static void polygon(List<RimPlace> places, List<Shape.Point> corners) {
        int n = corners.size();
        double twice = 0;
        for (int i = 0; i < n; i++) {
            Shape.Point p = corners.get(i);
            Shape.Point q = corners.get((i + 1) % n);
            twice += p.x() * q.y() - q.x() * p.y();
        }
        int way = twice > 0 ? 1 : -1;
        for (int i = 0; i < n; i++) {
            Shape.Point p = corners.get(((i - way) % n + n) % n);
            Shape.Point q = corners.get(i);
            Shape.Point r = corners.get(((i + way) % n + n) % n);
            line(places, p.x(), p.y(), q.x(), q.y());
            double before = StrictMath.atan2(p.x() - q.x(), q.y() - p.y());
            double after = StrictMath.atan2(q.x() - r.x(), r.y() - q.y());
            double turn = after - before;
            turn -= 2 * Math.PI * Math.rint(turn / (2 * Math.PI));
            // Where the panel juts into the opening nothing is drawn together.
            if (turn > 0) {
                arc(places, q.x(), q.y(), 0, before, turn);
            }
        }
    }

    private static void arc(
            List<RimPlace> places, double cx, double cy, double radius, double from, double turn) {
        int steps = (int) Math.ceil(turn / TURN - 1e-9);
        for (int k = 0; k <= steps; k++) {
            double c = StrictMath.cos(from + turn * k / steps);
            double s = StrictMath.sin(from + turn * k / steps);
            double part = turn / steps * (k == 0 || k == steps ? 0.5 : 1);
            places.add(new RimPlace(cx + radius * c, cy + radius * s, c, s, radius * part, part));
        }
    }

    /** Along a straight side with the opening on its left. */
    private static void line(List<RimPlace> places, double x1, double y1, double x2, double y2) {
        double length = Math.hypot(x2 - x1, y2 - y1);
        int steps = (int) Math.ceil(length / STEP - 1e-9);
        for (int k = 0; k < steps; k++) {
            double s = (k + 0.5) / steps;
            places.add(
                    new RimPlace(
                            x1 + s * (x2 - x1),
                            y1 + s * (y2 - y1),
                            (y2 - y1) / length,
                            (x1 - x2) / length,
                            length / steps,
                            0));
        }
    }

    private void read(Opening opening, RimPlace place) {
        OpenHole hole = OpenHole.STANDARD;
        add(
                opening,
                place,
                List.of(new OpenHole.Sample(hole.point(), 1)),
                Stations.Judged.PLIES,
                "read " + millimetres(hole.point()) + " mm from the rim, an assumption");
        add(
                opening,
                place,
                hole.samples(),
                Stations.Judged.NO_SHEAR,
                "the mean over " + millimetres(hole.mean()) + " mm from the rim, an assumption");
    }

    private static double millimetres(double metres) {
        return Math.round(1e4 * metres) / 10.0;
    }

    /** Adds a reading from the samples that lie on the panel and in one stack. */
    private void add(
            Opening opening,
            RimPlace place,
            List<OpenHole.Sample> samples,
            Stations.Judged judged,
            String remark) {
        List<Stations.Sample> read = new ArrayList<>();
        Optional<Zone> zone = Optional.empty();
        for (OpenHole.Sample sample : samples) {
            double x = opening.x() + place.x() + sample.distance() * place.outX();
            double y = opening.y() + place.y() + sample.distance() * place.outY();
            // Another part of the rim may be nearer.
            boolean own = opening.distance(x, y) > sample.distance() * (1 - 1e-6);
            if (!own || !panel.hasMaterialAt(x, y)) {
                break;
            }
            Optional<Zone> there = panel.zoneAt(x, y);
            if (read.isEmpty()) {
                zone = there;
            } else if (!there.equals(zone)) {
                break;
            }
            read.add(new Stations.Sample(x, y, sample.weight()));
        }
        if (!read.isEmpty()) {
            Stations.Sample middle = read.get(read.size() / 2);
            String words = around.words(middle.x(), middle.y());
            stations.add(
                    new Stations.Station(
                            words, middle.x(), middle.y(), judged, read, remark, false));
        }
    }
}
