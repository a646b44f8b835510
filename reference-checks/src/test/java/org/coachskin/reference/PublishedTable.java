package org.coachskin.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * A published table and what we get for each of its rows.
 *
 * <p>The table is a CSV file beside this class. Its header holds five comment lines, {@code #
 * Source:}, {@code # Place:}, {@code # Provenance:}, {@code # Printed:} (what the print carries,
 * which is the reason of the tolerances) and {@code # Left out:}, each of which may go on in
 * further comment lines; then the heading {@code quantity,published,unit,tolerance,status} and the
 * rows. Quantities hold no comma; the number stands as printed, last noughts included; the status
 * is {@code agrees}, {@code print}, {@code theory} or {@code choice} ({@link PublishedRow.Status}),
 * and all but the first are explained with {@link #differs}.
 */
abstract class PublishedTable {

    private static final List<String> HEADER =
            List.of("Source", "Place", "Provenance", "Printed", "Left out");

    private final String file;
    private final Map<String, String> header = new LinkedHashMap<>();
    private final List<PublishedRow> rows = new ArrayList<>();
    private final Map<String, Difference> differences = new LinkedHashMap<>();

    /** Reads the table {@code file}, relative to this class. */
    PublishedTable(String file) {
        this.file = file;
        String key = "";
        boolean heading = false;
        for (String line : text(file).lines().toList()) {
            if (line.startsWith("#")) {
                String rest = line.substring(1).strip();
                int colon = rest.indexOf(':');
                if (colon > 0 && HEADER.contains(rest.substring(0, colon))) {
                    key = rest.substring(0, colon);
                    header.put(key, rest.substring(colon + 1).strip());
                } else {
                    header.merge(key, rest, (before, more) -> before + " " + more);
                }
            } else if (!heading) {
                assertEquals(
                        "quantity,published,unit,tolerance,status",
                        line.strip(),
                        "heading of " + file);
                heading = true;
            } else if (!line.isBlank()) {
                rows.add(row(line));
            }
        }
        assertEquals(HEADER, List.copyOf(header.keySet()), "header of " + file);
    }

    private PublishedRow row(String line) {
        String[] cells = line.split(",", -1);
        assertEquals(5, cells.length, file + ": " + line);
        return new PublishedRow(
                cells[0].strip(),
                cells[1].strip(),
                cells[2].strip(),
                Double.parseDouble(cells[3].strip()),
                PublishedRow.Status.of(cells[4].strip()));
    }

    private static String text(String file) {
        try (InputStream in = PublishedTable.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new AssertionError("no such table: " + file);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Returns the chapter of the evidence page this table belongs to, for example {@code Laminate}.
     */
    abstract String chapter();

    /** Returns what the table is about and by which method we answer, one line. */
    abstract String title();

    /** Returns our value for the row {@code quantity}, in the unit of the table. */
    abstract double ours(String quantity);

    /** Returns what is to be said beside the whole table; empty for nothing. */
    String remark() {
        return "";
    }

    /**
     * A row that is no target.
     *
     * @param byHand the figure by a second method that shares no code with the library; not a
     *     number where none can be derived
     * @param why one sentence of derivation
     */
    record Difference(double byHand, String why) {}

    /** Says why the row {@code quantity} is no target. */
    final void differs(String quantity, double byHand, String why) {
        differences.put(quantity, new Difference(byHand, why));
    }

    final Difference difference(PublishedRow row) {
        Difference found = differences.get(row.quantity());
        if (found == null) {
            throw new AssertionError("no derivation for: " + row.quantity());
        }
        return found;
    }

    final String header(String key) {
        return header.getOrDefault(key, "");
    }

    final List<PublishedRow> rows() {
        return List.copyOf(rows);
    }

    @TestFactory
    final List<DynamicTest> everyRowAgrees() {
        return rows.stream()
                .map(row -> DynamicTest.dynamicTest(row.quantity(), () -> check(row)))
                .toList();
    }

    /**
     * A target lies within its tolerance. A row that is none must differ, and its derivation must
     * hold: where the print is off the figure by hand is ours (within 1e-4 or a fifth of the
     * difference) and not the print; where the theory is another the figure by hand is the print
     * (within its tolerance or a tenth of the difference).
     */
    private void check(PublishedRow row) {
        double published = row.published();
        double ours = ours(row.quantity());
        if (row.isTarget()) {
            assertEquals(published, ours, row.tolerance(), row.quantity());
            assertFalse(differences.containsKey(row.quantity()), row.quantity());
            return;
        }
        double gap = Math.abs(ours - published);
        Difference difference = difference(row);
        double byHand = difference.byHand();
        assertFalse(difference.why().isBlank(), row.quantity());
        assertTrue(gap > row.tolerance(), "agrees after all: " + row.quantity());
        switch (row.status()) {
            case PRINT -> {
                double off = Math.abs(byHand - published);
                assertTrue(off > row.tolerance(), "print is right: " + row.quantity());
                double near = Math.max(1e-4 * Math.abs(byHand), 0.2 * off);
                assertEquals(byHand, ours, near, row.quantity());
            }
            case THEORY ->
                    assertEquals(
                            published,
                            byHand,
                            Math.max(row.tolerance(), 0.1 * gap),
                            row.quantity());
            default -> assertTrue(Double.isNaN(byHand), row.quantity());
        }
    }
}
