package org.coachskin.reference;

import java.util.List;

/** The published tables about plates. */
final class PlateTables {

    private PlateTables() {}

    static List<PublishedTable> all() {
        return List.of(
                new TimoshenkoPlateTest(),
                new RoarkPlateTest(),
                new MindlinPlateTest(),
                new ReddyPlateTest(),
                new AnglePlyPlateTest(),
                new PaganoClassicalTest(),
                new NafemsPlateTest(),
                new SandwichPlateTest(),
                new ReissnerCapTest(),
                new ReddyShellTest(),
                new PlateFrequenciesTest(),
                new NoorFrequenciesTest(),
                new RavilleUengTest(),
                new ThickPlateFrequenciesTest(),
                new SandwichBucklingTest(),
                new CrossPlyBucklingTest(),
                new ThinBucklingTest());
    }
}
