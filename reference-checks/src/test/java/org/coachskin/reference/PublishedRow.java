package org.coachskin.reference;

import java.math.BigDecimal;

/**
 * One published number.
 *
 * @param quantity what it is; the key by which a test finds the row
 * @param printed the number as printed, last noughts included
 * @param unit its unit as printed; empty for a pure number
 * @param tolerance largest difference allowed, in the same unit; the header of the file gives the
 *     reason
 * @param status whether ours agrees and if not why
 */
record PublishedRow(String quantity, String printed, String unit, double tolerance, Status status) {

    /** How a published number and ours go together. */
    enum Status {
        /** Within the tolerance: a target. */
        AGREES("within what the print carries"),
        /** A second method, by hand, gives ours and not the print. */
        PRINT("print is off"),
        /** Another theory, worked out by hand, gives the print; ours is another one. */
        THEORY("another theory"),
        /** A rule's choice or a measurement: nothing that could be derived. */
        CHOICE("a choice or a test");

        final String words;

        Status(String words) {
            this.words = words;
        }

        static Status of(String name) {
            return valueOf(name.toUpperCase(java.util.Locale.ROOT));
        }
    }

    double published() {
        return Double.parseDouble(printed);
    }

    /** Whether ours rounds to what is printed: it lies within half a unit of its last place. */
    boolean sameFigure(double ours) {
        double half = new BigDecimal(printed).ulp().doubleValue() / 2;
        return Math.abs(ours - published()) <= half * (1 + 1e-9);
    }

    boolean isTarget() {
        return status == Status.AGREES;
    }
}
