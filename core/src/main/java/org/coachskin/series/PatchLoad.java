package org.coachskin.series;

import org.coachskin.NoAnswerException;
import org.coachskin.Problem;
import org.coachskin.laminate.Patch;
import org.coachskin.laminate.ThermalState;
import org.coachskin.laminate.Triple;
import org.coachskin.panel.Load;
import org.coachskin.panel.Panel;

/** One load: pressure outward [Pa] on a rectangle, or the free bow [1/m] of the whole panel. */
record PatchLoad(double strength, double x1, double x2, double y1, double y2, Triple bow) {

    boolean isBow() {
        return !bow.equals(Triple.ZERO);
    }

    /** Returns the same load with x and y exchanged. */
    PatchLoad turned() {
        return new PatchLoad(strength, y1, y2, x1, x2, new Triple(bow.y(), bow.x(), bow.xy()));
    }

    /** Returns a load as the series takes it; a disc becomes the square of equal area. */
    static PatchLoad of(Panel panel, Load load) {
        double a = panel.width();
        double b = panel.length();
        if (load instanceof Load.Press press) {
            double hx = press.patch().halfX();
            double hy = press.patch().halfY();
            if (press.patch() instanceof Patch.Disc) {
                hx = Math.sqrt(press.patch().area()) / 2;
                hy = hx;
            }
            double x1 = press.x() - hx;
            double x2 = press.x() + hx;
            double y1 = press.y() - hy;
            double y2 = press.y() + hy;
            double slack = 1e-9 * (a + b);
            if (x1 < -slack || y1 < -slack || x2 > a + slack || y2 > b + slack) {
                throw new IllegalArgumentException(
                        "the patch reaches over the edge of "
                                + panel.name()
                                + ": x "
                                + x1
                                + " to "
                                + x2
                                + " m, y "
                                + y1
                                + " to "
                                + y2
                                + " m");
            }
            double pressure = press.force() / ((x2 - x1) * (y2 - y1));
            return new PatchLoad(
                    -pressure,
                    Math.max(x1, 0),
                    Math.min(x2, a),
                    Math.max(y1, 0),
                    Math.min(y2, b),
                    Triple.ZERO);
        }
        if (load instanceof Load.Pressure pressure) {
            return new PatchLoad(-pressure.pressure(), 0, a, 0, b, Triple.ZERO);
        }
        if (load instanceof Load.StripPressure strip) {
            if (strip.to() > b * (1 + 1e-9)) {
                throw new IllegalArgumentException(
                        "the strip reaches over the rear edge of "
                                + panel.name()
                                + ": "
                                + strip.to()
                                + " m of "
                                + b
                                + " m");
            }
            double rear = Math.min(strip.to(), b);
            return new PatchLoad(-strip.pressure(), 0, a, strip.from(), rear, Triple.ZERO);
        }
        if (load instanceof Load.OwnWeight weight) {
            return new PatchLoad(
                    -weight.inward() * panel.laminate().mass(), 0, a, 0, b, Triple.ZERO);
        }
        if (load instanceof Load.Line) {
            throw new NoAnswerException(
                    new Problem(
                            "",
                            "",
                            "A load along a line is outside what the series can do.",
                            "Ask elements, or press a narrow patch."));
        }
        Load.Heat heat = (Load.Heat) load;
        Triple bow = ThermalState.of(panel.laminate(), heat.inside(), heat.outside()).curvature();
        return new PatchLoad(1, 0, a, 0, b, bow);
    }
}
