package org.coachskin.failure;

import java.util.List;
import org.coachskin.Source;
import org.coachskin.Table;

/**
 * Where a skin is read beside a hole: it breaks, not when the stress right at the rim reaches its
 * strength, but when the stress a small distance away does (point), or the mean over a somewhat
 * larger one (Whitney and Nuismer 1974). Both distances are measured on laminates; those of {@code
 * open-hole.csv} are for prepreg glass/epoxy and stand here for hand-laid cloth as an assumption.
 *
 * @param point distance from the rim of the place that counts [m]
 * @param mean width of the strip beside the rim whose mean counts [m]
 * @param source where they come from
 */
public record OpenHole(double point, double mean, Source source) {

    /** The distances of the table. */
    public static final OpenHole STANDARD = standard();

    /** Gauss's nodes and weights on 0 to 1. */
    private static final double[] NODES = {
        0.06943184420297371, 0.33000947820757187, 0.6699905217924281, 0.9305681557970263
    };

    private static final double[] WEIGHTS = {
        0.17392742256872692, 0.32607257743127305, 0.32607257743127305, 0.17392742256872692
    };

    private static OpenHole standard() {
        Table table = Table.read(OpenHole.class, "open-hole.csv");
        return new OpenHole(
                table.number(0, "distance"), table.number(1, "distance"), table.source(1));
    }

    /**
     * One of the places whose weighted sum is the mean.
     *
     * @param distance from the rim [m]
     * @param weight all weights together are 1 [-]
     */
    public record Sample(double distance, double weight) {}

    /**
     * Returns places for the mean, nearer to one another at the rim: a polynomial of the third
     * degree in the distance comes out whole, and one that grows without end toward a sharp corner,
     * as its root or less, within a per cent.
     */
    public List<Sample> samples() {
        Sample[] samples = new Sample[NODES.length];
        for (int i = 0; i < samples.length; i++) {
            samples[i] = new Sample(mean * NODES[i] * NODES[i], 2 * NODES[i] * WEIGHTS[i]);
        }
        return List.of(samples);
    }
}
