package org.coachskin.reference;

import java.util.List;

/** The published tables about laminates. */
final class LaminateTables {

    private LaminateTables() {}

    static List<PublishedTable> all() {
        return List.of();
    }
}
