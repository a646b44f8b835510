package org.coachskin.mesh;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import org.jspecify.annotations.Nullable;

/**
 * Triangles over a panel. Triangles have their corners counter-clockwise; side i of a triangle runs
 * from corner i to corner i + 1. An edge may be a part of an arc: then the triangles beside it are
 * bounded by the arc itself, and no corner between arcs is less than zero or more than a straight
 * angle. Immutable and safe to share between threads.
 */
public final class Mesh {

    /**
     * A corner of the drawing so sharp that triangles had to be sharper than wished.
     *
     * @param place where lines meet
     * @param angle between them, rad
     */
    public record SharpCorner(Point place, double angle) {}

    private final double[] x;
    private final double[] y;
    private final int[] corners;
    private final Edges edges;
    private final Origin origin;
    private final double smallestAngle;
    private final double smallestCurvedAngle;
    private final double largestCurvedAngle;
    private final Locator locator;

    /** What a mesh was made from, so that it can be refined. */
    record Origin(
            SizeField sizes,
            double smallestAngle,
            List<SharpCorner> sharpCorners,
            double largestShift,
            Point leftFront) {}

    Mesh(double[] x, double[] y, int[] corners, List<Trace> traces, Origin origin) {
        this.x = x;
        this.y = y;
        this.corners = corners;
        this.edges = new Edges(corners, traces);
        this.origin = origin;
        double least = Math.PI;
        double leastCurved = Math.PI;
        double mostCurved = 0;
        for (int t = 0; t < triangles(); t++) {
            for (int i = 0; i < 3; i++) {
                double angle = cornerAngle(t, i);
                double curved = angle + bulge(t, i) + bulge(t, (i + 2) % 3);
                least = Math.min(least, angle);
                leastCurved = Math.min(leastCurved, curved);
                mostCurved = Math.max(mostCurved, curved);
            }
        }
        this.smallestAngle = least;
        this.smallestCurvedAngle = leastCurved;
        this.largestCurvedAngle = mostCurved;
        this.locator = new Locator(this);
    }

    /** Returns the number of vertices. */
    public int vertices() {
        return x.length;
    }

    /** Returns a vertex's distance from the left, m. */
    public double x(int vertex) {
        return x[vertex];
    }

    /** Returns a vertex's distance from the front, m. */
    public double y(int vertex) {
        return y[vertex];
    }

    /** Returns a vertex's place. */
    public Point point(int vertex) {
        return new Point(x[vertex], y[vertex]);
    }

    /** Returns the number of triangles. */
    public int triangles() {
        return corners.length / 3;
    }

    /** Returns corner 0, 1 or 2 of a triangle, as a vertex. */
    public int corner(int triangle, int corner) {
        return corners[3 * triangle + corner];
    }

    /** Returns side 0, 1 or 2 of a triangle, as an edge; side i starts at corner i. */
    public int side(int triangle, int side) {
        return edges.side(triangle, side);
    }

    /** Returns whether a triangle runs through its side from the edge's start to its end. */
    public boolean forward(int triangle, int side) {
        return edges.start(side(triangle, side)) == corner(triangle, side);
    }

    /** Returns the number of edges. */
    public int edges() {
        return edges.count();
    }

    /** Returns the vertex where an edge starts. */
    public int start(int edge) {
        return edges.start(edge);
    }

    /** Returns the vertex where an edge ends. */
    public int end(int edge) {
        return edges.end(edge);
    }

    /** Returns the triangle to the left of an edge; there always is one. */
    public int left(int edge) {
        return edges.left(edge);
    }

    /** Returns the triangle to the right of an edge, or -1 along a rim. */
    public int right(int edge) {
        return edges.right(edge);
    }

    /** Returns whether an edge lies on the rim of the panel or of a hole. */
    public boolean rim(int edge) {
        return edges.right(edge) < 0;
    }

    /** Returns the numbers of the drawing's curves on which an edge lies, rising; mostly none. */
    public List<Integer> curves(int edge) {
        Trace trace = edges.trace(edge);
        return trace == null ? List.of() : trace.curves();
    }

    /** Returns the arc along which an edge runs, from its start to its end; null if straight. */
    public Curve.@Nullable Arc arc(int edge) {
        Trace trace = edges.trace(edge);
        return trace == null ? null : trace.arc();
    }

    /** Returns the edges that lie on a curve of the drawing, in the order of their numbers. */
    public List<Integer> edgesOn(int curve) {
        List<Integer> found = new ArrayList<>();
        for (int e = 0; e < edges(); e++) {
            if (curves(e).contains(curve)) {
                found.add(e);
            }
        }
        return found;
    }

    /** Returns whether a triangle has a side that is an arc. */
    public boolean curved(int triangle) {
        return arc(side(triangle, 0)) != null
                || arc(side(triangle, 1)) != null
                || arc(side(triangle, 2)) != null;
    }

    /** Returns the triangle that holds a place, arcs counted, or -1 off the panel. */
    public int triangleAt(double px, double py) {
        return locator.triangleAt(px, py);
    }

    /**
     * Returns how near a place is to corner 0, 1 or 2 of a triangle with straight sides: 1 there, 0
     * on the side opposite; the three add up to 1.
     */
    public double share(int triangle, int corner, double px, double py) {
        int b = corner(triangle, (corner + 1) % 3);
        int c = corner(triangle, (corner + 2) % 3);
        int a = corner(triangle, corner);
        double whole = (x[b] - x[a]) * (y[c] - y[a]) - (y[b] - y[a]) * (x[c] - x[a]);
        return ((x[b] - px) * (y[c] - py) - (y[b] - py) * (x[c] - px)) / whole;
    }

    /** Returns the area of a triangle, arcs counted, m^2. */
    public double area(int triangle) {
        int a = corner(triangle, 0);
        int b = corner(triangle, 1);
        int c = corner(triangle, 2);
        double area = ((x[b] - x[a]) * (y[c] - y[a]) - (y[b] - y[a]) * (x[c] - x[a])) / 2;
        for (int i = 0; i < 3; i++) {
            Curve.Arc arc = arc(side(triangle, i));
            if (arc != null) {
                double sweep = forward(triangle, i) ? arc.sweep() : -arc.sweep();
                area += arc.radius() * arc.radius() * (sweep - StrictMath.sin(sweep)) / 2;
            }
        }
        return area;
    }

    /** Returns the area of all triangles, arcs counted, m^2. */
    public double area() {
        double sum = 0;
        for (int t = 0; t < triangles(); t++) {
            sum += area(t);
        }
        return sum;
    }

    /** Returns the straight length of an edge, m. */
    public double length(int edge) {
        return point(start(edge)).distance(point(end(edge)));
    }

    /** Returns the straight length of the longest edge, m. */
    public double longestEdge() {
        double longest = 0;
        for (int e = 0; e < edges(); e++) {
            longest = Math.max(longest, length(e));
        }
        return longest;
    }

    /** Returns the straight length of the shortest edge, m. */
    public double shortestEdge() {
        double shortest = Double.MAX_VALUE;
        for (int e = 0; e < edges(); e++) {
            shortest = Math.min(shortest, length(e));
        }
        return shortest;
    }

    /** Returns the sharpest corner of any triangle, between straight sides, rad. */
    public double smallestAngle() {
        return smallestAngle;
    }

    /** Returns the sharpest corner of any triangle, between its arcs, rad. */
    public double smallestCurvedAngle() {
        return smallestCurvedAngle;
    }

    /**
     * Returns the bluntest corner of any triangle, between its arcs, rad; below a straight angle.
     */
    public double largestCurvedAngle() {
        return largestCurvedAngle;
    }

    /** Returns a corner of a triangle, between straight sides, rad. */
    public double cornerAngle(int triangle, int corner) {
        int v = corner(triangle, corner);
        int b = corner(triangle, (corner + 1) % 3);
        int c = corner(triangle, (corner + 2) % 3);
        double bx = x[b] - x[v];
        double by = y[b] - y[v];
        double cx = x[c] - x[v];
        double cy = y[c] - y[v];
        return StrictMath.atan2(bx * cy - by * cx, bx * cx + by * cy);
    }

    /** How far a side turns from its chord at its ends, rad; positive where it bulges outward. */
    private double bulge(int triangle, int side) {
        Curve.Arc arc = arc(side(triangle, side));
        return arc == null ? 0 : (forward(triangle, side) ? arc.sweep() : -arc.sweep()) / 2;
    }

    /** Returns where lines of the drawing meet too sharply for the angle wished. */
    public List<SharpCorner> sharpCorners() {
        return origin.sharpCorners();
    }

    /**
     * Returns how far the mesh runs beside a curve of the drawing, at most, because lines near to
     * one another were laid together, m; taken from 33 places on each part, so a few per cent low.
     */
    public double largestShift() {
        return origin.largestShift();
    }

    /** Returns a mesh in which each triangle is four, with the vertices of this one first. */
    public Mesh refined() {
        return Quartering.of(this);
    }

    /**
     * Returns a mesh in which edges of the triangles marked are at most half as long as the longest
     * edge of their triangle, and grow from there as wished.
     *
     * @param marked whether a triangle is to be refined, by number
     */
    public Mesh refined(IntPredicate marked) {
        return Remeshing.of(this, marked);
    }

    Origin origin() {
        return origin;
    }

    double[] copyX() {
        return x.clone();
    }

    double[] copyY() {
        return y.clone();
    }
}
