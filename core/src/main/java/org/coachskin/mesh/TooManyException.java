package org.coachskin.mesh;

/** Thrown when the vertices run out, with the place. */
final class TooManyException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient Point place;

    TooManyException(Point place) {
        this.place = place;
    }

    Point place() {
        return place;
    }
}
