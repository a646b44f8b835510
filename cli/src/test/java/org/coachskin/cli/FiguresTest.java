package org.coachskin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Figures as a person reads them. */
class FiguresTest {

    @Test
    void aPartAgainstTheRestKeepsItsSign() {
        assertEquals("-0.04", Figures.METRIC.partOfMovement(-0.04e-3, 0.41e-3));
        assertEquals("0.00", Figures.METRIC.partOfMovement(-0.001e-3, 0.41e-3));
        assertEquals("0", Figures.METRIC.partOfMovement(-0.1e-3, 14e-3));
    }

    @Test
    void aPlaceIsToldNoFinerThanItIsWorth() {
        assertEquals("320 mm", Figures.METRIC.place(0.3172));
        assertEquals("12.5 in", Figures.US.place(0.3172));
    }

    @Test
    void whatAddsNothingIsNotSaid() {
        assertEquals("+64 g", Figures.METRIC.addedGrams(0.0641));
        assertEquals("-64 g", Figures.METRIC.addedGrams(-0.0641));
        assertEquals("", Figures.METRIC.addedGrams(-0.0001));
    }
}
