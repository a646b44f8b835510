package org.coachskin.reference;

import java.util.Locale;
import org.coachskin.failure.CoreShear;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.ShearThroughThickness;
import org.coachskin.material.Strength;

/** Two sandwich beams that were bent until they broke, and the load at which their foam shears. */
final class SandwichBeams {

    private static final double FACE = 1.55e-3;
    private static final double E_FACE = 11.95e9;
    private static final double G_FACE = 3.75e9;
    private static final double E_FOAM = 69e6;
    private static final double G_FOAM = 19e6;
    private static final double FOAM = 20e-3;
    private static final double LOWER = 0.6668e6;
    private static final double UPPER = 0.7126e6;
    private static final double MAKER = 0.85e6;

    private SandwichBeams() {}

    static EvidenceSection section() {
        StringBuilder text =
                new StringBuilder(
                        """
                Source: Nijssen R. P. L., OptiDAT - fatigue of wind turbine materials database, www.kc-wmc.nl, Upwind part, plate JO
                (seen, coupon rows). Three-point bending over 280 mm, two layers of glass at +-45 degrees on each side of 20 mm PVC
                foam of 62 kg/m^3. Its shear strength was measured on two specimens, 0.667 and 0.713 MPa, twenty times slower than
                the beams; its maker gives 0.85 MPa as a mean. The mode of failure was not recorded; face stress excludes the others.

                | beam | measured | foam sheared, two specimens | foam sheared, maker's mean |
                |---|---|---|---|
                """);
        row(text, "JO02", 59.3e-3, 2.05);
        row(text, "JO04", 59.7e-3, 1.94);
        text.append(
                """

                The measured loads lie above the range of the specimens and below the maker's mean: 6 to 21 % above
                ours with the measured foam, part of which is the rate.
                """);
        return new EvidenceSection("Measured: sandwich beams whose foam sheared", text.toString());
    }

    private static void row(StringBuilder text, String beam, double width, double measured) {
        text.append(
                String.format(
                        Locale.ROOT,
                        "| %s | %.2f kN | %.2f to %.2f kN | %.2f kN |%n",
                        beam,
                        measured,
                        load(width, LOWER) / 1e3,
                        load(width, UPPER) / 1e3,
                        load(width, MAKER) / 1e3));
    }

    /** Load at which the foam shears [N]. */
    static double load(double width, double strength) {
        Layer face = new Layer.Laid(StackTable.ply(E_FACE, E_FACE, 0.593, G_FACE, FACE), 0);
        Laminate beam = Laminate.of(face, StackTable.foam(E_FOAM, G_FOAM, FOAM), face);
        // Half of one newton over the width.
        double stress = ShearThroughThickness.of(beam, 0.5 / width, 0).at(0).xz();
        Strength shear = FailureTable.strength(strength);
        return CoreShear.reserve(stress, 0, 0, 0, shear);
    }
}
