package org.coachskin.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.coachskin.check.HonestyStudy.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What the verdict says of the error of its elements, against what is far more exact. Some panels
 * are answered anew each time; the whole table is worked out with {@code -Dcoachskin.honest=true},
 * in a quarter of an hour.
 */
class HonestEstimatesTest {

    private static final Path FILE = Path.of("src/test/resources" + HonestyStudy.TABLE);

    private static final List<Row> ROWS = HonestyStudy.stored();

    /** What the digits of the table leave of a figure. */
    private static final double PRINTED = 1e-8;

    @Test
    @EnabledIfSystemProperty(named = "coachskin.honest", matches = "true")
    void writesTheTable() throws IOException {
        String rows =
                IntStream.range(HonestyStudy.FIRST, HonestyStudy.FIRST + HonestyStudy.PANELS)
                        .mapToObj(HonestyStudy::solve)
                        .flatMap(List::stream)
                        .map(Row::line)
                        .collect(Collectors.joining());
        Files.writeString(FILE, HonestyStudy.head() + rows);
    }

    @Test
    void thereAreTwoHundredFiguresOfFortyPanels() {
        assertTrue(ROWS.size() >= 200, ROWS.size() + " figures");
        assertTrue(ROWS.stream().mapToInt(Row::panel).distinct().count() >= 40);
    }

    static List<String> kinds() {
        return HonestyStudy.kinds();
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void theErrorLiesUnderTheEstimateInNineteenOfTwenty(String kind) {
        HonestShares shares = HonestShares.of(ROWS, kind);
        System.out.println(shares.words());
        assertTrue(shares.under() >= 0.95, shares.words());
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void theEstimateIsAtMostTenTimesTheErrorAtTheMedian(String kind) {
        HonestShares shares = HonestShares.of(ROWS, kind);
        assertTrue(shares.medianRatio() <= 10, shares.words());
    }

    /** The table must not have been left behind by the library. */
    @ParameterizedTest
    @ValueSource(
            ints = {
                HonestyStudy.FIRST + 1,
                HonestyStudy.FIRST + 4,
                HonestyStudy.FIRST + 6,
                HonestyStudy.FIRST + 7,
                HonestyStudy.FIRST + 15
            })
    void theTableIsWhatTheElementsSayToday(int panel) {
        HonestyStudy.Answered now = HonestyStudy.usual(panel);
        List<Row> stored = ROWS.stream().filter(row -> row.panel() == panel).toList();
        assertTrue(stored.size() > 5);
        for (Row row : stored) {
            double value = now.value(row.figure());
            assertEquals(row.usual(), value, PRINTED * row.unit(), row.figure());
            double error = now.error(row.figure());
            assertEquals(row.estimate(), error, 0.01 * error + PRINTED, row.figure());
        }
    }
}
