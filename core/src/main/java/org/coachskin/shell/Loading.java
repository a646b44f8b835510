package org.coachskin.shell;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Patch;
import org.coachskin.laminate.ThermalState;
import org.coachskin.laminate.Triple;
import org.coachskin.panel.Load;
import org.jspecify.annotations.Nullable;

/** Turns loads into forces on the unknowns of a model, and strains that are there without force. */
final class Loading {

    private static final int W = 2;

    private final Model model;
    private final EndWall wall;

    Loading(Model model, EndWall wall) {
        this.model = model;
        this.wall = wall;
    }

    /**
     * Adds a load.
     *
     * @param free strains without force, triangle by triangle; what heat adds is added, null where
     *     there is none
     */
    void add(Load part, double[] load, double[] @Nullable [] free) {
        int triangles = model.grid.triangles();
        if (part instanceof Load.Press press) {
            press(press, load);
        } else if (part instanceof Load.Pressure pressure) {
            model.addEven(t -> true, outward(-pressure.pressure()), load);
        } else if (part instanceof Load.StripPressure strip) {
            model.addEven(
                    t -> {
                        double y = model.grid.centre(t)[1];
                        return y > strip.from() && y < strip.to();
                    },
                    outward(-strip.pressure()),
                    load);
        } else if (part instanceof Load.Line line) {
            LineLoad.add(model, line, load);
        } else if (part instanceof Load.OwnWeight weight) {
            for (int t = 0; t < triangles; t++) {
                double perArea = weight.inward() * model.section(t).laminate.mass();
                model.addEven(t, outward(-perArea), load);
            }
            wall.addWeight(weight.inward(), load);
        } else if (part instanceof Load.Heat heat) {
            for (int t = 0; t < triangles; t++) {
                Laminate stack = model.section(t).laminate;
                Triple bow = ThermalState.of(stack, heat.inside(), heat.outside()).curvature();
                double[] strain = new double[Section.STRAINS];
                double z = model.section(t).reference;
                double[] parts = {bow.x(), bow.y(), bow.xy()};
                for (int i = 0; i < 3; i++) {
                    // Mid-height stays, so the reference surface stretches.
                    strain[i] = z * parts[i];
                    strain[3 + i] = parts[i];
                    strain[6 + i] = parts[i];
                }
                model.addStrain(t, strain, load);
                free[t] = free[t] == null ? strain : ShellPanel.sum(free[t], strain, 1);
            }
        }
    }

    /** Returns fields of which the deflection alone has an intensity. */
    static double[] outward(double intensity) {
        double[] field = new double[Section.FIELDS];
        field[W] = intensity;
        return field;
    }

    /**
     * Spreads a force over the triangles that lie in its patch; the grid follows patches and
     * strips.
     */
    private void press(Load.Press press, double[] load) {
        List<Integer> under = new ArrayList<>();
        double area = 0;
        for (int t = 0; t < model.grid.triangles(); t++) {
            double[] c = model.grid.centre(t);
            double dx = c[0] - press.x();
            double dy = c[1] - press.y();
            boolean in =
                    press.patch() instanceof Patch.Disc disc
                            ? Math.hypot(dx, dy) < disc.diameter() / 2
                            : Math.abs(dx) < press.patch().halfX()
                                    && Math.abs(dy) < press.patch().halfY();
            if (in) {
                under.add(t);
                area += model.area(t);
            }
        }
        if (under.isEmpty()) {
            throw new IllegalArgumentException(
                    "a press at " + press.x() + ", " + press.y() + " m does not touch the panel");
        }
        for (int t : under) {
            model.addEven(t, outward(-press.force() / area), load);
        }
    }
}
