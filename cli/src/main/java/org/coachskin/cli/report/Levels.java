package org.coachskin.cli.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** Round numbers for contour lines and axes. */
final class Levels {

    private Levels() {}

    /**
     * Returns the round step of which at most {@code count} fit: 1, 2 or 5 times a power of ten.
     */
    static double step(double reach, int count) {
        if (!(reach > 0)) {
            return 1;
        }
        double least = reach / count;
        double power = StrictMath.pow(10, Math.floor(StrictMath.log10(least)));
        for (double times : new double[] {1, 2, 5}) {
            if (times * power >= least * (1 - 1e-9)) {
                return times * power;
            }
        }
        return 10 * power;
    }

    /** Returns the multiples of a step from above zero up to below {@code reach}. */
    static List<Double> upTo(double reach, double step) {
        List<Double> levels = new ArrayList<>();
        for (int k = 1; k * step < reach * 0.995; k++) {
            levels.add(k * step);
        }
        return levels;
    }

    /** Returns a multiple of a step as a person writes it. */
    static String words(double value, double step) {
        int places = (int) Math.max(0, -Math.floor(StrictMath.log10(step) + 1e-9));
        return BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP).toPlainString();
    }
}
