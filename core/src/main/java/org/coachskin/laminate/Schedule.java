package org.coachskin.laminate;

import java.util.List;
import org.coachskin.Require;
import org.coachskin.Source;
import org.coachskin.material.Cloth;
import org.coachskin.material.Foam;
import org.coachskin.material.Resin;
import org.jspecify.annotations.Nullable;

/**
 * What a maker lays, in the order of laying; a recipe from which a {@link Laminate} follows.
 *
 * @param outside plies of the outside skin, first one on the foam; may be empty
 * @param inside plies of the inside skin, first one on the foam; may be empty
 * @param board the foam; null for a bare laminate, whose plies all stand under {@code outside}, the
 *     first one innermost
 * @param resin the resin of every cloth ply and of the seal coat
 * @param layUp way of working
 * @param sealCoat resin on the cut foam
 * @param wetOnWet whether a light last ply is laid wet on wet and fed by the resin squeegeed out of
 *     the heavier plies under it
 */
public record Schedule(
        List<Item> outside,
        List<Item> inside,
        @Nullable Board board,
        Resin resin,
        LayUp layUp,
        SealCoatMass sealCoat,
        boolean wetOnWet) {

    /** Copies the lists and checks that there is something to lay. */
    public Schedule {
        outside = List.copyOf(outside);
        inside = List.copyOf(inside);
        if (outside.isEmpty() && inside.isEmpty()) {
            throw new IllegalArgumentException("a schedule needs at least one ply");
        }
    }

    /** Returns the stack, inside to outside. */
    public Laminate laminate() {
        return WovenPly.laminate(this);
    }

    /** One ply to lay. */
    public sealed interface Item {
        /** Returns the angle of the warp from x toward y [rad]. */
        double angle();
    }

    /**
     * Cloth to be wetted with the schedule's resin.
     *
     * @param cloth the cloth
     * @param angle of the warp from x toward y [rad]
     */
    public record Wet(Cloth cloth, double angle) implements Item {}

    /**
     * A ply given outright by its constants.
     *
     * @param ply the ply
     * @param angle of direction 1 from x toward y [rad]
     */
    public record Given(Ply ply, double angle) implements Item {}

    /**
     * The foam board, as it is left after shaping.
     *
     * @param foam the foam
     * @param thickness [m]
     * @param thicknessSpread standard deviation of the thickness [m]
     */
    public record Board(Foam foam, double thickness, double thicknessSpread) {
        /** Checks that the thickness is above zero. */
        public Board {
            Require.positive("foam thickness", thickness, "m");
        }
    }

    /**
     * Resin on the cut foam, per face that is glassed.
     *
     * @param outside [kg/m^2]
     * @param inside [kg/m^2]
     * @param spread coefficient of variation [-]
     * @param source where the figure comes from
     */
    public record SealCoatMass(double outside, double inside, double spread, Source source) {
        /** Checks that neither is below zero. */
        public SealCoatMass {
            Require.notNegative("seal coat outside", outside, "kg/m^2");
            Require.notNegative("seal coat inside", inside, "kg/m^2");
        }
    }
}
