package org.coachskin.reference;

import java.util.LinkedHashMap;
import java.util.Map;

/** A published table all of whose figures of ours are worked out together and put. */
abstract class WorkedOutTable extends PublishedTable {

    private final String chapter;
    private final Map<String, Double> put = new LinkedHashMap<>();

    WorkedOutTable(String chapter, String file) {
        super(file);
        this.chapter = chapter;
    }

    @Override
    final String chapter() {
        return chapter;
    }

    final void put(String quantity, double value) {
        put.put(quantity, value);
    }

    /** Returns all that has been put; what puts only when asked does so first. */
    Map<String, Double> worked() {
        return put;
    }

    @Override
    final double ours(String quantity) {
        Double value = worked().get(quantity);
        if (value == null) {
            throw new AssertionError("not worked out: " + quantity);
        }
        return value;
    }
}
