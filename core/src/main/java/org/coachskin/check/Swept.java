package org.coachskin.check;

import java.util.List;

/**
 * How a panel feels under a press that is moved over it: layered theory on coarse elements, good to
 * a few per cent, plus the local effect of the stack at each place, rubber seals as they are under
 * the press.
 *
 * @param load what presses
 * @param force its force [N]
 * @param places where it was tried: a grid over the panel, then ever closer round the softest
 */
public record Swept(String load, double force, List<Feel> places) {

    /** Places that feel alike but for this share are each other's image, say. */
    static final double SAME = 0.005;

    /** Copies the list and checks that it holds a place. */
    public Swept {
        places = List.copyOf(places);
        if (places.isEmpty()) {
            throw new IllegalArgumentException("the " + load + " has no place on the panel");
        }
    }

    /**
     * One place.
     *
     * @param x from the left edge [m]
     * @param y from the front edge [m]
     * @param stiffness force over how far the outside surface goes in [N/m]
     */
    public record Feel(double x, double y, double stiffness) {}

    /** Returns the softest place; of places that are equal but for half a per cent the first. */
    public Feel softest() {
        Feel softest = places.get(0);
        for (Feel feel : places) {
            if (feel.stiffness() < softest.stiffness() * (1 - SAME)) {
                softest = feel;
            }
        }
        return softest;
    }
}
