package org.coachskin.panel;

import java.util.List;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;

/**
 * A skin turned round the raw edge of the foam: all its plies go on over the foam's thickness and
 * {@link #OVERLAP} onto the other skin. Where no foam comes to the edge, at a lip for example,
 * there is nothing to turn it round.
 */
public sealed interface TurnedEdge {

    /** How far a skin laps over another to hold on it [m] [common practice, no source]. */
    double OVERLAP = 0.02;

    /** Returns the surface whose skin is turned: outside or inside. */
    Height skin();

    /** Returns how far plies go on past the edge of a stack [m]. */
    static double reach(Laminate stack) {
        return stack.foamThickness() + OVERLAP;
    }

    /**
     * Returns how far a layer goes on past the edge of a stack: a seal coat is on foam alone [m].
     */
    static double reach(Laminate stack, Layer layer) {
        return layer instanceof Layer.SealCoat ? stack.foamThickness() : reach(stack);
    }

    /** Returns what is turned of a stack, from its inside to its outside. */
    default List<Layer> layers(Laminate stack) {
        return skin().skin(stack);
    }

    /**
     * A skin turned round one edge of the panel.
     *
     * @param edge which edge
     * @param skin outside or inside
     */
    record Along(Edge edge, Height skin) implements TurnedEdge {
        /** Refuses mid-height. */
        public Along {
            check(skin);
        }
    }

    /**
     * A skin turned in round the rim of an opening.
     *
     * @param opening its name
     * @param skin outside or inside
     */
    record Round(String opening, Height skin) implements TurnedEdge {
        /** Refuses mid-height. */
        public Round {
            check(skin);
        }
    }

    private static void check(Height skin) {
        if (skin == Height.MIDDLE) {
            throw new IllegalArgumentException(
                    "the skin that is turned is the outside or the inside one");
        }
    }
}
