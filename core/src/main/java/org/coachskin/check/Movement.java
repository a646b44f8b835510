package org.coachskin.check;

/**
 * Where the movement under a load comes from. The parts add up to {@code total}.
 *
 * @param loadCase the load
 * @param force the force [N], or 0 for a load that is spread
 * @param total how far the outside surface goes in under the load [m]
 * @param bending skins stretched, squeezed and bent [m]
 * @param sliding foam sliding between the skins [m]
 * @param seal rubber seal giving way [m]
 * @param dent skin sinking into the foam under the patch [m]
 * @param at where it is told of: under a press, or where a load that is spread moves the panel most
 */
public record Movement(
        String loadCase,
        double force,
        double total,
        double bending,
        double sliding,
        double seal,
        double dent,
        Place at) {

    /** Returns force over movement [N/m]; infinite where nothing moves. */
    public double stiffness() {
        return force / total;
    }
}
