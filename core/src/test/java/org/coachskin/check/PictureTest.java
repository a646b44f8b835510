package org.coachskin.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.coachskin.TestSchedules;
import org.coachskin.failure.Mode;
import org.coachskin.laminate.Patch;
import org.coachskin.laminate.Triple;
import org.coachskin.panel.Crown;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Support;
import org.junit.jupiter.api.Test;

/** What is drawn of a verdict agrees with its figures. */
class PictureTest {

    private static final Patch PALM = new Patch.Rectangle(0.1, 0.1);

    private static final Job JOB =
            Job.of(
                    "lid",
                    0.9,
                    0.6,
                    Crown.FLAT,
                    new Support.WholeRim(),
                    TestSchedules.sandwich(2, 0.012, 1),
                    List.of(
                            LoadCase.of(
                                    "palm",
                                    LoadCase.Kind.FELT,
                                    new Load.Press(250, PALM, 0.45, 0.3))),
                    Limits.STANDARD);

    private static final PanelCheck CHECK = new PanelCheck();

    private static final Verdict VERDICT = CHECK.check(JOB);

    private static final Picture PICTURE = CHECK.picture(VERDICT, List.of(5.0, 250 / 9.80665));

    @Test
    void thePanelMovesMostUnderThePalmByWhatTheVerdictSays() {
        Picture.Moved moved = PICTURE.moved().get(0);
        Movement movement = VERDICT.movementUnder("palm");

        assertEquals(
                movement.total() - movement.dent(), moved.most().value(), 0.005 * movement.total());
        assertEquals(0.45, moved.most().x(), 0.03);
        assertEquals(0.3, moved.most().y(), 0.03);
        double most = moved.across().stream().mapToDouble(Picture.Cut::movement).max().orElse(0);
        assertEquals(moved.most().value(), most, 1e-3 * most);
        assertEquals(0, moved.along().get(0).movement(), 1e-9);
    }

    @Test
    void aGaugeReadsTheFeltStiffness() {
        Movement movement = VERDICT.movementUnder("palm");
        Picture.Reading light = PICTURE.readings().get(0);
        Picture.Reading palm = PICTURE.readings().get(1);

        assertEquals(movement.total() - movement.dent(), palm.movement(), 1e-9);
        assertEquals(palm.movement() / palm.mass(), light.movement() / light.mass(), 1e-9);
        assertTrue(palm.low() < palm.movement() && palm.movement() < palm.high());
    }

    @Test
    void stressThroughTheThicknessHoldsTheFigureOfItsMargin() {
        Through through = PICTURE.through().orElseThrow();
        Margin margin = through.margin();

        assertEquals(VERDICT.governing(Mode.Question.STRONG).orElseThrow(), margin);
        double most =
                margin.mode() == Mode.CORE_SHEAR
                        ? through.foam().stream().mapToDouble(Through.Shear::amount).max().orElse(0)
                        : through.inPlane().stream()
                                .mapToDouble(at -> largest(at.stress()))
                                .max()
                                .orElse(0);
        assertEquals(margin.applied(), most, 1e-3 * margin.applied());
        assertEquals(2 * through.laminate().layers().size(), through.inPlane().size());
    }

    private static double largest(Triple stress) {
        return Math.max(Math.abs(stress.x()), Math.abs(stress.y()));
    }
}
