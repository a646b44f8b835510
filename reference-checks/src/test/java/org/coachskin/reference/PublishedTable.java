package org.coachskin.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

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
 * rows. Quantities hold no comma.
 */
abstract class PublishedTable {

    private static final List<String> HEADER =
            List.of("Source", "Place", "Provenance", "Printed", "Left out");

    private final String file;
    private final Map<String, String> header = new LinkedHashMap<>();
    private final List<PublishedRow> rows = new ArrayList<>();

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
        String status = cells[4].strip();
        if (!List.of("agrees", "disputed").contains(status)) {
            throw new AssertionError(file + ": status of " + line);
        }
        return new PublishedRow(
                cells[0].strip(),
                Double.parseDouble(cells[1].strip()),
                cells[2].strip(),
                Double.parseDouble(cells[3].strip()),
                status);
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

    /** Returns what is to be said beside a disputed row or the whole table; empty for nothing. */
    String remark() {
        return "";
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
                .map(
                        row ->
                                DynamicTest.dynamicTest(
                                        row.quantity(),
                                        () -> {
                                            double ours = ours(row.quantity());
                                            if (row.disputed()) {
                                                // Listed with our derivation, not a target; a value
                                                // must come out all the same.
                                                assertEquals(
                                                        true,
                                                        Double.isFinite(ours),
                                                        row.quantity());
                                            } else {
                                                assertEquals(
                                                        row.published(),
                                                        ours,
                                                        row.tolerance(),
                                                        row.quantity());
                                            }
                                        }))
                .toList();
    }
}
