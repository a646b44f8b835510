package org.coachskin.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.coachskin.check.HonestyStudy.Row;

/**
 * How honest the estimates of one kind of figure are.
 *
 * @param kind of figure
 * @param figures how many
 * @param under share of figures whose error lies under the estimate [-]
 * @param medianRatio of estimate over error [-]
 * @param medianError relative [-]
 * @param largestError relative [-]
 */
public record HonestShares(
        String kind,
        int figures,
        double under,
        double medianRatio,
        double medianError,
        double largestError) {

    /** An error below a millionth counts as one: nobody can tell it from none. */
    private static final double DIGITS = 1e-6;

    /** Returns the shares of one kind. */
    public static HonestShares of(List<Row> rows, String kind) {
        List<Double> errors = new ArrayList<>();
        List<Double> ratios = new ArrayList<>();
        int under = 0;
        for (Row row : rows) {
            if (row.kind().equals(kind)) {
                double error = row.error();
                double estimate = row.estimate();
                errors.add(error);
                ratios.add(estimate / Math.max(error, DIGITS));
                under += error <= estimate + DIGITS ? 1 : 0;
            }
        }
        return new HonestShares(
                kind,
                errors.size(),
                (double) under / errors.size(),
                median(ratios),
                median(errors),
                Collections.max(errors));
    }

    private static double median(List<Double> values) {
        List<Double> sorted = new ArrayList<>(values);
        Collections.sort(sorted);
        return sorted.get(sorted.size() / 2);
    }

    /** Returns them in words. */
    public String words() {
        return String.format(
                Locale.ROOT,
                "%s: %d figures, %.1f %% under the estimate, estimate over error %.1f at the median,"
                        + " error %.1e at the median, %.1e at most",
                kind,
                figures,
                100 * under,
                medianRatio,
                medianError,
                largestError);
    }
}
