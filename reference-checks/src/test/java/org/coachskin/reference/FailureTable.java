package org.coachskin.reference;

import org.coachskin.Source;
import org.coachskin.laminate.PlyStrength;
import org.coachskin.material.Strength;

/** A published table about failure; our values are worked out when it is made. */
abstract class FailureTable extends WorkedOutTable {

    FailureTable(String work) {
        super("Failure", "failure/" + work + ".csv");
    }

    static Strength strength(double value) {
        return new Strength(value, Strength.Level.MEAN, Strength.Event.BREAKING, Source.YOURS);
    }

    /** Returns strengths from those in tension and compression along 1, along 2, and in shear. */
    static PlyStrength strength(double xt, double xc, double yt, double yc, double s) {
        return new PlyStrength(strength(xt), strength(xc), strength(yt), strength(yc), strength(s));
    }
}
