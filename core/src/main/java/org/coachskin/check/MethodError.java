package org.coachskin.check;

/**
 * Error of the theory against 3-D elasticity, relative, by kind of figure; what a reserve is
 * divided by before it counts as a plain yes.
 *
 * <p>Layered theory with the local effect, rim carried, foam of 32 to 160 kg/m^3 and 6 to 50 mm,
 * one to four plies a skin, patches of 30 mm and more: deflection 1 %, skin stress 5 %, foam shear
 * 5 %, dent 10 %. Smaller patches and stouter skins are outside it.
 */
final class MethodError {

    static final double DEFLECTION = 0.01;
    static final double SKIN_STRESS = 0.05;
    static final double CORE_SHEAR = 0.05;
    static final double DENT = 0.10;
    static final double WRINKLING = 0.10;

    private MethodError() {}
}
