package org.coachskin.mesh;

import java.util.Arrays;

/**
 * Finds the triangle that holds a place, from a grid of the triangles that reach into each cell.
 */
final class Locator {

    /** A place so near to a side lies on it, m. */
    private static final double ON = 1e-9;

    private final Mesh mesh;
    private final double left;
    private final double front;
    private final double cell;
    private final int columns;
    private final int rows;
    private final int[] first;
    private final int[] members;

    Locator(Mesh mesh) {
        this.mesh = mesh;
        Box[] boxes = new Box[mesh.triangles()];
        Box all = null;
        for (int t = 0; t < boxes.length; t++) {
            boxes[t] = box(t);
            all = all == null ? boxes[t] : all.with(boxes[t]);
        }
        Box whole = all == null ? new Box(0, 0, 1, 1) : all;
        double width = whole.right() - whole.left();
        double depth = whole.rear() - whole.front();
        left = whole.left();
        front = whole.front();
        cell = Math.sqrt(width * depth / Math.max(1, boxes.length));
        columns = (int) (width / cell) + 1;
        rows = (int) (depth / cell) + 1;
        first = new int[columns * rows + 1];
        for (Box box : boxes) {
            visit(box, c -> first[c + 1]++);
        }
        for (int c = 0; c < columns * rows; c++) {
            first[c + 1] += first[c];
        }
        members = new int[first[columns * rows]];
        int[] fill = Arrays.copyOf(first, columns * rows);
        for (int t = 0; t < boxes.length; t++) {
            int triangle = t;
            visit(boxes[t], c -> members[fill[c]++] = triangle);
        }
    }

    private Box box(int t) {
        Box box = null;
        for (int i = 0; i < 3; i++) {
            Curve.Arc arc = mesh.arc(mesh.side(t, i));
            Point p = mesh.point(mesh.corner(t, i));
            Box part = arc == null ? Box.around(p.x(), p.y(), ON) : Box.of(arc);
            box = box == null ? part : box.with(part);
            box = box.with(Box.around(p.x(), p.y(), ON));
        }
        return box == null ? Box.around(0, 0, 0) : box;
    }

    private void visit(Box box, java.util.function.IntConsumer what) {
        int c0 = column(box.left());
        int c1 = column(box.right());
        int r0 = row(box.front());
        int r1 = row(box.rear());
        for (int r = r0; r <= r1; r++) {
            for (int c = c0; c <= c1; c++) {
                what.accept(r * columns + c);
            }
        }
    }

    private int column(double x) {
        return (int) Math.max(0, Math.min(columns - 1, Math.floor((x - left) / cell)));
    }

    private int row(double y) {
        return (int) Math.max(0, Math.min(rows - 1, Math.floor((y - front) / cell)));
    }

    /** Returns the first triangle that holds a place, or all but holds it, or -1. */
    int triangleAt(double x, double y) {
        int c = row(y) * columns + column(x);
        for (double slack = 0; slack <= ON; slack += ON) {
            for (int k = first[c]; k < first[c + 1]; k++) {
                if (holds(members[k], x, y, slack)) {
                    return members[k];
                }
            }
        }
        return -1;
    }

    private boolean holds(int t, double x, double y, double slack) {
        for (int i = 0; i < 3; i++) {
            int a = mesh.corner(t, i);
            int b = mesh.corner(t, (i + 1) % 3);
            double turn = Predicates.turn(mesh.x(a), mesh.y(a), mesh.x(b), mesh.y(b), x, y);
            int edge = mesh.side(t, i);
            double left = turn / mesh.length(edge);
            Curve.Arc arc = mesh.arc(edge);
            if (arc == null) {
                if (slack == 0 ? turn < 0 : left < -slack) {
                    return false;
                }
                continue;
            }
            double dx = x - arc.centreX();
            double dy = y - arc.centreY();
            double outside = Math.sqrt(dx * dx + dy * dy) - arc.radius();
            boolean bulgesOut = arc.sweep() > 0 == mesh.forward(t, i);
            boolean held =
                    bulgesOut ? left >= 0 || outside <= slack : left >= -slack && outside >= -slack;
            if (!held) {
                return false;
            }
        }
        return true;
    }
}
