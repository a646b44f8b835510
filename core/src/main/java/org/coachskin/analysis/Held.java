package org.coachskin.analysis;

import java.util.List;
import org.coachskin.panel.Fitting;

/**
 * What hinges, latches and seals do under a load case, all that stands included.
 *
 * @param grips what each pad bears, direction by direction
 * @param seals places along rubber seals
 */
public record Held(List<Grip> grips, List<SealPlace> seals) {

    /** Nothing but held edges. */
    public static final Held NONE = new Held(List.of(), List.of());

    /** Copies the lists. */
    public Held {
        grips = List.copyOf(grips);
        seals = List.copyOf(seals);
    }

    /**
     * The force of a pad on the panel in one direction.
     *
     * @param name of the pad
     * @param direction X, Y or Z
     * @param force on the panel, positive along the axis: outward for Z [N]
     * @param x of the middle of what of the pad lies on the panel, from the left edge [m]
     * @param y the same from the front edge [m]
     */
    public record Grip(
            String name, Fitting.Direction direction, double force, double x, double y) {}

    /**
     * One place along a rubber seal.
     *
     * @param x from the left edge [m]
     * @param y from the front edge [m]
     * @param length of rim it stands for; 0 where it is only read [m]
     * @param squeeze of the rubber; negative where there is a gap [m]
     * @param force on the panel, outward [N/m]
     * @param solid whether the rubber has gone solid
     */
    public record SealPlace(
            double x, double y, double length, double squeeze, double force, boolean solid) {}

    /** Returns the widest gap between panel and seal [m]; 0 where it touches everywhere. */
    public double widestGap() {
        return seals.stream().mapToDouble(place -> Math.max(0, -place.squeeze())).max().orElse(0);
    }

    /** Returns the outward force of a pad on the panel [N]; 0 for one that holds neither way. */
    public double outward(String pad) {
        return grips.stream()
                .filter(grip -> grip.direction() == Fitting.Direction.Z && grip.name().equals(pad))
                .mapToDouble(Grip::force)
                .sum();
    }

    /** Returns the outward force of all seals on the panel [N]. */
    public double sealForce() {
        return seals.stream().mapToDouble(place -> place.force() * place.length()).sum();
    }
}
