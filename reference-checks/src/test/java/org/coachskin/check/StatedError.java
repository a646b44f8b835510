package org.coachskin.check;

import java.util.List;
import org.coachskin.panel.Load;
import org.coachskin.panel.Panel;

/**
 * What the verdict states as the error of its theory, relative.
 *
 * @param deflection of a movement [-]
 * @param skinStress of the stress in a ply, on the unsafe side [-]
 * @param coreShear of the shear stress in the foam, on the unsafe side [-]
 */
public record StatedError(double deflection, double skinStress, double coreShear) {

    /** Returns the error under and beside one press. */
    public static StatedError of(Panel panel, Load.Press press) {
        MethodError error = MethodError.beside(panel, List.of(press));
        return new StatedError(error.deflection(), error.skinStress(), error.coreShear());
    }
}
