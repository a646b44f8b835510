package org.coachskin.reference;

import java.util.List;

/**
 * What is compared: the largest over all places under and beside a patch, without sign, but for
 * deflection, dent and the middle.
 *
 * @param deflection mean of both surfaces under the middle [m]
 * @param surface movement of the outside surface there, which a palm feels [m]
 * @param outerMiddle stress along x of the outside surface under the middle [Pa]
 * @param innerMiddle stress along x of the inside surface there [Pa]
 * @param outer stress along x or y of a ply of the outside skin [Pa]
 * @param inner stress along x or y of a ply of the inside skin [Pa]
 * @param sheared shear stress of a ply in its plane, either skin [Pa]
 * @param foam shear stress of the foam, x and y together [Pa]
 * @param dent outside surface less inside surface under the middle [m]
 */
record SweepFigures(
        double deflection,
        double surface,
        double outerMiddle,
        double innerMiddle,
        double outer,
        double inner,
        double sheared,
        double foam,
        double dent) {

    static final List<String> NAMES =
            List.of(
                    "deflection_m",
                    "surface_m",
                    "outer_middle_Pa",
                    "inner_middle_Pa",
                    "outer_Pa",
                    "inner_Pa",
                    "sheared_Pa",
                    "foam_shear_Pa",
                    "dent_m");

    List<Double> values() {
        return List.of(
                deflection, surface, outerMiddle, innerMiddle, outer, inner, sheared, foam, dent);
    }

    static SweepFigures of(List<Double> v) {
        return new SweepFigures(
                v.get(0), v.get(1), v.get(2), v.get(3), v.get(4), v.get(5), v.get(6), v.get(7),
                v.get(8));
    }
}
