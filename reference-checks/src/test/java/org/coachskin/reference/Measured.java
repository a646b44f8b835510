package org.coachskin.reference;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A measured constant and ours for the same material.
 *
 * @param specimen what was measured
 * @param property which constant, with its unit
 * @param value as measured
 * @param scatter standard deviation of the measurement; 0 where none was printed
 * @param ours what the library gives
 * @param copied whether our table takes this very value, so that the row proves nothing
 */
record Measured(
        String specimen,
        String property,
        double value,
        double scatter,
        double ours,
        boolean copied) {

    double ratio() {
        return ours / value;
    }

    /** Returns whether ours lies within two standard deviations, as far as scatter is known. */
    private String verdict() {
        if (copied) {
            return "circular";
        }
        if (scatter == 0) {
            return "";
        }
        return Math.abs(ours - value) <= 2 * scatter ? "within" : "outside";
    }

    /** Returns the ratios of ours to the measured values by property, circular rows left out. */
    static Map<String, Ratios> ratios(List<Measured> rows) {
        Map<String, Ratios> byProperty = new LinkedHashMap<>();
        for (Measured row : rows) {
            if (!row.copied()) {
                byProperty.merge(
                        row.property(),
                        new Ratios(1, row.ratio(), row.ratio(), row.ratio()),
                        Ratios::with);
            }
        }
        return byProperty;
    }

    /** Returns every row and the ratios by property, in Markdown. */
    static String tables(List<Measured> rows) {
        StringBuilder text =
                new StringBuilder(
                        """
                | specimen | constant | measured | scatter | ours | ours over measured | two standard deviations |
                |---|---|---|---|---|---|---|
                """);
        for (Measured row : rows) {
            text.append(
                    String.format(
                            Locale.ROOT,
                            "| %s | %s | %.4g | %s | %.4g | %.2f | %s |%n",
                            row.specimen(),
                            row.property(),
                            row.value(),
                            row.scatter() == 0
                                    ? "-"
                                    : String.format(Locale.ROOT, "%.2g", row.scatter()),
                            row.ours(),
                            row.ratio(),
                            row.verdict()));
        }
        text.append("\n| constant | rows | mean | lowest | highest |\n|---|---|---|---|---|\n");
        ratios(rows)
                .forEach(
                        (property, r) ->
                                text.append(
                                        String.format(
                                                Locale.ROOT,
                                                "| %s | %d | %.2f | %.2f | %.2f |%n",
                                                property,
                                                r.count(),
                                                r.mean(),
                                                r.lowest(),
                                                r.highest())));
        return text.toString();
    }

    /** Ratios of ours to measured: how many, their mean, the lowest and the highest. */
    record Ratios(int count, double mean, double lowest, double highest) {

        private Ratios with(Ratios other) {
            int both = count + other.count;
            return new Ratios(
                    both,
                    (count * mean + other.count * other.mean) / both,
                    Math.min(lowest, other.lowest),
                    Math.max(highest, other.highest));
        }
    }
}
