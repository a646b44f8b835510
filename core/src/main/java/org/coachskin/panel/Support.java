package org.coachskin.panel;

import java.util.List;

/** What holds a panel. */
public sealed interface Support {

    /**
     * The whole rim is carried: along every edge the deflection, the displacement along the edge
     * and the rotations along the edge (of skins and foam) are zero; the displacement and the
     * rotations at right angles to the edge are free.
     */
    record WholeRim() implements Support {}

    /**
     * Hinges, latches, seals, held edges, in any combination.
     *
     * @param fittings at least one
     */
    record Fittings(List<Fitting> fittings) implements Support {
        /** Copies the list and checks that there is one. */
        public Fittings {
            fittings = List.copyOf(fittings);
            if (fittings.isEmpty()) {
                throw new IllegalArgumentException("nothing holds the panel");
            }
        }
    }

    /** Returns the fittings, edge by edge for a rim carried all round. */
    default List<Fitting> fittings() {
        if (this instanceof Fittings some) {
            return some.fittings();
        }
        return List.of(
                Fitting.HeldEdge.carried(Edge.FRONT),
                Fitting.HeldEdge.carried(Edge.REAR),
                Fitting.HeldEdge.carried(Edge.LEFT),
                Fitting.HeldEdge.carried(Edge.RIGHT));
    }

    /** Returns the pads among the fittings. */
    default List<Fitting.Pad> pads() {
        return fittings().stream()
                .filter(Fitting.Pad.class::isInstance)
                .map(Fitting.Pad.class::cast)
                .toList();
    }
}
