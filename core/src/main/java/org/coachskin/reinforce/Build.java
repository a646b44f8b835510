package org.coachskin.reinforce;

import java.util.List;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.Foam;

/** What is laid or glued in a band. */
public sealed interface Build {

    /** Returns the row it is found in, in a few words. */
    String words();

    /** Nothing: a turned edge or a rounder corner alone. */
    record Nothing() implements Build {
        @Override
        public String words() {
            return "nothing more";
        }
    }

    /**
     * More plies, each ending before the one under it.
     *
     * @param ply which
     * @param inside how many on the inside
     * @param outside how many on the outside
     */
    record Plies(Schedule.Item ply, int inside, int outside) implements Build {
        @Override
        public String words() {
            String cloth = Words.cloth(ply);
            if (inside == 0 || outside == 0) {
                int count = inside + outside;
                return count
                        + " more "
                        + cloth
                        + (count == 1 ? " ply" : " plies")
                        + Words.turned(ply)
                        + (outside == 0 ? " inside" : " outside");
            }
            return inside
                    + " more "
                    + cloth
                    + Words.turned(ply)
                    + " inside, "
                    + outside
                    + " more outside";
        }

        /** Returns how many lie on one side at most. */
        int most() {
            return Math.max(inside, outside);
        }
    }

    /**
     * A strip of the panel's own foam glued on the inside, plies over it.
     *
     * @param thickness [m]
     * @param over in the order of laying
     * @param bevel how far it slopes at its edges, beyond its width [m]
     */
    record Strip(double thickness, List<Schedule.Item> over, double bevel) implements Build {
        /** Copies the list. */
        public Strip {
            over = List.copyOf(over);
        }

        @Override
        public String words() {
            return "foam strip " + Words.millimetres(thickness) + ", " + Words.over(over);
        }
    }

    /**
     * Denser foam or a solid in place of the panel's foam, as thick.
     *
     * @param foam which
     * @param over plies over it, in the order of laying
     */
    record Insert(Foam foam, List<Schedule.Item> over) implements Build {
        /** Copies the list. */
        public Insert {
            over = List.copyOf(over);
        }

        @Override
        public String words() {
            String what =
                    foam.kind() == Foam.Kind.OTHER
                            ? foam.name() + " insert"
                            : "foam " + Math.round(foam.density()) + " kg/m^3 let in";
            return over.isEmpty() ? what : what + ", " + Words.over(over);
        }
    }

    /**
     * More plies between the two skins of a lip.
     *
     * @param ply which
     * @param count how many
     */
    record InLip(Schedule.Item ply, int count) implements Build {
        @Override
        public String words() {
            return count
                    + " more "
                    + Words.cloth(ply)
                    + (count == 1 ? " ply" : " plies")
                    + Words.turned(ply)
                    + " in the lip";
        }
    }
}
