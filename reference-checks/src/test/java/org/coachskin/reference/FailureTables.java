package org.coachskin.reference;

import java.util.List;

/** The published tables about failures. */
final class FailureTables {

    private FailureTables() {}

    static List<PublishedTable> all() {
        return List.of(
                new PlyFailureTest(),
                new StrengthParametersTest(),
                new WrinklingTest(),
                new WinklerPlateTest(),
                new SkinStripTest(),
                new SheetHoleTest(),
                new OpenHoleTest(),
                new ClassRulesTest());
    }

    static List<EvidenceSection> sections() {
        return List.of(SandwichBeams.section());
    }
}
