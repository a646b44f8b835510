package org.coachskin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "one more 339 g ply inside | one more 10 oz/yd^2 ply inside",
                "2 more 339 g plies inside | 2 more 10 oz/yd^2 plies inside",
                "1 more 339 g inside, 1 more outside | 1 more 10 oz/yd^2 inside, 1 more outside",
                "2 more 339 g at 45 degrees inside, 1 more outside"
                        + "| 2 more 10 oz/yd^2 at 45 degrees inside, 1 more outside",
                "seal coat 300 g/m^2 on each face | seal coat 8.8 oz/yd^2 on each face",
                "plain glass 339 g/m^2 | plain glass 10 oz/yd^2",
                "mat glass 458 g/m^2 | mat glass 1.5 oz/ft^2",
                "\"plain glass 10 oz/yd^2\" is plain glass 339 g/m^2"
                        + "| \"plain glass 10 oz/yd^2\" is plain glass 339 g/m^2",
                "of two within 5 g the one that | of two within 0.2 oz the one that",
                "foam 96 kg/m^3 let in | foam 6.0 lb/ft^3 let in",
                "foam 96 kg/m^3 instead of 64 | foam 6.0 lb/ft^3 instead of 4.0 lb/ft^3",
                "50 N per m instead of 100 | 3.4 lbf/ft instead of 6.9 lbf/ft",
                "50 N per m squeezed by 6 mm | 3.4 lbf/ft squeezed by 0.24 in"
            })
    void wordsOfTheLibraryAreInOneSystem(String metric, String american) {
        assertEquals(american, Figures.US.words(metric));
        assertEquals(metric, Figures.METRIC.words(metric));
    }
}
