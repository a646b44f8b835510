package org.coachskin.laminate;

import java.util.function.ToDoubleFunction;

/** How far hand work moves a figure that follows from a schedule. */
public final class Scatter {

    private Scatter() {}

    /**
     * Returns the standard deviation of {@code figure} over pieces laid by {@code schedule}: the
     * root of the sum of the squared changes when each primary input moves by one of its own
     * standard deviations (linear propagation; the inputs are independent).
     *
     * @return in the unit of the figure
     */
    public static double deviation(Schedule schedule, ToDoubleFunction<Schedule> figure) {
        double nominal = figure.applyAsDouble(schedule);
        double variance = 0;
        for (PrimaryInput input : PrimaryInput.values()) {
            double change = figure.applyAsDouble(schedule.moved(input, 1)) - nominal;
            variance += change * change;
        }
        return Math.sqrt(variance);
    }
}
