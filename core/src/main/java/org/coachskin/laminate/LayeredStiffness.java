package org.coachskin.laminate;

/**
 * Stiffness of a stack in layered theory: both skins turn together by &phi;, the foam by &psi;.
 *
 * <p>In-plane displacement at height z is u(z) = u0 + f(z) &psi; + g(z) &phi;, with f(z) = clamp(z,
 * foam bottom, foam top) and g(z) = z - f(z), both less their values at the reference surface, so
 * that u0 is the displacement there. Per width,
 *
 * <pre>
 *   N      = A  e + Bf k&psi; + Bg k&phi;          Qskin = Hs (&phi; + grad w)
 *   Mfoam  = Bf e + Dff k&psi; + Dfg k&phi;         Qfoam = Hf (&psi; + grad w)
 *   Mskin  = Bg e + Dfg k&psi; + Dgg k&phi;
 * </pre>
 *
 * <p>The foam is everything from the innermost foam layer to the outermost one, a ply between two
 * foams included; the skins are what lies outside. Where one skin is missing the foam reaches to
 * its free surface.
 *
 * <ul>
 *   <li>Hs is 5/6 of the sum of G t over both skins.
 *   <li>Hf gives the foam the energy of the shear stress from equilibrium ({@link StiffnessKernel})
 *       for the shear force the foam itself carries: G c between two skins, whose shear is nearly
 *       constant, springs in a row for several foams, and near 5/6 G c under one stiff skin, as the
 *       stress falls to zero at the free surface.
 *   <li>A bare laminate has no &psi;: f = 0, g = z, Hf = 0 and Hs is the shear stiffness from
 *       equilibrium.
 * </ul>
 *
 * @param a membrane stiffness [N/m]
 * @param bf coupling to the curvature of the foam [N]
 * @param bg coupling to the curvature of the skins [N]
 * @param dff bending stiffness by turning the foam [N m]
 * @param dfg mixed bending stiffness [N m]
 * @param dgg bending stiffness of the skins by themselves [N m]
 * @param hs transverse shear stiffness of the skins [N/m]
 * @param hf transverse shear stiffness of the foam [N/m]
 * @param foamBottom z of the inside surface of the foam, from mid-height of the stack [m]
 * @param foamTop z of the outside surface of the foam [m]; equal to {@code foamBottom} where bare
 * @param reference z of the reference surface, from mid-height of the stack [m]
 */
public record LayeredStiffness(
        Sym3 a,
        Sym3 bf,
        Sym3 bg,
        Sym3 dff,
        Sym3 dfg,
        Sym3 dgg,
        Sym2 hs,
        Sym2 hf,
        double foamBottom,
        double foamTop,
        double reference) {

    /** Returns the stiffness about mid-height. */
    public static LayeredStiffness of(Laminate laminate) {
        return of(laminate, 0);
    }

    /** Returns the stiffness about the surface at {@code reference}, z from mid-height [m]. */
    public static LayeredStiffness of(Laminate laminate, double reference) {
        int first = laminate.innermostCore();
        int last = laminate.outermostCore();
        double foamBottom = first < 0 ? 0 : laminate.bottom(first);
        double foamTop =
                first < 0 ? 0 : laminate.bottom(last) + laminate.layers().get(last).thickness();
        LayeredStiffness frame =
                new LayeredStiffness(
                        Sym3.ZERO,
                        Sym3.ZERO,
                        Sym3.ZERO,
                        Sym3.ZERO,
                        Sym3.ZERO,
                        Sym3.ZERO,
                        Sym2.ZERO,
                        Sym2.ZERO,
                        foamBottom,
                        foamTop,
                        reference);
        Sym3 a = Sym3.ZERO;
        Sym3 bf = Sym3.ZERO;
        Sym3 bg = Sym3.ZERO;
        Sym3 dff = Sym3.ZERO;
        Sym3 dfg = Sym3.ZERO;
        Sym3 dgg = Sym3.ZERO;
        Sym2 skins = Sym2.ZERO;
        double bottom = -laminate.thickness() / 2;
        for (int i = 0; i < laminate.layers().size(); i++) {
            Layer layer = laminate.layers().get(i);
            double t = layer.thickness();
            Sym3 q = layer.stiffness();
            // f and g are linear within a layer: Simpson's rule is exact for their products.
            for (int point = 0; point < 3; point++) {
                double weight = t * (point == 1 ? 4 : 1) / 6;
                double f = frame.f(bottom + t * point / 2);
                double g = frame.g(bottom + t * point / 2);
                a = a.plus(q, weight);
                bf = bf.plus(q, weight * f);
                bg = bg.plus(q, weight * g);
                dff = dff.plus(q, weight * f * f);
                dfg = dfg.plus(q, weight * f * g);
                dgg = dgg.plus(q, weight * g * g);
            }
            if (first < 0 || i < first || i > last) {
                skins = skins.plus(layer.shearStiffness(), 5.0 / 6 * t);
            }
            bottom += t;
        }
        KernelRun run = new KernelRun(laminate);
        return new LayeredStiffness(
                a,
                bf,
                bg,
                dff,
                dfg,
                dgg,
                first < 0 ? run.stiffness().h() : skins,
                first < 0 ? Sym2.ZERO : run.shearOfGroup(first, last + 1),
                foamBottom,
                foamTop,
                reference);
    }

    /** Returns whether there is no foam. */
    public boolean isBare() {
        return foamTop == foamBottom;
    }

    /** Returns f at height {@code z} from mid-height of the stack [m]. */
    public double f(double z) {
        return clamp(z) - clamp(reference);
    }

    /** Returns g at height {@code z} from mid-height of the stack [m]. */
    public double g(double z) {
        return z - reference - f(z);
    }

    private double clamp(double z) {
        return isBare() ? 0 : Math.min(Math.max(z, foamBottom), foamTop);
    }
}
