package org.coachskin.laminate;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.Source;
import org.coachskin.Standing;
import org.coachskin.material.Foam;
import org.coachskin.material.Resin;

/**
 * What in a schedule does not go together, or only with care: chemistry, bond and heat, which no
 * stress shows.
 */
public final class Compatibility {

    /**
     * A seal coat above this sits under the cloth as a brittle layer [kg/m^2] [common practice, no
     * source].
     */
    private static final double HEAVY_COAT = 0.6;

    /** Celsius zero [K]. */
    private static final double ZERO = 273.15;

    /** How far below its softening a dry resin is trusted [K] [common practice, no source]. */
    private static final double BELOW_SOFTENING = 15;

    /** Skin of a foam-backed panel in the sun, air of 38 degC [degC]; black is a lower bound. */
    private static final double WHITE = 66;

    private static final double BLACK = 104;

    private static final Source SUN =
            new Source(
                    "chart of a sailplane builder, 1975, as home builders quote it: foam-backed glass, air of 38 degC",
                    "",
                    Standing.FROM_MEMORY);

    private static final Source TRADE =
            new Source("usual in the trade", "", Standing.COMMON_PRACTICE);

    private Compatibility() {}

    /** How much a finding weighs. */
    public enum Severity {
        /** It cannot be laid so. */
        REFUSED,
        /** It can be laid, with care. */
        CAUTION
    }

    /**
     * One thing that does not go together.
     *
     * @param severity how much it weighs
     * @param text what to do or to leave
     * @param reason why
     * @param source where that comes from
     */
    public record Finding(Severity severity, String text, String reason, Source source) {

        /** Returns text, reason and standing, as a person reads them. */
        @Override
        public String toString() {
            return text + " " + reason + " [" + source.standing().words() + "]";
        }
    }

    /** Returns everything found in {@code schedule}, refusals first; empty where all is well. */
    public static List<Finding> of(Schedule schedule) {
        List<Finding> findings = new ArrayList<>();
        Resin resin = schedule.resin();
        Schedule.Board board = schedule.board();
        if (board == null) {
            return findings;
        }
        Foam.Kind kind = board.foam().kind();
        if (resin.kind().styrene() && (kind == Foam.Kind.XPS || kind == Foam.Kind.EPS)) {
            findings.add(
                    new Finding(
                            Severity.REFUSED,
                            "Lay epoxy, or take another foam.",
                            "The styrene in wet "
                                    + resin.name()
                                    + " dissolves polystyrene foam, through any paint.",
                            TRADE));
        }
        if (kind == Foam.Kind.POLYISOCYANURATE) {
            findings.add(
                    new Finding(
                            Severity.CAUTION,
                            "Pull a test disc off the isocyanurate board before you trust the bond.",
                            "It is friable: the skin can come off with a layer of crumbs under bending or vibration.",
                            TRADE));
        }
        double heaviest = Math.max(schedule.sealCoat().outside(), schedule.sealCoat().inside());
        if (heaviest > HEAVY_COAT) {
            findings.add(
                    new Finding(
                            Severity.CAUTION,
                            "The seal coat is heavy: wipe it down or fill the pores with a light slurry.",
                            "A thick brittle layer of resin under the cloth cracks first.",
                            TRADE));
        }
        addHeat(findings, resin);
        addHeat(findings, kind);
        return findings;
    }

    private static void addHeat(List<Finding> findings, Foam.Kind kind) {
        if (kind.serviceLimit().isEmpty()) {
            return;
        }
        long limit = Math.round(kind.serviceLimit().getAsDouble() - ZERO);
        findings.add(
                new Finding(
                        Severity.CAUTION,
                        "Too hot in the sun for the foam in a dark colour: paint it white, and warm it through at no more than "
                                + limit
                                + " degC.",
                        kind
                                + " foam keeps its shape up to about "
                                + limit
                                + " degC; on foam in hot sun white skin reaches "
                                + Math.round(WHITE)
                                + " degC, black over "
                                + Math.round(BLACK)
                                + " degC.",
                        SUN));
    }

    private static void addHeat(List<Finding> findings, Resin resin) {
        double softening = resin.softening() - ZERO;
        double ceiling = softening - BELOW_SOFTENING;
        if (ceiling >= BLACK) {
            return;
        }
        String paint =
                ceiling < WHITE
                        ? "in any colour, white too: warm it through before use, as the resin's maker says."
                        : "in a dark colour: paint it white.";
        findings.add(
                new Finding(
                        Severity.CAUTION,
                        "Too hot in the sun " + paint,
                        "The "
                                + resin.name()
                                + " softens at "
                                + Math.round(softening)
                                + " degC and is trusted up to "
                                + Math.round(ceiling)
                                + " degC; on foam in hot sun white skin reaches "
                                + Math.round(WHITE)
                                + " degC, black over "
                                + Math.round(BLACK)
                                + " degC.",
                        SUN));
    }
}
