package org.coachskin.mesh;

import java.util.ArrayList;
import java.util.List;

/** Where pieces meet at a sharp angle, which no mesh can blunt. */
final class Corners {

    /** A place where lines of the drawing meet at less than 60 degrees. */
    private record Meeting(int first, int second, double angle) {}

    /** Corners below this have to be meshed with care, rad. */
    static final double SHARP = Math.PI / 3;

    private final List<List<Meeting>> at = new ArrayList<>();

    Corners(Arrangement arrangement) {
        List<Piece> pieces = arrangement.pieces();
        List<List<double[]>> ends = new ArrayList<>();
        for (int v = 0; v < arrangement.vertices().size(); v++) {
            ends.add(new ArrayList<>());
            at.add(new ArrayList<>());
        }
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            ends.get(piece.a()).add(new double[] {i, piece.curve().heading(0)});
            ends.get(piece.b()).add(new double[] {i, piece.curve().heading(1) + Math.PI});
        }
        for (int v = 0; v < ends.size(); v++) {
            List<double[]> here = ends.get(v);
            for (int i = 0; i < here.size(); i++) {
                for (int j = i + 1; j < here.size(); j++) {
                    double angle =
                            Math.abs(
                                    StrictMath.IEEEremainder(
                                            here.get(i)[1] - here.get(j)[1], 2 * Math.PI));
                    if (angle < SHARP * (1 - 1e-9)) {
                        at.get(v)
                                .add(
                                        new Meeting(
                                                (int) here.get(i)[0], (int) here.get(j)[0], angle));
                    }
                }
            }
        }
    }

    /** Whether a piece meets another sharply at a vertex of the arrangement. */
    boolean sharp(int vertex, int piece) {
        if (vertex < 0 || vertex >= at.size()) {
            return false;
        }
        for (Meeting meeting : at.get(vertex)) {
            if (meeting.first == piece || meeting.second == piece) {
                return true;
            }
        }
        return false;
    }

    /** Whether two pieces meet sharply at a vertex. */
    boolean sharp(int vertex, int piece, int other) {
        for (Meeting meeting : at.get(vertex)) {
            if ((meeting.first == piece && meeting.second == other)
                    || (meeting.first == other && meeting.second == piece)) {
                return true;
            }
        }
        return false;
    }

    /** Returns the sharpest angle at a vertex, or a right angle where none is sharp, rad. */
    double sharpest(int vertex) {
        double least = Math.PI / 2;
        for (Meeting meeting : at.get(vertex)) {
            least = Math.min(least, meeting.angle);
        }
        return least;
    }
}
