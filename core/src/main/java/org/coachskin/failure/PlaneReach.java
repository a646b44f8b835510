package org.coachskin.failure;

import org.coachskin.laminate.Sym2;
import org.coachskin.laminate.Triple;

/** How far something that acts in the plane may grow before it takes all the room there is. */
final class PlaneReach {

    private PlaneReach() {}

    /**
     * Returns the least factor f, zero or more, at which {@code room} - f {@code push} gives way in
     * some direction: one over the larger eigenvalue of room<sup>-1</sup> push. 0 where there is no
     * room to begin with, infinite where nothing pushes.
     *
     * @param room symmetric; has to be positive definite
     * @param push in the same unit, without factors in shear
     */
    static double of(Sym2 room, Triple push) {
        double size = room.m11() * room.m22() - room.m12() * room.m12();
        if (room.m11() <= 0 || size <= 0) {
            return 0;
        }
        double half =
                (room.m22() * push.x() + room.m11() * push.y() - 2 * room.m12() * push.xy())
                        / (2 * size);
        double product = (push.x() * push.y() - push.xy() * push.xy()) / size;
        double largest = half + Math.sqrt(Math.max(0, half * half - product));
        return largest > 0 ? 1 / largest : Double.POSITIVE_INFINITY;
    }
}
