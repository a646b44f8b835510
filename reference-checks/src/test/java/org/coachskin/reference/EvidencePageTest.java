package org.coachskin.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Keeps {@code EVIDENCE.md} true: the page is written from the tables and from our own figures. Run
 * with {@code -Dcoachskin.renew=true} to write it anew on purpose.
 */
class EvidencePageTest {

    private static final Path PAGE = Path.of("EVIDENCE.md");

    @Test
    void thePageSaysWhatWeGet() throws IOException {
        String page = page();
        if (Boolean.getBoolean("coachskin.renew")) {
            Files.writeString(PAGE, page);
        }
        assertEquals(
                page,
                Files.readString(PAGE, StandardCharsets.UTF_8),
                "run with -Dcoachskin.renew=true");
    }

    private static String page() {
        StringBuilder page =
                new StringBuilder(
                        """
                # Evidence: published numbers and ours

                Written by `EvidencePageTest` from the tables beside it; do not edit. Each table gives its source, where
                and how it was read, and what the print carries. A disputed row is listed with our value and is not a target.
                """);
        List<PublishedTable> tables = AllTables.all();
        int rows = tables.stream().mapToInt(table -> table.rows().size()).sum();
        page.append(
                String.format(
                        Locale.ROOT, "%n%d published values in %d tables.%n", rows, tables.size()));
        Map<String, List<PublishedTable>> chapters =
                tables.stream()
                        .collect(
                                Collectors.groupingBy(
                                        PublishedTable::chapter,
                                        TreeMap::new,
                                        Collectors.toList()));
        chapters.forEach(
                (chapter, inChapter) -> {
                    page.append("\n## ").append(chapter).append('\n');
                    inChapter.forEach(table -> append(page, table));
                });
        for (EvidenceSection section : AllTables.sections()) {
            page.append("\n## ")
                    .append(section.title())
                    .append("\n\n")
                    .append(section.text().strip())
                    .append('\n');
        }
        return page.toString();
    }

    private static void append(StringBuilder page, PublishedTable table) {
        page.append("\n### ").append(table.title()).append("\n\n");
        page.append("Source: ")
                .append(table.header("Source"))
                .append(". ")
                .append(table.header("Place"))
                .append("  \n");
        page.append("Read: ").append(table.header("Provenance")).append("  \n");
        page.append("Print carries: ").append(table.header("Printed")).append("  \n");
        page.append("Left out: ").append(table.header("Left out")).append("\n\n");
        page.append("| quantity | published | ours | difference |\n|---|---|---|---|\n");
        for (PublishedRow row : table.rows()) {
            double ours = table.ours(row.quantity());
            page.append(
                    String.format(
                            Locale.ROOT,
                            "| %s | %s %s | %s | %s%s |%n",
                            row.quantity(),
                            trimmed(row.published()),
                            row.unit(),
                            rounded(ours),
                            difference(row.published(), ours),
                            row.disputed() ? " (disputed)" : ""));
        }
        if (!table.remark().isEmpty()) {
            page.append('\n').append(table.remark()).append('\n');
        }
    }

    private static String trimmed(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e9
                ? String.format(Locale.ROOT, "%.0f", value)
                : Double.toString(value);
    }

    private static String rounded(double value) {
        return String.format(Locale.ROOT, "%.5g", value);
    }

    private static String difference(double published, double ours) {
        if (published == 0) {
            return Math.abs(ours) < 1e-9 ? "0" : String.format(Locale.ROOT, "%.2g", ours);
        }
        double percent = 100 * (ours - published) / Math.abs(published);
        return Math.abs(percent) < 0.005
                ? "0.00 %"
                : String.format(Locale.ROOT, "%+.2f %%", percent);
    }
}
