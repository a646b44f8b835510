package org.coachskin.laminate;

/**
 * The forces and moments that would keep a warmed stack from moving, with their sign turned: N_T =
 * &int; Q &alpha; &Delta;T dz and M_T = &int; Q &alpha; &Delta;T z dz about mid-height (Jones,
 * <i>Mechanics of Composite Materials</i>, 2nd ed. 1999, section 4.5.3; from memory).
 *
 * @param n thermal force per width [N/m]
 * @param m thermal moment per width [N]
 */
public record ThermalResultants(Triple n, Triple m) {

    /**
     * Returns the resultants under a temperature linear through the thickness.
     *
     * @param inside rise of the inside surface [K]
     * @param outside rise of the outside surface [K]
     */
    public static ThermalResultants of(Laminate laminate, double inside, double outside) {
        double mean = (inside + outside) / 2;
        double slope = (outside - inside) / laminate.thickness();
        Triple n = Triple.ZERO;
        Triple m = Triple.ZERO;
        double bottom = -laminate.thickness() / 2;
        for (Layer layer : laminate.layers()) {
            double t = layer.thickness();
            double middle = bottom + t / 2;
            Triple stress = layer.stiffness().times(layer.expansion());
            n = n.plus(stress, t * (mean + slope * middle));
            m = m.plus(stress, t * (mean * middle + slope * (middle * middle + t * t / 12)));
            bottom += t;
        }
        return new ThermalResultants(n, m);
    }
}
