package org.coachskin.failure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.coachskin.Source;
import org.coachskin.Table;
import org.coachskin.TestStacks;
import org.coachskin.material.Strength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FactorsTest {

    @Test
    void everyRowOfTheTableIsUsedOnceAndSaysWhereItComesFrom() {
        Table table = Table.read(Factors.class, "factors.csv");
        assertEquals(Factors.On.values().length, table.size());
        for (Factors.On on : Factors.On.values()) {
            Factor factor = Factors.STANDARD.on(on);
            assertTrue(factor.value() > 1, on.name());
            assertFalse(factor.words().isBlank(), on.name());
            assertFalse(factor.source().work().isBlank(), on.name());
        }
    }

    @Test
    void aMinimumHasTheSmallerFactorSinceItsCautionIsInIt() {
        Strength mean = TestStacks.strength(1e8);
        Strength least =
                new Strength(1e8, Strength.Level.MINIMUM, Strength.Event.BREAKING, mean.source());
        assertTrue(Factors.STANDARD.skin(least).value() < Factors.STANDARD.skin(mean).value());
    }

    @Test
    void oneThatIsGivenLeavesTheOthers() {
        Factors given = Factors.STANDARD.with(Factors.On.BOND, 4);
        assertEquals(4, given.on(Factors.On.BOND).value());
        assertEquals(Source.YOURS, given.on(Factors.On.BOND).source());
        assertEquals(Factors.STANDARD.on(Factors.On.CRUSHING), given.on(Factors.On.CRUSHING));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -2, 0.99, 20.1, Double.NaN, Double.POSITIVE_INFINITY})
    void nonsenseIsRefused(double value) {
        assertThrows(
                IllegalArgumentException.class,
                () -> Factors.STANDARD.with(Factors.On.CRUSHING, value));
    }

    @Test
    void noneMayBeLeftOut() {
        assertThrows(IllegalArgumentException.class, () -> new Factors(Map.of()));
    }
}
