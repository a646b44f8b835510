package org.coachskin.check;

import java.util.Optional;
import org.coachskin.analysis.Response;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.SectionState;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Zone;

/**
 * How a panel is read near places where the theory has no limit, where stress and shear grow the
 * nearer one looks: sharp corners, ends of held edges and, for the shear of foam, the rims of pads.
 * Beside them a figure is the mean over a disc of radius max(thickness, 5 mm) whose middle keeps
 * one radius away. The disc stands for what is nearer.
 */
final class Reading {

    private static final double LEAST = 0.005;

    private Reading() {}

    /** How to read at a place. */
    enum Way {
        POINT,
        DISC,
        /** A disc beside it says what there is to say. */
        NOT
    }

    /**
     * Returns how to read.
     *
     * @param distance from what is sharp [m]
     * @param radius of the disc [m]
     */
    static Way way(double distance, double radius) {
        return distance >= 2 * radius ? Way.POINT : distance >= radius ? Way.DISC : Way.NOT;
    }

    /** Returns the radius of the disc [m]. */
    static double radius(Laminate laminate) {
        return Math.max(laminate.thickness(), LEAST);
    }

    /** Returns in words that a figure is a mean. */
    static String words(double radius) {
        return "the mean over a disc of "
                + Math.round(2000 * radius)
                + " mm; right at the corner or fitting the theory has no limit";
    }

    /**
     * Returns the mean state over a disc, from its middle and two rings of six places, as far as it
     * lies in the same zone.
     */
    static SectionState mean(Panel panel, Response response, double x, double y, double radius) {
        Optional<Zone> zone = panel.zoneAt(x, y);
        SectionState sum = response.state(x, y);
        int count = 1;
        for (int k = 0; k < 12; k++) {
            double r = radius * (k < 6 ? 0.5 : 0.87);
            double angle = Math.PI * (k + (k < 6 ? 0 : 0.5)) / 3;
            double px = x + r * StrictMath.cos(angle);
            double py = y + r * StrictMath.sin(angle);
            if (panel.hasMaterialAt(px, py) && panel.zoneAt(px, py).equals(zone)) {
                sum = sum.plus(response.state(px, py), 1);
                count++;
            }
        }
        return SectionState.ZERO.plus(sum, 1.0 / count);
    }
}
