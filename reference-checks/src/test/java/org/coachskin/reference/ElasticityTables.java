package org.coachskin.reference;

import java.util.List;

/** The published tables about elasticitys. */
final class ElasticityTables {

    private ElasticityTables() {}

    static List<PublishedTable> all() {
        return List.of(
                new PaganoFourPliesTest(), new PaganoThreePliesTest(), new PaganoSandwichTest());
    }

    static List<EvidenceSection> sections() {
        return List.of(ElasticitySweepTest.section());
    }
}
