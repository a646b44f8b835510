package org.coachskin.cli;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.check.Movement;
import org.coachskin.check.Verdict;

/** Where a movement comes from, in the words of the page. */
record MovementParts(Movement movement, List<Part> parts) {

    /** A seal that gives less than this share is not named. */
    private static final double LEAST = 0.001;

    /**
     * One part.
     *
     * @param words what gives
     * @param movement by how much, positive the way the whole moves [m]
     * @param share of the whole [-]
     */
    record Part(String words, double movement, double share) {}

    static MovementParts of(Verdict verdict, Movement movement) {
        double total = Math.abs(movement.total());
        double sign = Math.signum(movement.total());
        boolean bare = verdict.job().panel().laminate().isBare();
        List<Part> parts = new ArrayList<>();
        String bending = (bare ? "cloth" : "skins") + " stretched and squeezed (bending)";
        parts.add(part(bending, sign * movement.bending(), total));
        if (!bare) {
            parts.add(
                    part(
                            "foam sliding between the skins (shear)",
                            sign * movement.sliding(),
                            total));
        }
        if (Math.abs(movement.seal()) > LEAST * total) {
            parts.add(part("rubber seal giving way", sign * movement.seal(), total));
        }
        if (movement.force() != 0 && !bare) {
            parts.add(part("skin sinking into the foam under it", sign * movement.dent(), total));
        }
        return new MovementParts(movement, parts);
    }

    private static Part part(String words, double movement, double total) {
        return new Part(words, movement, movement / total);
    }

    /** Returns what the whole is called: {@code the 5.1 mm under the palm comes from}. */
    String title(Figures figures) {
        return "the "
                + figures.movement(Math.abs(movement.total()))
                + " under "
                + Rows.called(movement.loadCase())
                + (movement.total() < 0 ? " (outward)" : "")
                + " comes from";
    }
}
