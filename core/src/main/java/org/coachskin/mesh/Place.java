package org.coachskin.mesh;

import java.util.Locale;

/** Says where on the panel something is, as a tape shows it. */
final class Place {

    private Place() {}

    static String of(Drawing drawing, Point p) {
        Box box = Box.of(drawing.outline());
        return of(new Point(box.left(), box.front()), p);
    }

    /** The same, by the corner that the tape starts from. */
    static String of(Point leftFront, Point p) {
        return String.format(
                Locale.ROOT,
                "%d mm from the left, %d mm from the front",
                Math.round(1000 * (p.x() - leftFront.x())),
                Math.round(1000 * (p.y() - leftFront.y())));
    }

    static String mm(double length) {
        return String.format(Locale.ROOT, "%.1f mm", 1000 * length);
    }
}
