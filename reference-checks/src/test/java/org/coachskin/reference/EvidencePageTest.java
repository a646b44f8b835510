package org.coachskin.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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
        List<PublishedTable> tables = AllTables.all();
        StringBuilder page =
                new StringBuilder(
                        """
                # Evidence: published numbers and ours

                Written by `EvidencePageTest` from the tables beside it and held by it; do not edit.

                """);
        page.append(new EvidenceSummary(tables).text());
        page.append(
                """

                How to read it: `S` or `a/h` is side over thickness; `s` with an index is a stress, `w` a deflection, `M` a
                moment per width, `A`, `B`, `D` the stiffnesses of a stack in its plane, coupled and in bending. `CLPT` is plate
                theory without shear through the thickness, `FSDT` with it, the whole section turning as one (first-order);
                in the layered theory the skins turn together and the foam by itself. Published figures stand as printed, with
                their last noughts. "Same figure": ours rounds to the print. "Read" says how the number came to us; "from memory"
                means that it was not seen again in print.
                """);
        Map<String, List<PublishedTable>> chapters =
                tables.stream()
                        .collect(
                                Collectors.groupingBy(
                                        PublishedTable::chapter,
                                        LinkedHashMap::new,
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
        Columns columns =
                new Columns("quantity", "unit", "published>", "ours>", "difference>", "agreement");
        Columns why = new Columns("differs", "published>", "ours>", "by hand>", "why");
        boolean anyDiffers = false;
        for (PublishedRow row : table.rows()) {
            double ours = table.ours(row.quantity());
            columns.row(
                    row.quantity(),
                    row.unit(),
                    row.printed(),
                    beside(row, ours),
                    difference(row.published(), ours),
                    row.isTarget() && row.sameFigure(ours) ? "same figure" : row.status().words);
            if (!row.isTarget()) {
                anyDiffers = true;
                PublishedTable.Difference difference = table.difference(row);
                double byHand = difference.byHand();
                why.row(
                        row.quantity(),
                        row.printed(),
                        beside(row, ours),
                        Double.isNaN(byHand) ? "" : beside(row, byHand),
                        difference.why());
            }
        }
        page.append(columns.text());
        if (anyDiffers) {
            page.append('\n').append(why.text());
        }
        if (!table.remark().isEmpty()) {
            page.append('\n').append(table.remark()).append('\n');
        }
    }

    /** One figure more than the print carries. */
    private static String beside(PublishedRow row, double value) {
        BigDecimal print = new BigDecimal(row.printed());
        if (row.printed().contains("e")) {
            return String.format(Locale.ROOT, "%." + print.precision() + "e", value)
                    .replaceFirst("e([+-])0*", "e$1")
                    .replace("e+", "e");
        }
        double small = Math.abs(value) < 1e-12 ? 0 : value;
        return String.format(Locale.ROOT, "%." + (print.scale() + 1) + "f", small);
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
