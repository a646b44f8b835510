package org.coachskin.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityTest {

    /** A product and a sum. */
    private static final double ROUNDING = 1e-12;

    @ParameterizedTest
    @CsvSource({
        "12 mm, LENGTH, 0.012",
        "12mm, LENGTH, 0.012",
        "3/8 in, LENGTH, 0.009525",
        "2 3/8 in, LENGTH, 0.060325",
        "2 ft 3 1/2 in, LENGTH, 0.6985",
        "2-3/8 in, LENGTH, 0.060325",
        "2½ in, LENGTH, 0.0635",
        "3 in., LENGTH, 0.0762",
        "6' 2\", LENGTH, 1.8796",
        "1.2e3 mm, LENGTH, 1.2",
        "12\u00a0mm, LENGTH, 0.012",
        "0.9 m, LENGTH, 0.9",
        "9 oz/yd^2, AREAL_MASS, 0.30515172727",
        "1.5 oz/ft^2, AREAL_MASS, 0.45772759091",
        "300 g/m², AREAL_MASS, 0.3",
        "300 gsm, AREAL_MASS, 0.3",
        "2 lb/ft^3, DENSITY, 32.0369268",
        "60 kgf, FORCE, 588.399",
        "110 km/h, SPEED, 30.5555556",
        "40 N/mm, STIFFNESS, 40000",
        "500 N per m, FORCE_PER_LENGTH, 500",
        "0.3 lbf per in, FORCE_PER_LENGTH, 52.5380506",
        "3 months, TIME, 7889400",
        "149 degF, TEMPERATURE, 338.15",
        "2.5, RATIO, 2.5",
        "52 %, SHARE, 0.52",
        "0.52, SHARE, 0.52",
        "65 degC, TEMPERATURE, 338.15",
        "45 deg, ANGLE, 0.785398163",
    })
    void whatATapeAndALabelGive(String text, Dimension dimension, double si) {
        assertEquals(si, Quantity.parse(text, dimension), 1e-8 * si);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "12|LENGTH|no unit|12 mm",
                "12|LENGTH|no unit|mm, or cm, or m",
                "12,5 mm|LENGTH|decimal comma|12.5 mm",
                "2 ft 3,5 in|LENGTH|decimal comma|2 ft 3.5 in",
                "1,200 mm|LENGTH|thousands|1200 mm   or   1.200 mm",
                "12 kg|LENGTH|a mass; a length is wanted|mm",
                "64 g/m^2|DENSITY|a mass per area; a density|kg/m^3",
                "25 kg|FORCE|a mass; a force is wanted|kgf",
                "12 mmm|LENGTH|no unit that is known|mm",
                "12 m^2|LENGTH|no unit that is known|mm",
                "2.5 mm|RATIO|a length; a plain number is wanted|a number",
                "3/0 in|LENGTH|too large|mm",
                "inf mm|LENGTH|not a number|mm",
                "thick|LENGTH|not a number|mm",
                "1e999 mm|LENGTH|too large|mm",
                "NaN mm|LENGTH|not a number|mm",
            })
    void whatIsRefusedAndWhatToWrite(String text, Dimension dimension, String what, String fix) {
        QuantityException e =
                assertThrows(QuantityException.class, () -> Quantity.parse(text, dimension));
        assertTrue(String.valueOf(e.getMessage()).contains(what), e.toString());
        assertTrue(e.fix().contains(fix), e.fix());
    }

    @Property(tries = 200, seed = "20261125")
    void everyUnitReadsBackWhatItWrites(@ForAll @DoubleRange(min = 0.01, max = 1e6) double value) {
        for (Dimension dimension : Dimension.values()) {
            for (Unit unit : Unit.of(dimension)) {
                String text = String.format(Locale.ROOT, "%s %s", value, unit.symbol());
                double si = unit.toSi(value);
                assertEquals(si, Quantity.parse(text, dimension), ROUNDING * Math.abs(si), text);
            }
        }
    }
}
