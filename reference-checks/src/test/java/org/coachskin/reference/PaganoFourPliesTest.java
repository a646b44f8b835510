package org.coachskin.reference;

import java.util.List;

/** Pagano, Journal of Composite Materials 4 (1970). */
class PaganoFourPliesTest extends PaganoPlate {

    PaganoFourPliesTest() {
        super(
                "pagano-1970-four-plies.csv",
                List.of(
                        thick(ALONG, 0.25),
                        thick(ACROSS, 0.25),
                        thick(ACROSS, 0.25),
                        thick(ALONG, 0.25)));
    }

    @Override
    String title() {
        return "Four-ply square plate under a sine pressure, S = side over thickness";
    }
}
