package org.coachskin.cli.report;

import java.util.List;

/**
 * A drawing, in pixels of a screen.
 *
 * @param id by which the page knows it
 * @param width of the drawing
 * @param height of the drawing
 * @param fixed whether it is true to scale on paper and must not be stretched
 * @param title what it shows, in a few words
 * @param words what can be seen in it, for somebody who cannot
 * @param marks from the lowest to the topmost
 */
public record Drawing(
        String id,
        int width,
        int height,
        boolean fixed,
        String title,
        String words,
        List<Mark> marks) {

    /** Copies the list. */
    public Drawing {
        marks = List.copyOf(marks);
    }
}
