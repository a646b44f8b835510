package org.coachskin.reference;

import java.util.List;

/** The published tables about 3-D elasticity. */
final class ElasticityTables {

    private ElasticityTables() {}

    static List<PublishedTable> all() {
        return List.of(
                new PaganoFourPliesTest(),
                new PaganoThreePliesTest(),
                new PaganoSandwichTest(),
                new PaganoStripTest());
    }

    static List<EvidenceSection> sections() {
        return List.of(ElasticitySweepTest.section());
    }
}
