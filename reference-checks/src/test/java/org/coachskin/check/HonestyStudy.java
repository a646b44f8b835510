package org.coachskin.check;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.coachskin.analysis.Analysis;
import org.coachskin.analysis.CaseResponse;
import org.coachskin.analysis.Response;
import org.coachskin.series.SeriesAnalysis;
import org.coachskin.shell.ShellAnalysis;

/**
 * Figures of verdicts by elements with what is said of their error, and the same by something far
 * better, read at the same places: the series where it applies, elsewhere elements of order {@value
 * #BETTER} with edges {@value #SHARE} of the usual. The numbers of {@link Convergence} were chosen
 * on the first panels of the lot, none of which is among these.
 */
public final class HonestyStudy {

    /** Where the table lies among the resources. */
    public static final String TABLE = "/org/coachskin/reference/shell/honest-estimates.csv";

    /** The panels that are solved: from this one on. */
    static final int FIRST = 216;

    static final int PANELS = 48;

    private static final int BETTER = 6;
    private static final double SHARE = 0.8;

    /** A reserve above this is printed as endless. */
    private static final double ENDLESS = 100;

    /** A force below this share of the largest beside it is rounding. */
    private static final double NOTHING = 1e-6;

    private static final String HEAD = "panel,sort,kind,figure,usual,estimate,better,unit,by";

    private HonestyStudy() {}

    /**
     * One figure.
     *
     * @param panel number of the panel
     * @param sort of panel
     * @param kind of figure
     * @param figure its name
     * @param usual by the elements that answer
     * @param estimate what is said of its error, in {@code unit}s
     * @param better by series or far finer elements
     * @param unit what errors are counted in
     * @param by who says what is better
     */
    public record Row(
            int panel,
            String sort,
            String kind,
            String figure,
            double usual,
            double estimate,
            double better,
            double unit,
            String by) {

        /** Returns how far the usual elements are off, relative [-]. */
        public double error() {
            return Math.abs(usual - better) / unit;
        }

        String line() {
            return String.format(
                    Locale.ROOT,
                    "%d,%s,%s,%s,%.9g,%.3g,%.9g,%.9g,%s%n",
                    panel,
                    sort,
                    kind,
                    figure,
                    usual,
                    estimate,
                    better,
                    unit,
                    by);
        }
    }

    /** Returns the kinds of figures, in the order of the page. */
    public static List<String> kinds() {
        List<String> kinds = new ArrayList<>();
        for (Figure.Kind kind : Figure.Kind.values()) {
            kinds.add(kind.name());
        }
        return kinds;
    }

    /** Returns the stored table. */
    public static List<Row> stored() {
        try (InputStream in = HonestyStudy.class.getResourceAsStream(TABLE)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return text.lines()
                    .filter(line -> !line.startsWith("#") && !line.equals(HEAD))
                    .map(line -> line.split(",", -1))
                    .map(HonestyStudy::row)
                    .toList();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Row row(String[] p) {
        return new Row(
                Integer.parseInt(p[0]),
                p[1],
                p[2],
                p[3],
                Double.parseDouble(p[4]),
                Double.parseDouble(p[5]),
                Double.parseDouble(p[6]),
                Double.parseDouble(p[7]),
                p[8]);
    }

    static String head() {
        return "# Reserves [-], forces [N] and frequencies [Hz] of panels drawn by lot.\n"
                + HEAD
                + "\n";
    }

    /** Returns the rows of one panel, worked out anew. */
    static List<Row> solve(int panel) {
        DrawnPanels.Sort sort = DrawnPanels.sort(panel);
        boolean series = sort == DrawnPanels.Sort.RIM || sort == DrawnPanels.Sort.CROWNED_RIM;
        Answered answered = new Answered(DrawnPanels.job(panel));
        Map<String, Figure> exact =
                answered.by(
                        series ? new SeriesAnalysis() : new ShellAnalysis(BETTER, false, SHARE));
        List<Row> rows = new ArrayList<>();
        for (Figure figure : answered.figures.values()) {
            Figure wanted = exact.get(figure.name());
            if (wanted != null && counts(wanted)) {
                rows.add(
                        new Row(
                                panel,
                                sort.name(),
                                figure.kind().name(),
                                figure.name(),
                                figure.value(),
                                answered.error(figure.name()),
                                wanted.value(),
                                wanted.unit(),
                                series ? "series" : "finer elements"));
            }
        }
        return rows;
    }

    private static boolean counts(Figure wanted) {
        // A palm's movement is its stiffness, a spread load's its sag.
        boolean twice = wanted.name().startsWith("movement");
        boolean endless = wanted.mode().isPresent() && !(wanted.value() < ENDLESS);
        boolean nothing =
                wanted.kind() == Figure.Kind.REACTION
                        && Math.abs(wanted.value()) < NOTHING * wanted.unit();
        return !twice && !endless && !nothing;
    }

    /** Returns the figures of one panel by the usual elements, and what is said of their errors. */
    static Answered usual(int panel) {
        return new Answered(DrawnPanels.job(panel));
    }

    /** A panel answered by elements as the check does it. */
    static final class Answered {
        private final Map<String, Figure> figures;
        private final Map<String, Double> errors = new HashMap<>();
        private final Job job;
        private final Elements.Outcome outcome;
        private final List<Place> moved;

        Answered(Job job) {
            this.job = job;
            Solvers solvers = new Solvers(false, true);
            Elements elements = new Elements(job, solvers);
            outcome = elements.outcome(PanelCheck.cases(job, solvers.ofOrder(ShellAnalysis.ORDER)));
            moved = outcome.cases().stream().map(check -> Moving.at(job, check)).toList();
            figures = Figure.of(outcome.margins(), outcome.cases(), moved, outcome.frequency());
            outcome.margins()
                    .forEach(margin -> errors.put(margin.mode().words(), margin.meshError()));
            outcome.errors().forEach(error -> errors.put(error.figure(), error.error()));
        }

        /** Returns what is said of the error of a figure. */
        double error(String figure) {
            return errors.getOrDefault(figure, Double.NaN);
        }

        /** Returns the value of a figure. */
        double value(String figure) {
            Figure found = figures.get(figure);
            return found == null ? Double.NaN : found.value();
        }

        /** Returns the figures of another solver, read at the same places. */
        private Map<String, Figure> by(Analysis solver) {
            Set<Response.Spot> places = new HashSet<>();
            for (Margin margin : outcome.margins()) {
                places.add(new Response.Spot(margin.place().x(), margin.place().y()));
            }
            List<CaseResponse> answers = solver.loadCases(job.panel(), job.loads());
            List<CaseCheck> checks = new ArrayList<>();
            for (int i = 0; i < answers.size(); i++) {
                checks.add(outcome.cases().get(i).again(answers.get(i), places));
            }
            return Figure.of(
                    PanelCheck.worstOfEachMode(job, checks),
                    checks,
                    moved,
                    solver.frequency(job.panel()));
        }
    }

    /** Writes rows of some panels: first and one past the last number. */
    public static void main(String[] args) {
        for (int panel = Integer.parseInt(args[0]); panel < Integer.parseInt(args[1]); panel++) {
            solve(panel).forEach(row -> System.out.print(row.line()));
        }
    }
}
