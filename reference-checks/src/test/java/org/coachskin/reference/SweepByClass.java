package org.coachskin.reference;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

/** The sweep against 3-D elasticity by class of panel: mean, lowest, highest, and where. */
final class SweepByClass {

    /** Below this share of the direct stress, shear in the plane of a ply decides nothing. */
    private static final double SHEAR_COUNTS = 0.4;

    private SweepByClass() {}

    /** Classes of panel, in the order of the page. */
    enum PanelClass {
        WIDE("flat, two skins, foam to 0.4 of the patch"),
        MIDDLING("flat, two skins, foam 0.4 to 1.3 of the patch"),
        SMALL("flat, two skins, foam more than 1.3 of the patch"),
        STOUT("flat, 3 + 3 plies on foam of 32 kg/m^3"),
        OUTSIDE_ONLY("outside skin only"),
        INSIDE_ONLY("inside skin only"),
        BARE("bare laminate"),
        CROWNED("crowned, R 2.5 m"),
        TIGHT("crowned, R 1 m"),
        RIM("square touching the rim or 12 mm from it");

        final String words;

        PanelClass(String words) {
            this.words = words;
        }

        static PanelClass of(SweepCase load) {
            SweepCase.Shape s = load.shape();
            if (s.foam() == 0) {
                return BARE;
            }
            if (s.inside() == 0) {
                return OUTSIDE_ONLY;
            }
            if (s.outside() == 0) {
                return INSIDE_ONLY;
            }
            if (s.radiusY() != 0) {
                return s.radiusY() < 2 ? TIGHT : CROWNED;
            }
            if (!load.isCentred()) {
                return RIM;
            }
            if (s.outside() == 3 && s.density() == 32) {
                return STOUT;
            }
            double ratio = load.slenderness();
            return ratio <= 0.4 ? WIDE : ratio <= 1.3 ? MIDDLING : SMALL;
        }
    }

    /** A figure of which the error is listed [-]; not a number where it says nothing. */
    enum Figure {
        DEFLECTION("deflection, mean of both surfaces"),
        SURFACE("movement of the outside surface"),
        OUTER_MIDDLE("stress outside, under the middle"),
        INNER_MIDDLE("stress inside, under the middle"),
        OUTER("stress outside, largest"),
        INNER("stress inside, largest"),
        SHEARED("shear in the plane of a ply, where over 0.4 of it"),
        FOAM("shear of the foam, largest"),
        DENT("dent");

        final String words;

        Figure(String words) {
            this.words = words;
        }

        double error(Sweep.Row row) {
            return switch (this) {
                case DEFLECTION -> relative(row, SweepFigures::deflection);
                case SURFACE -> relative(row, SweepFigures::surface);
                case OUTER_MIDDLE -> relative(row, SweepFigures::outerMiddle);
                case INNER_MIDDLE -> relative(row, SweepFigures::innerMiddle);
                case OUTER -> relative(row, SweepFigures::outer);
                case INNER -> relative(row, SweepFigures::inner);
                case SHEARED -> sheared(row);
                case FOAM -> relative(row, SweepFigures::foam);
                case DENT -> dent(row);
            };
        }
    }

    /** Ours against exact, relative to exact. */
    private static double relative(Sweep.Row row, ToDoubleFunction<SweepFigures> figure) {
        double exact = figure.applyAsDouble(row.exact());
        double ours = figure.applyAsDouble(row.ours());
        return exact == 0 ? Double.NaN : (ours - exact) / Math.abs(exact);
    }

    private static double sheared(Sweep.Row row) {
        double direct = Math.max(row.exact().outer(), row.exact().inner());
        return row.exact().sheared() < SHEAR_COUNTS * direct
                ? Double.NaN
                : relative(row, SweepFigures::sheared);
    }

    /** With a skin off or a crown the foam thins by its stretch too: set against the movement. */
    private static double dent(Sweep.Row row) {
        SweepCase.Shape s = row.load().shape();
        if (s.foam() == 0) {
            return Double.NaN;
        }
        if (s.inside() > 0 && s.outside() > 0 && s.radiusY() == 0) {
            return relative(row, SweepFigures::dent);
        }
        return (row.ours().dent() - row.exact().dent()) / row.exact().surface();
    }

    static EvidenceSection section(List<Sweep.Row> rows) {
        StringBuilder text = new StringBuilder();
        text.append(
                String.format(
                        Locale.ROOT,
                        """
                %d cases, 250 N on one patch: `sweep-3d.csv`, whose head says what they are and how they were made. Exact: 3-D
                elasticity wave by wave, on a crown in its own curved coordinates. Ours: what the verdict judges, at its own
                places, layered theory with the local effect; a disc is the square of equal area. The exact figure is the
                largest over many more places. Differences relative to the exact figure; a stress that is too low is
                negative. The dent of panels with one skin or a crown is set against the movement of the outside surface.

                """,
                        rows.size()));
        table(text, "Squares", rows.stream().filter(r -> !r.load().disc()).toList());
        table(
                text,
                "Discs, against the true disc",
                rows.stream().filter(r -> r.load().disc()).toList());
        return new EvidenceSection(
                "The verdict's theory against 3-D elasticity, by class of panel", text.toString());
    }

    private static void table(StringBuilder text, String title, List<Sweep.Row> rows) {
        text.append("### ").append(title).append("\n\n");
        text.append("| class | figure | cases | mean | lowest | highest | furthest off |\n");
        text.append("|---|---|---|---|---|---|---|\n");
        Map<PanelClass, List<Sweep.Row>> classes = new TreeMap<>(byClass(rows));
        classes.forEach(
                (name, own) -> {
                    for (Figure figure : Figure.values()) {
                        line(text, name, figure, own);
                    }
                });
        text.append('\n');
    }

    static Map<PanelClass, List<Sweep.Row>> byClass(List<Sweep.Row> rows) {
        Map<PanelClass, List<Sweep.Row>> classes = new EnumMap<>(PanelClass.class);
        for (PanelClass name : PanelClass.values()) {
            List<Sweep.Row> own =
                    rows.stream().filter(r -> PanelClass.of(r.load()) == name).toList();
            if (!own.isEmpty()) {
                classes.put(name, own);
            }
        }
        return classes;
    }

    private static void line(
            StringBuilder text, PanelClass name, Figure figure, List<Sweep.Row> own) {
        List<Sweep.Row> counted = own.stream().filter(r -> !Double.isNaN(figure.error(r))).toList();
        if (counted.isEmpty()) {
            return;
        }
        var errors = counted.stream().mapToDouble(figure::error).summaryStatistics();
        Sweep.Row worst =
                counted.stream()
                        .max(Comparator.comparingDouble(r -> Math.abs(figure.error(r))))
                        .orElseThrow();
        text.append(
                String.format(
                        Locale.ROOT,
                        "| %s | %s | %d | %s | %s | %s | %s |%n",
                        name.words,
                        figure.words,
                        counted.size(),
                        percent(errors.getAverage()),
                        percent(errors.getMin()),
                        percent(errors.getMax()),
                        worst.load().words()));
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%+.1f %%", 100 * share);
    }
}
