package org.coachskin.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.coachskin.analysis.Response;
import org.coachskin.panel.Load;
import org.coachskin.panel.Panel;
import org.coachskin.series.SeriesAnalysis;
import org.coachskin.shell.ShellAnalysis;
import org.junit.jupiter.api.Test;

/** Finite elements against series, and both against 3-D elasticity, off the middle of a panel. */
class ShellAgainstSeriesTest {

    /** What elements of the usual order leave of a deflection and of a moment. */
    private static final double USUAL = 0.01;

    /** What those of a high order leave. */
    private static final double HIGH = 5e-4;

    private static final int ORDER = 8;

    private static final List<Both> ALL = new ArrayList<>();

    /**
     * One pressed panel.
     *
     * @param load what is pressed
     * @param exact deflection by 3-D elasticity, not a number where it is not in the sweep [m]
     * @param shell answer by finite elements of the usual order
     * @param fine answer by those of a high order
     * @param series answer by series
     */
    private record Both(
            SweepCase load, double exact, Response shell, Response fine, Response series) {
        double deflection(Response response) {
            return response.deflection(load.x(), load.y());
        }

        double moment(Response response) {
            return Math.abs(response.forces(load.x(), load.y()).m().x());
        }
    }

    private static synchronized List<Both> all() {
        if (ALL.isEmpty()) {
            for (Sweep.Row row : ElasticitySweepTest.ROWS) {
                if (!row.load().isCentred() && row.load().patch() < 0.05) {
                    ALL.add(both(row.load(), row.exact().deflection()));
                }
            }
            SweepCase.Shape lid = new SweepCase.Shape(2, 0.012, 1, 64, 0.9, 0.7, 2.5, 4);
            ALL.add(both(new SweepCase(lid, false, 0.1, 0.3, 0.2), Double.NaN));
            SweepCase.Shape flat = new SweepCase.Shape(1, 0.025, 1, 64, 0.9, 0.7, 0, 0);
            ALL.add(both(new SweepCase(flat, false, 0.1, 0.6, 0.1), Double.NaN));
        }
        return List.copyOf(ALL);
    }

    private static Both both(SweepCase load, double exact) {
        Panel panel = load.shape().panel();
        List<Load> press = List.of(load.press());
        return new Both(
                load,
                exact,
                new ShellAnalysis().statics(panel, press),
                new ShellAnalysis(ORDER, false).statics(panel, press),
                new SeriesAnalysis().statics(panel, press));
    }

    @Test
    void theyAgree() {
        for (Both both : all()) {
            String what = both.load().words();
            double w = both.deflection(both.series());
            assertEquals(w, both.deflection(both.shell()), USUAL * w, what);
            assertEquals(w, both.deflection(both.fine()), HIGH * w, what);
            double m = both.moment(both.series());
            assertEquals(m, both.moment(both.shell()), USUAL * m, what);
            assertEquals(m, both.moment(both.fine()), HIGH * m, what);
        }
    }

    static EvidenceSection section() {
        Columns columns =
                new Columns(
                        "panel and patch",
                        "w 3-D mm>",
                        "w order 4>",
                        "w order 8>",
                        "w series>",
                        "Mx order 4 N>",
                        "Mx order 8>",
                        "Mx series>");
        for (Both both : all()) {
            columns.row(
                    both.load().words(),
                    Double.isNaN(both.exact()) ? "" : figure("%.4f", 1e3 * both.exact()),
                    figure("%.4f", 1e3 * both.deflection(both.shell())),
                    figure("%.4f", 1e3 * both.deflection(both.fine())),
                    figure("%.4f", 1e3 * both.deflection(both.series())),
                    figure("%.2f", both.moment(both.shell())),
                    figure("%.2f", both.moment(both.fine())),
                    figure("%.2f", both.moment(both.series())));
        }
        return new EvidenceSection(
                "Finite elements against series, off the middle",
                """
                250 N on one patch of a panel carried along the whole rim; figures in its middle. Both in layered theory, which
                has not the local sinking of a skin into the foam; 3-D elasticity has it (mean of both surfaces). Elements of order 8
                give the series to 0.05 per cent, by test, so what those of order 4, which answer, leave is their own: 1 per
                cent at most, under a patch that touches the rim.

                """
                        + columns.text());
    }

    private static String figure(String format, double value) {
        return String.format(Locale.ROOT, format, value);
    }
}
