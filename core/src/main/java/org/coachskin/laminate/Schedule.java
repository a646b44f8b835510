package org.coachskin.laminate;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.coachskin.Require;
import org.coachskin.Source;
import org.coachskin.Standing;
import org.coachskin.material.Cloth;
import org.coachskin.material.Foam;
import org.coachskin.material.FoamLaw;
import org.coachskin.material.Resin;
import org.coachskin.material.Weave;
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

    /**
     * Where a light ply laid wet on wet ends, and where the plies that feed it stop giving resin
     * [-].
     */
    private static final double FED = 0.50;

    private static final double DRAINED = 0.55;

    /** Returns the stack, inside to outside. */
    public Laminate laminate() {
        List<Layer> layers = new ArrayList<>();
        if (board == null) {
            layers.addAll(plies(outside));
            return new Laminate(layers);
        }
        List<Layer> inner = plies(inside);
        Collections.reverse(inner);
        layers.addAll(inner);
        addSealCoat(layers, inside, sealCoat.inside());
        layers.add(new Layer.Core(board.foam(), board.thickness()));
        addSealCoat(layers, outside, sealCoat.outside());
        layers.addAll(plies(outside));
        return new Laminate(layers);
    }

    private void addSealCoat(List<Layer> layers, List<Item> skin, double mass) {
        if (!skin.isEmpty() && mass > 0) {
            layers.add(new Layer.SealCoat(WovenPly.sealCoat(resin, mass)));
        }
    }

    private List<Layer> plies(List<Item> skin) {
        List<Layer> plies = new ArrayList<>();
        for (int i = 0; i < skin.size(); i++) {
            Item item = skin.get(i);
            Ply ply =
                    item instanceof Wet wet
                            ? WovenPly.of(wet.cloth(), resin, share(skin, i), layUp.voids())
                            : ((Given) item).ply();
            plies.add(new Layer.Laid(ply, item.angle()));
        }
        return plies;
    }

    /**
     * Returns the glass share of ply {@code i} of a skin. Wet on wet, a last ply lighter than the
     * ones under it ends at {@value #FED}: they give it resin until they stand at {@value
     * #DRAINED}, the brush adds the rest.
     */
    private double share(List<Item> skin, int i) {
        Cloth cloth = ((Wet) skin.get(i)).cloth();
        if (cloth.weave() == Weave.MAT) {
            return layUp.matShare();
        }
        int last = skin.size() - 1;
        if (!wetOnWet || last == 0 || !(skin.get(last) instanceof Wet top)) {
            return layUp.glassShare();
        }
        double heavy = 0;
        for (int k = 0; k < last; k++) {
            if (!(skin.get(k) instanceof Wet under)
                    || under.cloth().arealMass() <= top.cloth().arealMass()) {
                return layUp.glassShare();
            }
            heavy += under.cloth().arealMass();
        }
        if (i == last) {
            return Math.max(FED, layUp.glassShare());
        }
        double perGlass = 1 / layUp.glassShare() - 1;
        double spare = Math.max(0, heavy * (perGlass - (1 / DRAINED - 1)));
        double wanted = top.cloth().arealMass() * (1 / Math.max(FED, layUp.glassShare()) - 1);
        double left = heavy * perGlass - Math.min(spare, wanted);
        return heavy / (heavy + left);
    }

    /** Returns what one square metre weighs, by kind. */
    public Masses masses() {
        double glass = 0;
        double wet = 0;
        double given = 0;
        for (List<Item> skin : List.of(outside, inside)) {
            for (int i = 0; i < skin.size(); i++) {
                if (skin.get(i) instanceof Wet item) {
                    glass += item.cloth().arealMass();
                    wet += item.cloth().arealMass() * (1 / share(skin, i) - 1);
                } else {
                    Ply ply = ((Given) skin.get(i)).ply();
                    given += ply.thickness() * ply.density();
                }
            }
        }
        double coat =
                board == null
                        ? 0
                        : (outside.isEmpty() ? 0 : sealCoat.outside())
                                + (inside.isEmpty() ? 0 : sealCoat.inside());
        double foam = board == null ? 0 : board.thickness() * board.foam().density();
        return new Masses(glass, wet, coat, foam, given);
    }

    /**
     * Mass per area [kg/m^2], by kind.
     *
     * @param glass dry cloth
     * @param resin resin in the cloth
     * @param sealCoat resin on the cut foam
     * @param foam foam
     * @param given plies given outright, glass and resin together
     */
    public record Masses(double glass, double resin, double sealCoat, double foam, double given) {
        /** Returns the sum [kg/m^2]. */
        public double total() {
            return glass + resin + sealCoat + foam + given;
        }
    }

    /**
     * Returns how much dry cloth lies in each ply of cloth [kg/m^2], every ply that differs once.
     */
    public Map<Ply, Double> cloth() {
        Map<Ply, Double> cloth = new LinkedHashMap<>();
        for (List<Item> skin : List.of(outside, inside)) {
            List<Layer> plies = plies(skin);
            for (int i = 0; i < plies.size(); i++) {
                if (skin.get(i) instanceof Wet wet && plies.get(i) instanceof Layer.Laid laid) {
                    cloth.put(laid.ply(), wet.cloth().arealMass());
                }
            }
        }
        return cloth;
    }

    /** Returns this schedule with another outside skin. */
    public Schedule withOutside(List<Item> plies) {
        return new Schedule(plies, inside, board, resin, layUp, sealCoat, wetOnWet);
    }

    /** Returns this schedule with another inside skin. */
    public Schedule withInside(List<Item> plies) {
        return new Schedule(outside, plies, board, resin, layUp, sealCoat, wetOnWet);
    }

    /** Returns this schedule with another board. */
    public Schedule withBoard(@Nullable Board other) {
        return new Schedule(outside, inside, other, resin, layUp, sealCoat, wetOnWet);
    }

    /**
     * Returns this schedule with one primary input moved and all that follows from it.
     *
     * @param sigmas by how many of its standard deviations
     */
    public Schedule moved(PrimaryInput input, double sigmas) {
        return switch (input) {
            case CLOTH_MASS ->
                    withOutside(heavier(outside, sigmas)).withInside(heavier(inside, sigmas));
            case GLASS_SHARE ->
                    new Schedule(
                            outside, inside, board, resin, layUp.moved(sigmas), sealCoat, wetOnWet);
            case FOAM_DENSITY ->
                    board == null
                            ? this
                            : withFoam(
                                    FoamLaw.atDensity(
                                            board.foam(),
                                            board.foam().density()
                                                    * (1 + sigmas * board.foam().densitySpread())));
            case FOAM_MODULUS ->
                    board == null
                            ? this
                            : withFoam(
                                    board.foam()
                                            .withModuliTimes(
                                                    1 + sigmas * board.foam().modulusSpread()));
            case FOAM_THICKNESS ->
                    board == null
                            ? this
                            : withBoard(
                                    new Board(
                                            board.foam(),
                                            board.thickness() + sigmas * board.thicknessSpread(),
                                            board.thicknessSpread()));
            case SEAL_COAT -> {
                double factor = 1 + sigmas * sealCoat.spread();
                yield new Schedule(
                        outside,
                        inside,
                        board,
                        resin,
                        layUp,
                        new SealCoatMass(
                                sealCoat.outside() * factor,
                                sealCoat.inside() * factor,
                                sealCoat.spread(),
                                sealCoat.source()),
                        wetOnWet);
            }
            case STRENGTHS -> this;
        };
    }

    private Schedule withFoam(Foam foam) {
        Board old = java.util.Objects.requireNonNull(board);
        return withBoard(new Board(foam, old.thickness(), old.thicknessSpread()));
    }

    private static List<Item> heavier(List<Item> skin, double sigmas) {
        List<Item> moved = new ArrayList<>();
        for (Item item : skin) {
            moved.add(
                    item instanceof Wet wet
                            ? new Wet(
                                    wet.cloth()
                                            .withArealMass(
                                                    wet.cloth().arealMass()
                                                            * (1
                                                                    + sigmas
                                                                            * wet.cloth()
                                                                                    .massSpread())),
                                    wet.angle())
                            : item);
        }
        return moved;
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
        /**
         * Standard deviation of the thickness after shaping and sanding [m] [common practice, no
         * source].
         */
        public static final double USUAL_SPREAD = 0.7e-3;

        /** Checks that the thickness is above zero. */
        public Board {
            Require.positive("foam thickness", thickness, "m");
        }

        /** Returns this board of another foam. */
        public Board withFoam(Foam other) {
            return new Board(other, thickness, thicknessSpread);
        }

        /** Returns this board in another thickness [m], spread as much. */
        public Board withThickness(double other) {
            return new Board(foam, other, thicknessSpread);
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
        /** 300 g/m^2 on each face, 30 % of scatter. */
        public static final SealCoatMass USUAL =
                new SealCoatMass(
                        0.3,
                        0.3,
                        0.3,
                        new Source(
                                "uptake of cut urethane: weigh a scrap",
                                "",
                                Standing.COMMON_PRACTICE));

        /** Checks that neither is below zero. */
        public SealCoatMass {
            Require.notNegative("seal coat outside", outside, "kg/m^2");
            Require.notNegative("seal coat inside", inside, "kg/m^2");
        }
    }
}
