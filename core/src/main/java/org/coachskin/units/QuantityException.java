package org.coachskin.units;

/**
 * Text that is not the quantity it should be. Its message goes on from the name of the quantity:
 * "has no unit".
 */
public final class QuantityException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String fix;

    QuantityException(String what, String fix) {
        super(what);
        this.fix = fix;
    }

    /** Returns what to write instead. */
    public String fix() {
        return fix;
    }
}
