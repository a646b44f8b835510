package org.coachskin.reference;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.coachskin.check.VerdictTheory;
import org.coachskin.reference.SweepCase.Shape;

/** The panels of the sweep against 3-D elasticity, and its table. */
final class Sweep {

    /** Shortest wave that is summed for the table [m]. */
    static final double SHORTEST = 2.5e-3;

    private static final double[] PATCHES = {0.02, 0.03, 0.06, 0.1};

    private static final List<String> HEADER =
            List.of(
                    "# The verdict's theory against 3-D elasticity, 250 N on one patch. Written by ElasticitySweepTest with",
                    "# -Dcoachskin.sweep=true; do not edit. exact_: Elasticity3d, waves down to 2.5 mm (5 under 200 mm), the shorter half of",
                    "# them faded; halving that length moves no figure by more than 0.6 per cent, but for the shear",
                    "# in a skin's plane at the very corner of a patch. ours_: what the verdict judges, at its own places.",
                    "# Stress: largest over the places, without sign. Skins of 0.414 mm plies, E 14.5 GPa, nu 0.13, G12 3.1,",
                    "# G13 G23 3.0 GPa; foam E, G MPa 4, 1.5 (32 kg/m^3), 12, 4.2 (64), 22, 8 (96), 52, 18 (160), isotropic",
                    "# through the thickness and in its plane, nu = E/2G - 1, 0.45 at most. A crown is a true cylinder, or a",
                    "# shallow cap in coordinates along mid-height. Rim: simply supported, tangents held.");

    private Sweep() {}

    /**
     * A row.
     *
     * @param load what is pressed
     * @param exact by 3-D elasticity
     * @param ours by the verdict's theory
     */
    record Row(SweepCase load, SweepFigures exact, SweepFigures ours) {}

    static SweepFigures ours(SweepCase load) {
        VerdictTheory v = VerdictTheory.of(load.shape().panel(), load.press());
        return new SweepFigures(
                v.deflection(),
                v.surface(),
                v.outerMiddle(),
                v.innerMiddle(),
                v.outer(),
                v.inner(),
                v.sheared(),
                v.foam(),
                v.dent());
    }

    /** Every case, panel by panel. */
    static Map<Shape, List<SweepCase>> cases() {
        Map<Shape, List<SweepCase>> cases = new LinkedHashMap<>();
        for (int density : new int[] {32, 64, 160}) {
            for (double foam : new double[] {0.006, 0.012, 0.025, 0.05}) {
                middle(cases, Shape.square(1, foam, 1, density, 0.3));
                middle(cases, Shape.square(3, foam, 3, density, 0.3));
            }
        }
        for (double foam : new double[] {0.006, 0.012, 0.025}) {
            middle(cases, Shape.square(2, foam, 1, 64, 0.3));
            middle(cases, Shape.square(2, foam, 2, 96, 0.3));
        }
        for (int plies = 1; plies <= 2; plies++) {
            Shape shape = Shape.square(plies, 0.012, plies, 64, 0.6);
            cases.put(shape, List.of(shape.middle(false, 0.2), shape.middle(true, 0.2)));
        }
        for (double foam : new double[] {0.012, 0.025}) {
            for (int plies = 1; plies <= 2; plies++) {
                middle(cases, Shape.square(plies, foam, 0, 64, 0.3));
                middle(cases, Shape.square(0, foam, plies, 64, 0.3));
            }
        }
        middle(cases, Shape.square(2, 0.025, 0, 32, 0.3));
        for (int bare = 2; bare <= 8; bare *= 2) {
            middle(cases, Shape.square(bare, 0, 0, 64, 0.3));
        }
        for (double radius : new double[] {2.5, 1}) {
            for (boolean cap : new boolean[] {false, true}) {
                double other = cap ? radius : 0;
                middle(cases, new Shape(2, 0.012, 1, 64, 0.3, 0.3, other, radius));
                middle(cases, new Shape(1, 0.025, 1, 64, 0.3, 0.3, other, radius));
            }
            middle(cases, new Shape(3, 0.012, 3, 32, 0.3, 0.3, radius, radius));
        }
        nearRim(cases, Shape.square(2, 0.025, 2, 64, 0.3));
        nearRim(cases, Shape.square(1, 0.012, 1, 64, 0.3));
        return cases;
    }

    private static void middle(Map<Shape, List<SweepCase>> cases, Shape shape) {
        List<SweepCase> loads = new ArrayList<>();
        for (double patch : PATCHES) {
            loads.add(shape.middle(false, patch));
        }
        for (double disc : new double[] {0.02, 0.1}) {
            loads.add(shape.middle(true, disc));
        }
        cases.put(shape, loads);
    }

    /** A patch that touches the rim, one 12 mm from it, and one in the corner. */
    private static void nearRim(Map<Shape, List<SweepCase>> cases, Shape shape) {
        List<SweepCase> loads = new ArrayList<>();
        for (double patch : new double[] {0.03, 0.06}) {
            double middle = shape.width() / 2;
            loads.add(new SweepCase(shape, false, patch, middle, patch / 2));
            loads.add(new SweepCase(shape, false, patch, middle, patch / 2 + 0.012));
            loads.add(new SweepCase(shape, false, patch, patch / 2, patch / 2));
        }
        cases.put(shape, loads);
    }

    /** Works the whole table out; some minutes. */
    static List<Row> solve() {
        return cases().entrySet().parallelStream()
                .map(entry -> solve(entry.getKey(), entry.getValue()))
                .flatMap(List::stream)
                .toList();
    }

    static List<Row> solve(Shape shape, List<SweepCase> loads) {
        double least = loads.stream().mapToDouble(SweepCase::patch).min().orElseThrow();
        List<SweepFigures> exact =
                new PressedSolid(shape).under(loads, Math.max(SHORTEST, least / 40));
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < loads.size(); i++) {
            rows.add(new Row(loads.get(i), exact.get(i), ours(loads.get(i))));
        }
        return rows;
    }

    static String write(List<Row> rows) {
        StringBuilder text = new StringBuilder(String.join("\n", HEADER));
        text.append(
                "\noutside,foam_mm,inside,density,width_mm,length_mm,radius_x_m,radius_y_m,disc,patch_mm,x_mm,y_mm");
        SweepFigures.NAMES.forEach(name -> text.append(",exact_").append(name));
        SweepFigures.NAMES.forEach(name -> text.append(",ours_").append(name));
        text.append('\n');
        for (Row row : rows) {
            Shape s = row.load.shape();
            text.append(
                    String.format(
                            Locale.ROOT,
                            "%d,%.6g,%d,%d,%.6g,%.6g,%.6g,%.6g,%b,%.6g,%.6g,%.6g",
                            s.outside(),
                            s.foam() * 1e3,
                            s.inside(),
                            s.density(),
                            s.width() * 1e3,
                            s.length() * 1e3,
                            s.radiusX(),
                            s.radiusY(),
                            row.load.disc(),
                            row.load.patch() * 1e3,
                            row.load.x() * 1e3,
                            row.load.y() * 1e3));
            append(text, row.exact);
            append(text, row.ours);
            text.append('\n');
        }
        return text.toString();
    }

    private static void append(StringBuilder text, SweepFigures figures) {
        figures.values().forEach(v -> text.append(String.format(Locale.ROOT, ",%.5g", v)));
    }

    static List<Row> read(String text) {
        List<Row> rows = new ArrayList<>();
        for (String line : text.lines().toList()) {
            if (line.startsWith("#") || line.startsWith("outside")) {
                continue;
            }
            String[] f = line.split(",", -1);
            double[] v = new double[f.length];
            for (int i = 0; i < f.length; i++) {
                v[i] = i == 8 ? 0 : Double.parseDouble(f[i]);
            }
            Shape shape =
                    new Shape(
                            (int) v[0],
                            v[1] / 1e3,
                            (int) v[2],
                            (int) v[3],
                            v[4] / 1e3,
                            v[5] / 1e3,
                            v[6],
                            v[7]);
            SweepCase load =
                    new SweepCase(
                            shape,
                            Boolean.parseBoolean(f[8]),
                            v[9] / 1e3,
                            v[10] / 1e3,
                            v[11] / 1e3);
            rows.add(new Row(load, figures(v, 12), figures(v, 12 + SweepFigures.NAMES.size())));
        }
        return rows;
    }

    private static SweepFigures figures(double[] v, int from) {
        List<Double> own = new ArrayList<>();
        for (int i = 0; i < SweepFigures.NAMES.size(); i++) {
            own.add(v[from + i]);
        }
        return SweepFigures.of(own);
    }
}
