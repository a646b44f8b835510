package org.coachskin.panel;

import java.util.List;
import java.util.Set;
import org.coachskin.Require;

/** One thing that holds a panel. */
public sealed interface Fitting {

    /** What an edge may be held against. */
    enum Motion {
        /** Deflection. */
        DEFLECTION,
        /** Displacement along the edge. */
        ALONG,
        /** Displacement at right angles to the edge, in the panel. */
        ACROSS,
        /** Rotation of a cut across the edge: clamped together with the deflection. */
        TURN,
        /** Rotation of a cut along the edge. */
        TWIST
    }

    /** A direction in which a pad holds. */
    enum Direction {
        /** From left to right. */
        X,
        /** From front to rear. */
        Y,
        /** Inward and outward. */
        Z
    }

    /**
     * A stretch of edge held evenly and rigidly.
     *
     * @param stretch which part
     * @param held against what
     * @param height at which the displacements in the panel are held
     */
    record HeldEdge(Stretch stretch, Set<Motion> held, Height height) implements Fitting {
        /** Copies the set. */
        public HeldEdge {
            held = Set.copyOf(held);
        }

        /**
         * Returns an edge carried as along a whole carried rim: deflection, displacement along the
         * edge and rotation along it held, the rest free.
         */
        public static HeldEdge carried(Edge edge) {
            return new HeldEdge(
                    Stretch.whole(edge),
                    Set.of(Motion.DEFLECTION, Motion.ALONG, Motion.TWIST),
                    Height.MIDDLE);
        }

        /** Returns an edge held against everything. */
        public static HeldEdge clamped(Edge edge) {
            return new HeldEdge(Stretch.whole(edge), Set.of(Motion.values()), Height.MIDDLE);
        }
    }

    /**
     * A hinge, latch, rest or prop: a small rectangular patch whose mean displacement is held; it
     * turns freely.
     *
     * @param name for example {@code left hinge}
     * @param x of its centre, from the left edge [m]
     * @param y of its centre, from the front edge [m]
     * @param sizeX extent along x [m]
     * @param sizeY extent along y [m]
     * @param held in which directions
     * @param stiffness of each direction [N/m]; infinite for a rigid one
     * @param height at which it holds
     */
    record Pad(
            String name,
            double x,
            double y,
            double sizeX,
            double sizeY,
            Set<Direction> held,
            double stiffness,
            Height height)
            implements Fitting {
        /** Copies the set and checks the numbers. */
        public Pad {
            held = Set.copyOf(held);
            Require.finite("x of " + name, x, "m");
            Require.finite("y of " + name, y, "m");
            Require.positive("size of " + name, sizeX, "m");
            Require.positive("size of " + name, sizeY, "m");
            if (!(stiffness > 0)) {
                throw new IllegalArgumentException(name + " has no stiffness");
            }
        }

        /** Returns a rigid hinge at the inside surface, 40 x 40 mm, held in all directions. */
        public static Pad hinge(String name, double x, double y) {
            return new Pad(
                    name,
                    x,
                    y,
                    0.04,
                    0.04,
                    Set.of(Direction.values()),
                    Double.POSITIVE_INFINITY,
                    Height.INSIDE);
        }

        /** Returns a rigid latch at the inside surface, 40 x 40 mm, held inward and outward. */
        public static Pad latch(String name, double x, double y) {
            return new Pad(
                    name,
                    x,
                    y,
                    0.04,
                    0.04,
                    Set.of(Direction.Z),
                    Double.POSITIVE_INFINITY,
                    Height.INSIDE);
        }
    }

    /**
     * A rubber seal along the rim: it only pushes, outward, with a force per length that grows
     * evenly to {@code force} at {@code squeeze} and on to {@code solid}, and from there {@code
     * solidFactor} times as steeply. With nothing on the panel and the panel not bent the seal is
     * squeezed by {@code squeeze}.
     *
     * @param stretches where it runs
     * @param force per length at the working squeeze [N/m]
     * @param squeeze working squeeze [m]
     * @param solid squeeze at which the rubber goes solid [m]
     * @param solidFactor how many times stiffer it is from there on [-]
     */
    record RubberSeal(
            List<Stretch> stretches, double force, double squeeze, double solid, double solidFactor)
            implements Fitting {
        /**
         * What stands up on the inside keeps this far away from a rim that a seal runs along [m]
         * [common practice, no source].
         */
        public static final double CLEAR = 0.025;

        /** Copies the list and checks the numbers. */
        public RubberSeal {
            stretches = List.copyOf(stretches);
            Require.positive("force of the rubber seal", force, "N/m");
            Require.positive("squeeze of the rubber seal", squeeze, "m");
            if (!(solid >= squeeze) || !(solidFactor >= 1)) {
                throw new IllegalArgumentException(
                        "a rubber seal goes solid beyond its working squeeze, and stiffer");
            }
        }

        /** Returns the default seal all round: 50 N per m at 6 mm, solid at 9 mm, then 50 times. */
        public static RubberSeal allRound() {
            return new RubberSeal(Stretch.rim(), 50, 0.006, 0.009, 50);
        }

        /** Returns its stiffness before it is solid [N/m per m]. */
        public double stiffness() {
            return force / squeeze;
        }

        /** Returns the force per length at {@code squeezed} [N/m]. */
        public double forceAt(double squeezed) {
            if (squeezed <= 0) {
                return 0;
            }
            double soft = Math.min(squeezed, solid) * stiffness();
            return soft + Math.max(0, squeezed - solid) * solidFactor * stiffness();
        }
    }
}
