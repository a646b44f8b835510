package org.coachskin.laminate;

/**
 * What the panel does at one place, in layered theory; first-order theory has equal curvatures and
 * equal shear strains.
 *
 * @param membrane strain of the reference surface at mid-height of the stack [-]
 * @param skinCurvature gradient of the rotation of the skins [1/m]
 * @param foamCurvature gradient of the rotation of the foam [1/m]; equal to {@code skinCurvature}
 *     where there is no foam
 * @param skinShearX transverse shear strain of the skins, xz [-]
 * @param skinShearY transverse shear strain of the skins, yz [-]
 * @param foamShearX transverse shear strain of the foam, xz [-]
 * @param foamShearY transverse shear strain of the foam, yz [-]
 */
public record SectionState(
        Triple membrane,
        Triple skinCurvature,
        Triple foamCurvature,
        double skinShearX,
        double skinShearY,
        double foamShearX,
        double foamShearY) {

    /** Nothing moves. */
    public static final SectionState ZERO =
            new SectionState(Triple.ZERO, Triple.ZERO, Triple.ZERO, 0, 0, 0, 0);

    /** Returns this state plus {@code factor} times {@code other}. */
    public SectionState plus(SectionState other, double factor) {
        return new SectionState(
                membrane.plus(other.membrane, factor),
                skinCurvature.plus(other.skinCurvature, factor),
                foamCurvature.plus(other.foamCurvature, factor),
                skinShearX + factor * other.skinShearX,
                skinShearY + factor * other.skinShearY,
                foamShearX + factor * other.foamShearX,
                foamShearY + factor * other.foamShearY);
    }

    /**
     * Returns the in-plane strain at height {@code z} from mid-height of the stack [m].
     *
     * @param stiffness the layered stiffness of the stack about mid-height
     */
    public Triple strainAt(LayeredStiffness stiffness, double z) {
        return membrane.plus(foamCurvature, stiffness.f(z)).plus(skinCurvature, stiffness.g(z));
    }
}
