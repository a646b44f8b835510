package org.coachskin.bench;

/**
 * What stays in the part of something that is laid.
 *
 * @param cloth dry cloth; plies given outright, with their resin [kg]
 * @param resin in the cloth or on the foam [kg]
 */
public record Weight(double cloth, double resin) {

    /** Nothing. */
    public static final Weight NONE = new Weight(0, 0);

    /** Returns both together. */
    public Weight plus(Weight other) {
        return new Weight(cloth + other.cloth, resin + other.resin);
    }

    /** Returns the sum [kg]. */
    public double total() {
        return cloth + resin;
    }
}
