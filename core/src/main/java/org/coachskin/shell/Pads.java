package org.coachskin.shell;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.panel.Fitting;

/**
 * Hinges, latches, rests: each holds the mean displacement of its patch in some directions, with a
 * force spread evenly over the patch.
 */
final class Pads {

    private Pads() {}

    /** One direction of one pad. */
    static final class Hold {
        final Fitting.Pad pad;
        final Fitting.Direction direction;

        /** Product with the unknowns: the mean displacement [m]; one number an unknown. */
        final double[] mean;

        /** [N/m]; infinite for a rigid one. */
        final double stiffness;

        /** Middle of what of the pad lies on the panel [m]. */
        final double x;

        final double y;

        private Hold(
                Fitting.Pad pad,
                Fitting.Direction direction,
                double[] mean,
                double stiffness,
                double x,
                double y) {
            this.x = x;
            this.y = y;
            this.pad = pad;
            this.direction = direction;
            this.mean = mean;
            this.stiffness = stiffness;
        }

        boolean isRigid() {
            return Double.isInfinite(stiffness);
        }

        double of(double[] solution) {
            double sum = 0;
            for (int i = 0; i < mean.length; i++) {
                sum += mean[i] * solution[i];
            }
            return sum;
        }
    }

    /** Returns the holds of all pads among {@code fittings}. */
    static List<Hold> of(Model model, List<Fitting> fittings) {
        List<Hold> holds = new ArrayList<>();
        for (Fitting fitting : fittings) {
            if (fitting instanceof Fitting.Pad pad) {
                for (Fitting.Direction direction : Fitting.Direction.values()) {
                    if (pad.held().contains(direction)) {
                        holds.add(hold(model, pad, direction));
                    }
                }
            }
        }
        return holds;
    }

    private static int axis(Fitting.Direction direction) {
        return switch (direction) {
            case X -> 0;
            case Y -> 1;
            case Z -> 2;
        };
    }

    private static Hold hold(Model model, Fitting.Pad pad, Fitting.Direction direction) {
        double[] mean = new double[model.unknowns.count];
        double area = 0;
        double x = 0;
        double y = 0;
        for (int t = 0; t < model.grid.triangles(); t++) {
            double[] c = model.grid.centre(t);
            if (Math.abs(c[0] - pad.x()) < pad.sizeX() / 2
                    && Math.abs(c[1] - pad.y()) < pad.sizeY() / 2) {
                Section section = model.section(t);
                double[] turn = section.turn(Holding.height(section, pad.height()));
                double[] field = new double[Section.FIELDS];
                int axis = axis(direction);
                field[axis] = 1;
                if (direction != Fitting.Direction.Z) {
                    field[3 + axis] = turn[0];
                    field[5 + axis] = turn[1];
                }
                model.addEven(t, field, mean);
                area += model.area(t);
                x += model.area(t) * c[0];
                y += model.area(t) * c[1];
            }
        }
        if (area == 0) {
            throw new IllegalArgumentException(pad.name() + " does not touch the panel");
        }
        for (int i = 0; i < mean.length; i++) {
            mean[i] /= area;
        }
        return new Hold(pad, direction, mean, pad.stiffness(), x / area, y / area);
    }
}
