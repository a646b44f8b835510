package org.coachskin.reference;

import java.util.List;

/** Pagano, Journal of Composite Materials 4 (1970). */
class PaganoSandwichTest extends PaganoPlate {

    PaganoSandwichTest() {
        super("pagano-1970-sandwich.csv", List.of(thick(ALONG, 0.1), core(0.8), thick(ALONG, 0.1)));
    }

    @Override
    String title() {
        return "Square sandwich plate under a sine pressure, S = side over thickness";
    }
}
