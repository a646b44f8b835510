package org.coachskin.bench;

import java.util.List;
import java.util.Optional;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.Foam;
import org.coachskin.panel.Height;
import org.coachskin.panel.TurnedEdge;

/** One thing to do at the bench. Zones are told by their numbers in the job. */
public sealed interface Step {

    /** Returns what it adds to the part, foam aside. */
    default Weight weight() {
        return Weight.NONE;
    }

    /**
     * Resin on the cut foam.
     *
     * @param skin that comes over it
     */
    record SealCoat(Height skin, Weight weight) implements Step {}

    /**
     * A ply all over the panel.
     *
     * @param number in the order of laying, from 1
     * @param cut with what is trimmed
     */
    record Ply(int number, Schedule.Item item, Piece cut, Weight weight) implements Step {}

    /**
     * A ply in a zone, of the size that stays.
     *
     * @param zone as far as which it reaches
     * @param between whether it lies between both skins, where there is no foam
     * @param cut one or several
     * @param without zones in it that are laid otherwise: there it is cut out
     */
    record ZonePly(
            int zone,
            Schedule.Item item,
            boolean between,
            List<Piece> cut,
            List<Integer> without,
            Weight weight)
            implements Step {
        /** Copies the lists. */
        public ZonePly {
            cut = List.copyOf(cut);
            without = List.copyOf(without);
        }
    }

    /** The foam of a zone taken out, for both skins to meet. */
    record NoFoam(int zone) implements Step {}

    /**
     * A strip of the panel's foam glued on its inside.
     *
     * @param thickness [m]
     * @param bevel how much of each piece's width slopes down to nothing [m]
     * @param cut bevel and all; none for a ring that is no row of straight boards
     * @param without zones in it where there is none
     */
    record Strip(int zone, double thickness, double bevel, List<Piece> cut, List<Integer> without)
            implements Step {
        /** Copies the lists. */
        public Strip {
            cut = List.copyOf(cut);
            without = List.copyOf(without);
        }
    }

    /**
     * Something let in in place of the panel's foam.
     *
     * @param foam or solid; empty for the panel's own
     * @param thickness [m]
     * @param cut none for a ring that is no row of straight boards
     * @param without zones in it where there is none
     */
    record Insert(
            int zone, Optional<Foam> foam, double thickness, List<Piece> cut, List<Integer> without)
            implements Step {
        /** Copies the lists. */
        public Insert {
            cut = List.copyOf(cut);
            without = List.copyOf(without);
        }
    }

    /**
     * A skin with all its plies turned round the raw foam.
     *
     * @param edge which skin, round which edge
     * @param over how far it goes, at most: over the foam's thickness and onto the other skin [m]
     */
    record Hem(TurnedEdge edge, double over, Weight weight) implements Step {}
}
