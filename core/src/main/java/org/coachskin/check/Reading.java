package org.coachskin.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Zone;

/**
 * How a panel is read near places where the theory has no limit, where stress and shear grow the
 * nearer one looks: sharp corners, ends of held edges and, for what foam bears, the rims of pads.
 *
 * <p><b>Reading rule.</b> Beside them a figure is the mean over a disc of radius max(thickness, 5
 * mm) whose middle keeps one radius away. The disc stands for what is nearer; nearer to a pad than
 * that punching is judged ({@link Hardware}). Skins at the rim of an opening go by {@link
 * OpeningRims}.
 */
final class Reading {

    private static final double LEAST = 0.005;

    private final Panel panel;
    private final Surroundings around;

    Reading(Panel panel, Surroundings around) {
        this.panel = panel;
        this.around = around;
    }

    /** Adds a place as it is read beside sharp places; none where a disc stands for it. */
    void besideSharpPlaces(Stations.Station at, List<Stations.Station> read) {
        double radius = radius(at);
        double distance = around.toSharp(at.x(), at.y());
        if (distance >= 2 * radius) {
            read.add(at);
        } else if (distance >= radius) {
            read.add(disc(at, radius, Stations.Judged.ALL));
        }
    }

    /** Adds a place as it is read beside sharp places and pads. */
    void besideAll(Stations.Station at, List<Stations.Station> read) {
        double radius = radius(at);
        double distance = around.toPad(at.x(), at.y());
        if (distance >= 2 * radius || around.toSharp(at.x(), at.y()) < 2 * radius) {
            besideSharpPlaces(at, read);
            return;
        }
        read.add(at.judged(Stations.Judged.SKINS));
        if (distance >= radius) {
            read.add(disc(at, radius, Stations.Judged.FOAM));
        }
    }

    /**
     * Adds a place chosen for what a pad does by itself: the plies there, and the shear of foam as
     * it is read beside pads.
     */
    void byPad(Stations.Station at, List<Stations.Station> read) {
        double radius = radius(at);
        if (around.toSharp(at.x(), at.y()) < 2 * radius) {
            return;
        }
        read.add(at.judged(Stations.Judged.PLIES));
        if (around.toPad(at.x(), at.y()) >= radius * (1 - 1e-9)) {
            read.add(disc(at, radius, Stations.Judged.FOAM_SHEAR));
        }
    }

    private double radius(Stations.Station at) {
        return Math.max(panel.laminateAt(at.x(), at.y()).thickness(), LEAST);
    }

    /** The middle and two rings of six places, as far as they lie in the same zone. */
    private Stations.Station disc(Stations.Station at, double radius, Stations.Judged judged) {
        Optional<Zone> zone = panel.zoneAt(at.x(), at.y());
        List<Stations.Sample> samples = new ArrayList<>();
        samples.add(new Stations.Sample(at.x(), at.y(), 1));
        for (int k = 0; k < 12; k++) {
            double r = radius * (k < 6 ? 0.5 : 0.87);
            double angle = Math.PI * (k + (k < 6 ? 0 : 0.5)) / 3;
            double x = at.x() + r * StrictMath.cos(angle);
            double y = at.y() + r * StrictMath.sin(angle);
            if (panel.hasMaterialAt(x, y) && panel.zoneAt(x, y).equals(zone)) {
                samples.add(new Stations.Sample(x, y, 1));
            }
        }
        String remark =
                "the mean over a circle " + Math.round(2000 * radius) + " mm across beside it";
        return new Stations.Station(at.words(), at.x(), at.y(), judged, samples, remark, at.spot());
    }
}
