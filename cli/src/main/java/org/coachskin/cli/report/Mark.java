package org.coachskin.cli.report;

/** One mark of a drawing. Its {@code kind} is what the style sheet of the page knows it by. */
public sealed interface Mark {

    /** Returns what it is to the style sheet. */
    String kind();

    /** A line of any shape, filled or not. */
    record Path(String kind, String d) implements Mark {}

    /** A straight line. */
    record Line(String kind, String x1, String y1, String x2, String y2) implements Mark {}

    /** A rectangle; {@code fill} a weave of the drawing, or empty. */
    record Box(String kind, String x, String y, String width, String height, String fill)
            implements Mark {}

    /** A circle. */
    record Dot(String kind, String x, String y, String radius) implements Mark {}

    /** Words; {@code turn} turns them round their place, empty where they lie level. */
    record Text(String kind, String x, String y, String turn, String words) implements Mark {}

    /** Hatching of a cloth in the direction of its weave, to fill boxes with. */
    record Weave(String kind, String id, String turn) implements Mark {}
}
