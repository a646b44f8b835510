package org.coachskin.mesh;

/** Panels of the workshop that builds a beach buggy and a camping trailer. */
final class Panels {

    private Panels() {}

    /** Lid 0.9 x 0.6 m on two hinges, a latch and a lip, under a palm and a thumb. */
    static Drawing.Builder lid() {
        return held().follow(Loop.rectangle(0.4, 0.26, 0.5, 0.34))
                .follow(Loop.circle(0.6, 0.4, 0.01));
    }

    /** The outline, the lip, two hinges and the latch. */
    private static Drawing.Builder held() {
        return Drawing.outline(Loop.rectangle(0, 0, 0.9, 0.6, 0.05))
                .follow(Loop.rectangle(0.03, 0.03, 0.87, 0.57, 0.02))
                .follow(Loop.rectangle(0.15, 0.56, 0.19, 0.6))
                .follow(Loop.rectangle(0.71, 0.56, 0.75, 0.6))
                .follow(Loop.rectangle(0.425, 0, 0.475, 0.05))
                .wishes(Wishes.edgesUpTo(0.12));
    }

    /** The same lid with a window 420 x 320 mm, corners 60 mm, in a band of 50 mm. */
    static Drawing.Builder window() {
        return held().hole(Loop.rectangle(0.24, 0.14, 0.66, 0.46, 0.06))
                .follow(Loop.rectangle(0.19, 0.09, 0.71, 0.51, 0.11))
                .follow(Loop.rectangle(0.1, 0.26, 0.2, 0.34))
                .follow(Loop.circle(0.45, 0.53, 0.01));
    }
}
