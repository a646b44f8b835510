package org.coachskin.reference;

import java.util.List;

/** The published tables about materials. */
final class MaterialTables {

    private MaterialTables() {}

    static List<PublishedTable> all() {
        return List.of(
                new HandLayUpTest(),
                new ChamisTowTest(),
                new KawTowTest(),
                new SodenTowTest(),
                new FoamMinimaTest());
    }

    static List<EvidenceSection> sections() {
        return List.of(MeasuredPlies.section(), MeasuredFoams.section());
    }
}
