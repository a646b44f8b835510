package org.coachskin.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.coachskin.NoAnswerException;
import org.coachskin.TestFittings;
import org.coachskin.TestStacks;
import org.coachskin.analysis.Held;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Patch;
import org.coachskin.panel.Fitting.Direction;
import org.coachskin.panel.Load;
import org.coachskin.panel.Opening;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Shape;
import org.coachskin.panel.Support;
import org.coachskin.series.SeriesAnalysis;
import org.junit.jupiter.api.Test;

class LineLoadTest {

    private static final Laminate SANDWICH = TestStacks.sandwich(2, 0.012, 1, 12e6, 4.2e6);

    private static final Panel PANEL =
            Panel.flat("lid", 0.8, 0.6, SANDWICH)
                    .withOpenings(List.of(new Opening("vent", new Shape.Circle(0.1), 0.2, 0.45)));

    /** Across triangles, along the rim, and where the mesh does not follow it. */
    private static final List<Load.Line> LINES =
            List.of(
                    new Load.Line(300, 0.1, 0.13, 0.71, 0.52),
                    new Load.Line(300, 0.1, 0.6, 0.7, 0.6),
                    new Load.Line(300, 0.8, 0.6, 0.8, 0),
                    new Load.Line(-40, 0.4, 0.55, 0.4, 0.2));

    /** Work done on a deflection of the order of the elements is exact. */
    @Test
    void doesTheWorkOfAnEvenForceAlongIt() {
        DoubleBinaryOperator bent = (x, y) -> 1 + 2 * x - 3 * y + x * x * y - 2 * y * y * y * y;
        for (Load.Line line : LINES) {
            for (List<Load> followed : List.of(List.<Load>of(), List.<Load>of(line))) {
                Fields fields = new Fields(PANEL, Drawn.grid(Drawn.mesh(PANEL, followed), 4), 4);
                double[] x =
                        fields.of(
                                (px, py) ->
                                        new double[] {
                                            0.5, 0.7, bent.applyAsDouble(px, py), 0.1, 0.2, 0.3, 0.4
                                        });
                double[] load = new double[x.length];
                new Loading(fields.model, new EndWall(fields.model, PANEL))
                        .add(line, load, new double[fields.model.grid.triangles()][]);
                double work = 0;
                for (int i = 0; i < x.length; i++) {
                    work += x[i] * load[i];
                }
                double wanted = -line.force() * line.length() * mean(line, bent);
                assertEquals(wanted, work, 1e-9 * Math.abs(wanted), line + " " + followed);
            }
        }
    }

    /** Three places of Gauss: exact to the fifth order. */
    private static double mean(Load.Line line, DoubleBinaryOperator of) {
        double out = Math.sqrt(0.6) / 2;
        double sum = 0;
        for (int i = -1; i <= 1; i++) {
            double s = 0.5 + i * out;
            double x = line.x1() + s * (line.x2() - line.x1());
            double y = line.y1() + s * (line.y2() - line.y1());
            sum += (i == 0 ? 8 : 5) / 18.0 * of.applyAsDouble(x, y);
        }
        return sum;
    }

    /** Forces of three rests are those of statics. */
    @Test
    void isBalancedByWhatHolds() {
        Load.Line line = LINES.get(0);
        Panel panel =
                PANEL.withSupport(
                        new Support.Fittings(
                                List.of(
                                        TestFittings.pad(0.1, 0.1, 0.04, Direction.values()),
                                        TestFittings.pad(0.7, 0.1, 0.04, Direction.Y, Direction.Z),
                                        TestFittings.pad(0.4, 0.5, 0.04, Direction.Z))));
        Held held =
                new ShellPanel(panel, Drawn.grid(Drawn.mesh(panel, List.of(line)), 4), 4, false)
                        .solve(List.of(line))
                        .held();
        double force = line.force() * line.length();
        double atRear = force * ((line.y1() + line.y2()) / 2 - 0.1) / 0.4;
        double[] z =
                held.grips().stream()
                        .filter(grip -> grip.direction() == Direction.Z)
                        .mapToDouble(Held.Grip::force)
                        .toArray();
        assertEquals(atRear, z[2], 1e-7 * force);
        assertEquals(force, z[0] + z[1] + z[2], 1e-7 * force);
        double x = (line.x1() + line.x2()) / 2;
        assertEquals(force * x, 0.1 * z[0] + 0.7 * z[1] + 0.4 * z[2], 1e-7 * force);
    }

    @Test
    void isWhatANarrowStripComesTo() {
        Load line = new Load.Line(400, 0.3, 0.25, 0.6, 0.25);
        Load strip = new Load.Press(400 * 0.3, new Patch.Rectangle(0.3, 0.004), 0.45, 0.25);
        double narrow = in(strip, 0.45);
        assertEquals(narrow, in(line, 0.45), 1e-3 * narrow);
        double beside = in(strip, 0.7);
        assertEquals(beside, in(line, 0.7), 1e-4 * beside);
    }

    private static double in(Load load, double x) {
        return new ShellAnalysis().cases(PANEL, List.of(List.of(load))).get(0).deflection(x, 0.25);
    }

    @Test
    void offThePanelItIsRefusedAndTheSeriesDoesNotTakeIt() {
        ShellAnalysis shell = new ShellAnalysis();
        Load over = new Load.Line(100, 0.1, 0.45, 0.3, 0.45);
        assertThrows(
                IllegalArgumentException.class, () -> shell.cases(PANEL, List.of(List.of(over))));
        assertThrows(IllegalArgumentException.class, () -> new Load.Line(1, 0.2, 0.2, 0.2, 0.2));
        Panel plain = PANEL.withOpenings(List.of());
        assertThrows(
                NoAnswerException.class,
                () -> new SeriesAnalysis().cases(plain, List.of(List.of(LINES.get(0)))));
    }
}
