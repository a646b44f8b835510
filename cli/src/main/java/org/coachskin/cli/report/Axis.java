package org.coachskin.cli.report;

/**
 * A straight scale in a drawing.
 *
 * @param zero where nought lies
 * @param scale pixels per unit; negative where the axis runs up or to the left
 */
record Axis(double zero, double scale) {

    double at(double value) {
        return zero + scale * value;
    }
}
