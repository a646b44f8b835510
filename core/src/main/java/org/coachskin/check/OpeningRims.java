package org.coachskin.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coachskin.failure.OpenHole;
import org.coachskin.panel.Opening;
import org.coachskin.panel.Panel;
import org.coachskin.panel.RimPlace;
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
            for (RimPlace place : RimPlace.round(opening.shape())) {
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
