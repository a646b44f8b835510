package org.coachskin.panel;

import java.util.List;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;

/**
 * A skin turned round the raw edge of the foam: all its plies go on over the foam's thickness.
 * Where no foam comes to the edge, at a lip for example, there is nothing to turn it round.
 */
public sealed interface TurnedEdge {

    /** Returns the surface whose skin is turned: outside or inside. */
    Height skin();

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
