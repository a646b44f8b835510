package org.coachskin.reference;

import java.util.HashMap;
import java.util.Map;
import org.coachskin.Source;
import org.coachskin.laminate.PlyStrength;
import org.coachskin.material.Strength;

/** A published table about failure; our values are worked out when it is made. */
abstract class FailureTable extends PublishedTable {

    private final Map<String, Double> ours = new HashMap<>();

    FailureTable(String work) {
        super("failure/" + work + ".csv");
    }

    @Override
    String chapter() {
        return "Failure";
    }

    @Override
    final double ours(String quantity) {
        Double value = ours.get(quantity);
        if (value == null) {
            throw new AssertionError("not worked out: " + quantity);
        }
        return value;
    }

    final void put(String quantity, double value) {
        ours.put(quantity, value);
    }

    static Strength strength(double value) {
        return new Strength(value, Strength.Level.MEAN, Strength.Event.BREAKING, Source.YOURS);
    }

    /** Returns strengths from those in tension and compression along 1, along 2, and in shear. */
    static PlyStrength strength(double xt, double xc, double yt, double yc, double s) {
        return new PlyStrength(strength(xt), strength(xc), strength(yt), strength(yc), strength(s));
    }
}
