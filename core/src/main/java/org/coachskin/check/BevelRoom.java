package org.coachskin.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.coachskin.panel.Bevel;
import org.coachskin.panel.Bevels;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Shape;
import org.coachskin.panel.Stretch;
import org.coachskin.panel.Zone;

/** Bevels that find no room, or lie where a fitting or a rubber seal wants a flat surface. */
final class BevelRoom {

    /** A bevel is looked at in steps of this along the rim of its zone [m]. */
    private static final double STEP = 0.01;

    /** And in so many parts across it. */
    private static final int PARTS = 12;

    private static final String SEAL = "rubber seal";

    /** Less than this is not missed [m]. */
    private static final double MISSED = 5e-4;

    private final Panel panel;
    private final List<Bevel> bevels;

    private BevelRoom(Panel panel) {
        this.panel = panel;
        bevels = Bevels.of(panel, STEP).stream().filter(bevel -> bevel.step() > 0).toList();
    }

    /** Returns what to beware of, strip by strip. */
    static List<String> cautions(Panel panel) {
        BevelRoom room = new BevelRoom(panel);
        List<String> cautions = new ArrayList<>();
        for (Zone zone : panel.zones()) {
            List<Bevel> own =
                    room.bevels.stream().filter(bevel -> bevel.zone().equals(zone)).toList();
            Bevels.cut(panel, zone)
                    .filter(cut -> cut.missing() > MISSED)
                    .ifPresent(cut -> addCut(cut, cautions));
            room.addUnder(zone, own, cautions);
        }
        return cautions;
    }

    private static void addCut(Bevels.Cut cut, List<String> cautions) {
        Bevel bevel = cut.bevel();
        cautions.add(
                "The bevel of the "
                        + bevel.zone().name()
                        + ", "
                        + mm(bevel.reach())
                        + " long, has "
                        + mm(cut.room())
                        + " before "
                        + cut.before()
                        + ". It is counted as cut off there, "
                        + mm(bevel.step() * cut.missing() / bevel.reach())
                        + " thick. Make it steeper or the strip narrower, or let the strip go on to "
                        + cut.before()
                        + ".");
    }

    private void addUnder(Zone zone, List<Bevel> own, List<String> cautions) {
        Set<String> under = new HashSet<>();
        for (Bevel bevel : own) {
            double length = bevel.room(panel).length();
            for (int i = 0; i < PARTS; i++) {
                double d = length * (i + 0.5) / PARTS;
                addUnder(bevel.x(d), bevel.y(d), under);
            }
        }
        if (!under.isEmpty()) {
            List<String> named = new ArrayList<>();
            panel.support().pads().stream()
                    .map(Fitting.Pad::name)
                    .filter(under::contains)
                    .forEach(named::add);
            if (under.contains(SEAL)) {
                named.add(SEAL);
            }
            cautions.add(
                    "The bevel of the "
                            + zone.name()
                            + " runs under the "
                            + String.join(" and the ", named)
                            + ": what bears there bears on a slope and not on a flat. That is not "
                            + "worked out; end the strip and its bevel before it, or pack it level.");
        }
    }

    private void addUnder(double x, double y, Set<String> under) {
        for (Fitting.Pad pad : panel.support().pads()) {
            if (Math.abs(x - pad.x()) < pad.sizeX() / 2
                    && Math.abs(y - pad.y()) < pad.sizeY() / 2) {
                under.add(pad.name());
            }
        }
        if (panel.toRim(x, y) < Fitting.RubberSeal.CLEAR) {
            for (Fitting fitting : panel.support().fittings()) {
                if (fitting instanceof Fitting.RubberSeal seal
                        && seal.stretches().stream().anyMatch(stretch -> isBy(stretch, x, y))) {
                    under.add(SEAL);
                }
            }
        }
    }

    /** Returns whether a place near the rim is near this stretch of it. */
    private boolean isBy(Stretch stretch, double x, double y) {
        Edge edge = stretch.edge();
        double across = edge.alongX() ? y : x;
        boolean near = Math.abs(across - edge.position(panel)) < Fitting.RubberSeal.CLEAR;
        return panel.outline() instanceof Shape.Polygon
                || (near && stretch.holds(edge.alongX() ? x : y));
    }

    private static String mm(double metres) {
        return Math.round(1000 * metres) + " mm";
    }
}
