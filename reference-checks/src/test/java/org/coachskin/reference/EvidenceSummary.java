package org.coachskin.reference;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.coachskin.reference.PublishedRow.Status;

/** The head of the evidence page: how many values, how many agree, how many differ and why. */
final class EvidenceSummary {

    /** How the rows of a chapter, or of all, go together with ours. */
    private static final class Count {
        int rows;
        int same;
        int within;
        int print;
        int theory;
        int choice;
        int shared;
        double sum;
        double worst;

        void add(PublishedRow row, double ours) {
            rows++;
            if (row.isTarget()) {
                boolean figure = row.sameFigure(ours);
                same += figure ? 1 : 0;
                within += figure ? 0 : 1;
                if (row.published() != 0) {
                    double share = Math.abs(ours / row.published() - 1);
                    shared++;
                    sum += share;
                    worst = Math.max(worst, share);
                }
            }
            print += row.status() == Status.PRINT ? 1 : 0;
            theory += row.status() == Status.THEORY ? 1 : 0;
            choice += row.status() == Status.CHOICE ? 1 : 0;
        }
    }

    private final Map<String, Count> chapters = new LinkedHashMap<>();
    private final Count all = new Count();
    private final int tables;

    EvidenceSummary(List<PublishedTable> tables) {
        this.tables = tables.size();
        for (PublishedTable table : tables) {
            Count chapter = chapters.computeIfAbsent(table.chapter(), any -> new Count());
            for (PublishedRow row : table.rows()) {
                double ours = table.ours(row.quantity());
                chapter.add(row, ours);
                all.add(row, ours);
            }
        }
    }

    String text() {
        Columns columns =
                new Columns(
                        "topic",
                        "values>",
                        "same figure>",
                        "within tolerance>",
                        "print is off>",
                        "another theory>",
                        "choice or test>",
                        "mean>",
                        "worst>");
        chapters.forEach((name, count) -> row(columns, name, count));
        row(columns, "all", all);
        return String.format(
                        Locale.ROOT,
                        """
                        %d published values in %d tables: %d of ours round to the printed figure, %d more lie within the
                        tolerance their table states and gives a reason for, %d differ. Of those that differ, in %d the print
                        is off: a second method, worked by hand, gives ours; in %d the print holds for another theory, which by
                        hand gives the print; %d are a rule's choice or a measurement. Each has its sentence below its table.
                        Mean and worst are differences of those that agree, over the printed value.

                        """,
                        all.rows,
                        tables,
                        all.same,
                        all.within,
                        all.print + all.theory + all.choice,
                        all.print,
                        all.theory,
                        all.choice)
                + columns.text();
    }

    private static void row(Columns columns, String name, Count count) {
        columns.row(
                name,
                Integer.toString(count.rows),
                Integer.toString(count.same),
                Integer.toString(count.within),
                Integer.toString(count.print),
                Integer.toString(count.theory),
                Integer.toString(count.choice),
                percent(count.shared == 0 ? 0 : count.sum / count.shared),
                percent(count.worst));
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.2f %%", 100 * share);
    }
}
