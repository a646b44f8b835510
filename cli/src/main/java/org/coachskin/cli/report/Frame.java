package org.coachskin.cli.report;

/**
 * Where a panel lies in a drawing: its rear edge on top, seen from outside.
 *
 * @param left of the panel's left edge
 * @param top of its rear edge
 * @param scale pixels per metre
 * @param length of the panel from front to rear [m]
 */
record Frame(double left, double top, double scale, double length) {

    /** Returns a frame in which a panel fills a box as far as it can. */
    static Frame fitting(
            double left, double top, double width, double length, double wide, double high) {
        return new Frame(left, top, Math.min(wide / width, high / length), length);
    }

    double x(double metres) {
        return left + scale * metres;
    }

    double y(double metres) {
        return top + scale * (length - metres);
    }

    Point at(double metresX, double metresY) {
        return new Point(x(metresX), y(metresY));
    }
}
