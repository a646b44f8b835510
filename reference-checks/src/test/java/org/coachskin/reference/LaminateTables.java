package org.coachskin.reference;

import java.util.List;

/** The published tables about laminates. */
final class LaminateTables {

    private LaminateTables() {}

    static List<PublishedTable> all() {
        return List.of(
                new NettlesTest(),
                new TsaiHahnTest(),
                new KawTest(),
                new GibsonLaminateTest(),
                new BimetalTest(),
                new WhitneyShearTest(),
                new BatozDhattTest(),
                new NafemsStripTest(),
                new AllenBeamTest(),
                new SandwichCouponsTest());
    }
}
