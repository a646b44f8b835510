package org.coachskin.mesh;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.Require;

/**
 * A panel as it is drawn: its outline, its holes, and lines to be followed. A line to be followed
 * may cross or touch others, lie on them, or run off the panel, where it is cut off.
 *
 * <p>Every curve has a number: those of the outline first, then those of the holes, then the lines
 * to be followed, as they were added.
 */
public final class Drawing {

    /** For a curve with no wish of its own. */
    public static final double ANY = Double.POSITIVE_INFINITY;

    private final Loop outline;
    private final List<Loop> holes;
    private final List<Curve> curves;
    private final List<Double> edges;
    private final Wishes wishes;

    private Drawing(Builder builder) {
        this.outline = builder.outline;
        this.holes = List.copyOf(builder.holes);
        this.curves = new ArrayList<>(outline.curves());
        this.edges = new ArrayList<>();
        outline.curves().forEach(curve -> edges.add(builder.outlineEdge));
        for (int i = 0; i < holes.size(); i++) {
            for (Curve curve : holes.get(i).curves()) {
                curves.add(curve);
                edges.add(builder.holeEdges.get(i));
            }
        }
        curves.addAll(builder.lines);
        edges.addAll(builder.lineEdges);
        this.wishes = builder.wishes;
    }

    /** Starts a drawing with its outline, whose edges have no wish of their own. */
    public static Builder outline(Loop outline) {
        return outline(outline, ANY);
    }

    /**
     * Starts a drawing with its outline, along which edges shall be no longer than {@code edge}.
     */
    public static Builder outline(Loop outline, double edge) {
        return new Builder(outline, edge);
    }

    /** Returns the outline. */
    public Loop outline() {
        return outline;
    }

    /** Returns the holes. */
    public List<Loop> holes() {
        return holes;
    }

    /** Returns all curves by number. */
    public List<Curve> curves() {
        return List.copyOf(curves);
    }

    /** Returns how many curves, the first so many, are rims of panel and holes. */
    public int rimCurves() {
        return outline.curves().size() + holes.stream().mapToInt(h -> h.curves().size()).sum();
    }

    /** Returns the longest edge wished along a curve, m, or {@link #ANY}. */
    public double edge(int curve) {
        return edges.get(curve);
    }

    /** Returns what is wished of the whole mesh. */
    public Wishes wishes() {
        return wishes;
    }

    /** Returns the area of the panel without its holes, m^2. */
    public double area() {
        double area = Math.abs(outline.signedArea());
        for (Loop hole : holes) {
            area -= Math.abs(hole.signedArea());
        }
        return area;
    }

    /** Returns whether (x, y) lies on the panel and in no hole; on a rim either may come. */
    public boolean contains(double x, double y) {
        return outline.contains(x, y) && holes.stream().noneMatch(hole -> hole.contains(x, y));
    }

    /** Collects a drawing. */
    public static final class Builder {

        private final Loop outline;
        private final double outlineEdge;
        private final List<Loop> holes = new ArrayList<>();
        private final List<Double> holeEdges = new ArrayList<>();
        private final List<Curve> lines = new ArrayList<>();
        private final List<Double> lineEdges = new ArrayList<>();
        private Wishes wishes = Wishes.edgesUpTo(ANY_LENGTH);

        private static final double ANY_LENGTH = 1e6;

        private Builder(Loop outline, double edge) {
            this.outline = outline;
            this.outlineEdge = edge(edge);
        }

        /** Adds a hole. */
        public Builder hole(Loop hole) {
            return hole(hole, ANY);
        }

        /** Adds a hole along which edges shall be no longer than {@code edge}. */
        public Builder hole(Loop hole, double edge) {
            holes.add(hole);
            holeEdges.add(edge(edge));
            return this;
        }

        /** Adds a line to be followed. */
        public Builder follow(Curve line) {
            return follow(line, ANY);
        }

        /** Adds a line to be followed, along which edges shall be no longer than {@code edge}. */
        public Builder follow(Curve line, double edge) {
            lines.add(line);
            lineEdges.add(edge(edge));
            return this;
        }

        /** Adds a closed line to be followed. */
        public Builder follow(Loop loop) {
            return follow(loop, ANY);
        }

        /** Adds a closed line to be followed, with edges no longer than {@code edge}. */
        public Builder follow(Loop loop, double edge) {
            loop.curves().forEach(curve -> follow(curve, edge));
            return this;
        }

        /** Sets what is wished of the whole mesh. */
        public Builder wishes(Wishes wanted) {
            this.wishes = wanted;
            return this;
        }

        /** Returns the drawing. */
        public Drawing build() {
            return new Drawing(this);
        }

        private static double edge(double edge) {
            return edge == ANY ? edge : Require.positive("longest edge of a curve", edge, "m");
        }
    }
}
