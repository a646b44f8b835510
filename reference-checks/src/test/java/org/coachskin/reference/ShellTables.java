package org.coachskin.reference;

import java.util.List;

/** The published tables about panels on their own supports. */
final class ShellTables {

    private ShellTables() {}

    static List<PublishedTable> all() {
        return List.of(
                new ClampedPlateTest(),
                new OtherEdgesPlateTest(),
                new CircularPlateTest(),
                new ClampedThickPlateTest(),
                new FreeFrequenciesTest(),
                new SkewPlateTest(),
                new HoleTest(),
                new PlateBucklingTest(),
                new SandwichPanelBucklingTest(),
                new CrossPlyPanelBucklingTest(),
                new CurvedBucklingTest());
    }

    static List<EvidenceSection> sections() {
        return List.of(ShellAgainstSeriesTest.section(), HonestEstimates.section());
    }
}
