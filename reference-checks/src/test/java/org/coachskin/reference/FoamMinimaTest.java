package org.coachskin.reference;

import org.coachskin.units.Dimension;
import org.coachskin.units.Quantity;

class FoamMinimaTest extends MaterialTable {

    FoamMinimaTest() {
        super("foam-minima");
        put("urethane type I", "16 psi");
        put("urethane type IV", "25 psi");
        put("urethane type II", "35 psi");
        put("urethane type III", "50 psi");
        put("EPS type XI", "5 psi");
        put("EPS type I", "10 psi");
        put("EPS type VIII", "13 psi");
        put("XPS type X", "15 psi");
        put("XPS type IV", "25 psi");
        put("XPS type VI", "40 psi");
        put("XPS type VII", "60 psi");
        put("XPS type V", "100 psi");
    }

    private void put(String quantity, String psi) {
        put(quantity, Quantity.parse(psi, Dimension.STRESS) / 1e3);
    }

    @Override
    String title() {
        return "Specification minima of foam in compression: our reading of psi beside the printed kPa";
    }
}
