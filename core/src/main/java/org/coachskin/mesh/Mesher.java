package org.coachskin.mesh;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.NoAnswerException;
import org.coachskin.Problem;

/** Makes meshes. */
public final class Mesher {

    /** The area of the mesh agrees with that of the drawing to this part of it. */
    private static final double SAME_AREA = 1e-9;

    private Mesher() {}

    /**
     * Returns a mesh that follows every curve of a drawing.
     *
     * <p>Every rim and every line that is not laid on another is followed to 1e-9 m. No straight
     * edge is longer than the wish at its middle. No corner is sharper than wished but where lines
     * of the drawing meet more sharply than 60 degrees, and then only beside such a corner ({@link
     * Mesh#sharpCorners()}). An arc turns by 45 degrees at most from vertex to vertex.
     *
     * @throws NoAnswerException if the drawing leaves no panel that holds together, or strips too
     *     thin, or asks for more triangles than can be solved
     */
    public static Mesh mesh(Drawing drawing) {
        DrawingCheck.check(drawing);
        Arrangement arrangement = Snapper.arrange(drawing);
        Corners corners = new Corners(arrangement);
        List<Mesh.SharpCorner> sharp = new ArrayList<>();
        double angle = drawing.wishes().smallestAngle();
        for (int v = 0; v < arrangement.vertices().size(); v++) {
            if (corners.sharpest(v) < Corners.SHARP) {
                sharp.add(new Mesh.SharpCorner(arrangement.vertices().get(v), corners.sharpest(v)));
            }
        }
        Box box = Box.of(drawing.outline());
        Mesh.Origin origin =
                new Mesh.Origin(
                        SizeField.of(drawing),
                        angle,
                        List.copyOf(sharp),
                        arrangement.largestShift(),
                        new Point(box.left(), box.front()));
        Mesh mesh = refine(arrangement, List.of(), origin);
        double area = drawing.area();
        if (!(Math.abs(mesh.area() - area) <= SAME_AREA * area)) {
            throw new IllegalStateException("area " + mesh.area() + " for " + area);
        }
        return mesh;
    }

    static Mesh refine(Arrangement arrangement, List<Point> free, Mesh.Origin origin) {
        try {
            Refiner refiner =
                    new Refiner(arrangement, origin.sizes(), origin.smallestAngle(), free);
            refiner.refine();
            return Extraction.of(refiner, origin);
        } catch (TooManyException e) {
            throw new NoAnswerException(
                    new Problem(
                            Place.of(origin.leftFront(), e.place()),
                            "",
                            "the drawing asks for too many triangles, most of them here",
                            "wish for longer edges, or leave out lines that all but touch"));
        } catch (Constrain.ClashException e) {
            throw new NoAnswerException(
                    new Problem(
                            Place.of(origin.leftFront(), e.place()),
                            "",
                            "lines lie so close together here that they cannot be told apart",
                            "draw them on one another, or leave one out"));
        }
    }
}
