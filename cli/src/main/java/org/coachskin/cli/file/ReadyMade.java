package org.coachskin.cli.file;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coachskin.Source;
import org.coachskin.Standing;
import org.coachskin.units.Dimension;
import org.coachskin.units.Quantity;

/**
 * One of the words that say what holds an edge, as the table has it; a number that does not belong
 * to it is empty.
 *
 * @param word as it is written under {@code held}
 * @param pad side of the square pad of hinge or latch [m]
 * @param force of a rubber seal at its working squeeze [N/m]
 * @param squeezed working squeeze [m]
 * @param solid squeeze at which the rubber goes solid [m]
 * @param stiffer how many times stiffer it is from there on [-]
 * @param what what it is, in plain words
 * @param source where the figures come from
 */
public record ReadyMade(
        String word,
        OptionalDouble pad,
        OptionalDouble force,
        OptionalDouble squeezed,
        OptionalDouble solid,
        OptionalDouble stiffer,
        String what,
        Source source) {

    private static final List<ReadyMade> ALL = read();

    /** Returns the whole table. */
    public static List<ReadyMade> all() {
        return ALL;
    }

    static List<String> words() {
        return ALL.stream().map(ReadyMade::word).toList();
    }

    static Optional<ReadyMade> named(String word) {
        return ALL.stream().filter(each -> each.word.equals(word)).findFirst();
    }

    /** Returns a row that the table always has. */
    static ReadyMade row(String word) {
        return named(word).orElseThrow();
    }

    private static List<ReadyMade> read() {
        List<ReadyMade> rows = new ArrayList<>();
        InputStream in =
                Objects.requireNonNull(ReadyMade.class.getResourceAsStream("fittings.csv"));
        try (BufferedReader reader =
                new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            reader.lines().skip(1).forEach(line -> rows.add(row(line.split(";", -1))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return List.copyOf(rows);
    }

    private static ReadyMade row(String[] cells) {
        if (!cells[8].equals("common practice")) {
            throw new IllegalStateException("standing of " + cells[0]);
        }
        return new ReadyMade(
                cells[0],
                number(cells[1], Dimension.LENGTH),
                number(cells[2], Dimension.FORCE_PER_LENGTH),
                number(cells[3], Dimension.LENGTH),
                number(cells[4], Dimension.LENGTH),
                number(cells[5], Dimension.RATIO),
                cells[6],
                new Source(cells[7], "", Standing.COMMON_PRACTICE));
    }

    private static OptionalDouble number(String text, Dimension dimension) {
        return text.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Quantity.parse(text, dimension));
    }
}
