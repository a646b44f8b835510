package org.coachskin.reference;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.material.Foam;
import org.coachskin.material.MaterialLibrary;

/** Measured foams and makers' sheets beside our table. */
final class MeasuredFoams {

    static final String MODULUS = "E through, MPa";
    static final String IN_PLANE = "E in plane, MPa";
    static final String SHEAR = "G, MPa";
    static final String SHEARED = "shear strength, MPa";
    static final String CRUSHED = "crush strength, MPa";
    static final String PULLED = "tensile strength, MPa";
    static final String FLOOR = "crush strength beside a minimum, MPa";
    static final String TOP = "highest usual ";

    private final List<Measured> rows = new ArrayList<>();

    private MeasuredFoams() {
        sheet("PVC 48, sheet 2026", 48, true, 50, 15, 0.56, 0.6, 1.4);
        sheet("PVC 60, sheet 2026", 60, true, 70, 20, 0.76, 0.9, 1.8);
        sheet("PVC 100, sheet 2026", 100, true, 135, 35, 1.6, 2, 3.5);
        sheet("PVC 130, sheet 2026", 130, true, 170, 50, 2.2, 3, 4.8);
        sheet("PVC 160, sheet 2026", 160, true, 200, 60, 2.6, 3.4, 5.4);
        sheet("PVC 250, sheet 2026", 250, true, 400, 97, 4.5, 7.2, 9.2);
        Foam sixty = foam(Foam.Kind.PVC, 60);
        String other = "PVC 60, another maker 2022";
        add(other, MODULUS, 69, 0, sixty.eThrough(), false);
        add(other, IN_PLANE, 45, 0, sixty.eInPlane(), false);
        add(other, SHEAR, 19, 0, sixty.g(), false);
        add(other, SHEARED, 0.85, 0, sixty.shear().value(), false);
        add(other, CRUSHED, 0.9, 0, sixty.crush().value(), false);
        Foam eighty = foam(Foam.Kind.PVC, 80);
        other = "PVC 80, another maker 2022";
        add(other, MODULUS, 104, 0, eighty.eThrough(), true);
        add(other, IN_PLANE, 66, 0, eighty.eInPlane(), true);
        add(other, SHEAR, 26, 0, eighty.g(), true);
        add(other, SHEARED, 1.2, 0, eighty.shear().value(), true);
        add(other, CRUSHED, 1.45, 0, eighty.crush().value(), true);
        Foam blocks = foam(Foam.Kind.PVC, 62.45);
        // Scatter: half the range of two and of three blocks.
        add(
                "PVC 62.45, two blocks sheared",
                SHEARED,
                0.6897,
                0.0229,
                blocks.shear().value(),
                false);
        add("PVC 62.45, blocks crushed", CRUSHED, 1.0427, 0.0614, blocks.crush().value(), false);
        add("PVC 100, measured", SHEAR, 40, 0, foam(Foam.Kind.PVC, 100).g(), false);
        Foam board = foam(Foam.Kind.POLYISOCYANURATE, 36.84);
        String bun = "isocyanurate 37, sheet";
        add(bun, MODULUS, 5.592, 0, board.eThrough(), true);
        add(bun, SHEAR, 1.772, 0, board.g(), true);
        add(bun, SHEARED, 0.1724, 0, board.shear().value(), true);
        add(bun, CRUSHED, 0.2551, 0, board.crush().value(), true);
        add(bun, PULLED, 0.3103, 0, board.tension().value(), true);
        Foam urethane = foam(Foam.Kind.POLYURETHANE, 36.84);
        String beside = "urethane row beside that sheet";
        add(beside, MODULUS, 5.592, 0, urethane.eThrough(), false);
        add(beside, SHEAR, 1.772, 0, urethane.g(), false);
        add(beside, SHEARED, 0.1724, 0, urethane.shear().value(), false);
        add(beside, CRUSHED, 0.2551, 0, urethane.crush().value(), false);
        add(beside, PULLED, 0.3103, 0, urethane.tension().value(), false);
        floor("urethane 30, middle of a federal class", 30.5, 0.110);
        floor("urethane 44, middle of a federal class", 44.5, 0.241);
        floor("urethane 58, middle of a federal class", 58.5, 0.345);
        floor("urethane 28, sprayed, Canadian standard", 28, 0.170);
        range("urethane 100, top of a trade range", 100, SHEARED, 0.450);
        range("urethane 100, top of a trade range", 100, PULLED, 0.900);
        polystyrene("XPS 28, strips bent", 28.03, 17.24, true);
        polystyrene("XPS 32, strips bent", 31.72, 20.78, true);
        polystyrene("XPS 26, strips bent", 26.11, 16.71, false);
        polystyrene("XPS 37, strips bent", 36.57, 42.8, false);
    }

    static List<Measured> rows() {
        return List.copyOf(new MeasuredFoams().rows);
    }

    private void sheet(
            String specimen,
            double density,
            boolean copied,
            double e,
            double g,
            double shear,
            double crush,
            double tension) {
        Foam foam = foam(Foam.Kind.PVC, density);
        add(specimen, MODULUS, e, 0, foam.eThrough(), copied);
        add(specimen, SHEAR, g, 0, foam.g(), copied);
        add(specimen, SHEARED, shear, 0, foam.shear().value(), copied);
        add(specimen, CRUSHED, crush, 0, foam.crush().value(), copied);
        add(specimen, PULLED, tension, 0, foam.tension().value(), copied);
    }

    private void floor(String specimen, double density, double minimum) {
        Foam foam = foam(Foam.Kind.POLYURETHANE, density);
        add(specimen, FLOOR, minimum, 0, foam.crush().value(), false);
    }

    private void range(String specimen, double density, String property, double top) {
        Foam foam = foam(Foam.Kind.POLYURETHANE, density);
        double ours = (property.equals(SHEARED) ? foam.shear() : foam.tension()).value();
        add(specimen, TOP + property, top, 0, ours, false);
    }

    private void polystyrene(String specimen, double density, double e, boolean copied) {
        add(specimen, MODULUS, e, 0, foam(Foam.Kind.XPS, density).eThrough(), copied);
    }

    private static Foam foam(Foam.Kind kind, double density) {
        return MaterialLibrary.standard().foam(kind, density).orElseThrow();
    }

    private void add(
            String specimen,
            String property,
            double value,
            double scatter,
            double ours,
            boolean copied) {
        rows.add(new Measured(specimen, property, value, scatter, ours / 1e6, copied));
    }

    static EvidenceSection section() {
        return new EvidenceSection(
                "Measured: foams",
                """
                A row is circular where our table holds the very value of that sheet; it then shows the table's rounding and
                interpolation, and is left out of the summary. No measured set for plain urethane was found, neither modulus nor strength: its
                rows are from memory, set here beside an isocyanurate sheet, beside the minima of two standards (ours is meant as a mean and has to
                lie above) and beside the highest strength a trade association calls usual for 30 to 100 kg/m^3.

                Sources: Diab, Divinycell H data sheet, revision 26, 2026, nominal values (read in a transcription). 3A Composites, Airex C70 data
                sheet, 2022 (read in a transcription). Nijssen R. P. L., OptiDAT, 2017, plate JU (blocks of PVC: seen). Bednarcyk et al.,
                NASA/TM-2012-217694, table 3 (PVC 100: read in a transcription). Data sheet of Elfoam T250, parallel to rise (seen). Drela and
                Barnes, Elastic modulus of common foams, 2003 (XPS, strips bent without correction for shear, which reads low: seen).
                Minima: HH-I-530 (16, 35 and 50 psi) as a supplier's table repeats it, CAN/ULC S705.1 (170 kPa); ranges: a trade association's page (all
                three read in a transcription).

                """
                        + Measured.tables(rows())
                        + """

                Beside the isocyanurate sheet urethane of ours is 13 % low in E, 5 % high in G, 5 % low in shear, 19 % in crushing and 24 % in tension: the soft
                and weak side but for G. It clears the federal minima by 12 to 43 % and stays 19 % below the Canadian one for sprayed foam. At
                100 kg/m^3 its shear strength is above what is called usual, by almost a quarter: the factor of 2.5 on core shear has to cover that until a block
                of the maker's own is tested.

                #### How foam follows its density

                A line through the logarithms of our rows (of PVC those of one sheet, 48 to 250 kg/m^3; urethane 32 to 320), and the power
                that is used beyond the ends of a table and for the scatter of density. Scatter: standard deviation of the rows about their own line.
                Worst: the largest distance of a row from the line of the power used. A density between two rows follows the rows.

                """
                        + DensityFit.table());
    }
}
