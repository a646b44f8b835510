package org.coachskin.shell;

import org.coachskin.analysis.Response.Spot;

/** The shape in which a panel vibrates or buckles by itself. Immutable; safe to share. */
public final class ModeShape {

    private final ShellResponse shape;
    private final double scale;

    ModeShape(ShellPanel shell, double[] vector) {
        shape = new ShellResponse(shell, vector, new double[shell.model.grid.triangles()][]);
        double most = 0;
        for (Spot spot : shape.spots()) {
            double w = shape.deflection(spot.x(), spot.y());
            // The first of two alike decides the sign, whatever rounding does.
            if (Math.abs(w) > Math.abs(most) * (1 + 1e-6)) {
                most = w;
            }
        }
        scale = most == 0 ? 1 : 1 / most;
    }

    /**
     * Returns the deflection over the largest of seven places in every triangle [-]: 1 there, which
     * is inward.
     *
     * @param x from the left edge [m]
     * @param y from the front edge [m]
     * @throws IllegalArgumentException when there is no panel at this place
     */
    public double deflection(double x, double y) {
        return scale * shape.deflection(x, y);
    }
}
