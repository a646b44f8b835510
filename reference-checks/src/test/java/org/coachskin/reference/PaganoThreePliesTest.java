package org.coachskin.reference;

import java.util.List;

/** Pagano, Journal of Composite Materials 4 (1970). */
class PaganoThreePliesTest extends PaganoPlate {

    PaganoThreePliesTest() {
        super(
                "pagano-1970-three-plies.csv",
                List.of(thick(ALONG, 1.0 / 3), thick(ACROSS, 1.0 / 3), thick(ALONG, 1.0 / 3)));
    }

    @Override
    String title() {
        return "Three-ply square plate under a sine pressure, S = side over thickness";
    }
}
