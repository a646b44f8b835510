package org.coachskin.laminate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Objects;
import org.coachskin.Source;
import org.coachskin.material.Foam;
import org.coachskin.material.MaterialLibrary;
import org.coachskin.material.Resin;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScheduleTest {

    private static final MaterialLibrary TABLES = MaterialLibrary.standard();
    private static final Resin EPOXY = TABLES.resin("epoxy").orElseThrow();
    private static final Schedule.Item HEAVY = wet("twill glass 300 g/m^2");
    private static final Schedule.Item LIGHT = wet("plain glass 80 g/m^2");
    private static final Schedule.Item MIDDLE = wet("plain glass 160 g/m^2");
    private static final Schedule.Item MAT = wet("mat glass 229 g/m^2");
    private static final Schedule.Board BOARD =
            new Schedule.Board(TABLES.foam(Foam.Kind.POLYURETHANE, 64).orElseThrow(), 0.012, 7e-4);

    @Test
    void eachSkinGrowsFromTheFoamOutward() {
        List<Layer> layers =
                schedule(List.of(HEAVY, LIGHT), List.of(MIDDLE, MAT), false).laminate().layers();
        assertEquals(
                List.of(
                        "mat glass 229 g/m^2",
                        "plain glass 160 g/m^2",
                        "seal coat",
                        "foam",
                        "seal coat",
                        "twill glass 300 g/m^2",
                        "plain glass 80 g/m^2"),
                layers.stream().map(ScheduleTest::name).toList());
    }

    @Test
    void onlyAGlassedFaceIsSealed() {
        Schedule schedule = schedule(List.of(HEAVY), List.of(), false);
        assertEquals(
                List.of("foam", "seal coat", "twill glass 300 g/m^2"),
                schedule.laminate().layers().stream().map(ScheduleTest::name).toList());
        assertEquals(0.25, schedule.masses().sealCoat(), 1e-15);
    }

    @Test
    void theSealCoatIsResinOfItsMass() {
        Layer coat = schedule(List.of(HEAVY), List.of(), false).laminate().layers().get(1);
        assertEquals(0.25 / EPOXY.density(), coat.thickness(), 1e-15);
        assertEquals(EPOXY.density(), coat.density());
    }

    @Test
    void aBareLaminateHasNoSealCoat() {
        Schedule bare = schedule(List.of(HEAVY, LIGHT), List.of(), false).withBoard(null);
        assertEquals(2, bare.laminate().layers().size());
        assertEquals(0, bare.masses().sealCoat() + bare.masses().foam());
    }

    @ParameterizedTest
    @CsvSource({"true", "false"})
    void massesAddUpToTheLaminates(boolean wetOnWet) {
        Ply ply = WovenPly.of(((Schedule.Wet) HEAVY).cloth(), EPOXY, 0.5, 0);
        Schedule schedule =
                schedule(
                        List.of(HEAVY, HEAVY, MIDDLE),
                        List.of(MAT, new Schedule.Given(ply, 0)),
                        wetOnWet);
        Schedule.Masses masses = schedule.masses();
        assertEquals(schedule.laminate().mass(), masses.total(), 1e-12);
        assertEquals(0.989, masses.glass(), 1e-12);
        assertEquals(0.6, masses.given(), 1e-12);
        assertEquals(0.012 * 64, masses.foam(), 1e-12);
    }

    @Test
    void aLightLastPlyDrinksWhatTheHeavyOnesCanSpare() {
        // 80 g of resin wanted, 600 (1/0.5 - 1/0.55) = 109 g to spare: all comes from below.
        assertEquals(0.6, resin(List.of(HEAVY, HEAVY, LIGHT), true), 1e-12);
        assertEquals(0.68, resin(List.of(HEAVY, HEAVY, LIGHT), false), 1e-12);
    }

    @Test
    void theHeavyPliesGiveNoMoreThanTheyCanSpare() {
        // 160 g wanted, 109 to spare: the brush adds 51.
        assertEquals(
                0.76 - 0.6 * (1 / 0.5 - 1 / 0.55),
                resin(List.of(HEAVY, HEAVY, MIDDLE), true),
                1e-12);
    }

    @Test
    void wetOnWetChangesNothingUnlessTheLastPlyIsTheLightest() {
        for (List<Schedule.Item> skin :
                List.of(
                        List.of(HEAVY),
                        List.of(HEAVY, HEAVY),
                        List.of(MIDDLE, HEAVY),
                        List.of(LIGHT, HEAVY, MIDDLE))) {
            assertEquals(resin(skin, false), resin(skin, true), 1e-15);
        }
    }

    @Test
    void matTakesItsOwnShare() {
        assertEquals(0.229 / 0.3 - 0.229, resin(List.of(MAT), false), 1e-12);
    }

    @Test
    void clothMassMovesEveryWetPlyByItsSpread() {
        Schedule moved = moved(PrimaryInput.CLOTH_MASS, 2);
        assertEquals(0.6 * 1.06, moved.masses().glass(), 1e-12);
    }

    @Test
    void glassShareMovesTheResinOnly() {
        Schedule moved = moved(PrimaryInput.GLASS_SHARE, 1);
        assertEquals(0.6, moved.masses().glass(), 1e-12);
        assertEquals(0.6 * (1 / 0.525 - 1), moved.masses().resin(), 1e-12);
    }

    @Test
    void foamDensityMovesModuliAndStrengthsByTheLaw() {
        Foam foam = foam(moved(PrimaryInput.FOAM_DENSITY, -1));
        assertEquals(64 * 0.92, foam.density(), 1e-12);
        assertEquals(4.2e6 * StrictMath.pow(0.92, 1.6), foam.g(), 1e-3);
        assertEquals(0.45e6 * StrictMath.pow(0.92, 1.55), foam.crush().value(), 1e-3);
    }

    @Test
    void foamModulusMovesTheModuliOnly() {
        Foam foam = foam(moved(PrimaryInput.FOAM_MODULUS, 1));
        assertEquals(12e6 * 1.09, foam.eThrough(), 1e-3);
        assertEquals(4.2e6 * 1.09, foam.g(), 1e-3);
        assertEquals(64, foam.density());
        assertEquals(0.45e6, foam.crush().value());
    }

    @Test
    void foamThicknessMovesByMillimetresAndTheSealCoatByItsShare() {
        Schedule thin = moved(PrimaryInput.FOAM_THICKNESS, -1);
        assertEquals(0.0113, Objects.requireNonNull(thin.board()).thickness(), 1e-15);
        Schedule.SealCoatMass coat = moved(PrimaryInput.SEAL_COAT, 1).sealCoat();
        assertEquals(0.325, coat.outside(), 1e-15);
        assertEquals(0.195, coat.inside(), 1e-15);
    }

    @Test
    void strengthsMoveNothingThatIsLaid() {
        Schedule schedule = schedule(List.of(HEAVY), List.of(HEAVY), false);
        assertSame(schedule, schedule.moved(PrimaryInput.STRENGTHS, 1));
    }

    @Test
    void nothingToLayIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> schedule(List.of(), List.of(), false));
    }

    @Test
    void theWaysOfWorkingGoFromWetToDry() {
        for (int i = 1; i < LayUp.KNOWN.size(); i++) {
            assertTrue(LayUp.KNOWN.get(i).glassShare() > LayUp.KNOWN.get(i - 1).glassShare());
            assertTrue(LayUp.KNOWN.get(i).voids() <= LayUp.KNOWN.get(i - 1).voids());
        }
        assertEquals(0.30, LayUp.USUAL.matShare());
        assertEquals(0.2, LayUp.USUAL.withGlassShare(0.2).matShare());
        assertThrows(IllegalArgumentException.class, () -> LayUp.USUAL.withGlassShare(0.95));
    }

    @Test
    void matScattersAsClothDoes() {
        Schedule mat = schedule(List.of(wet("mat glass 458 g/m^2")), List.of(), false);
        Schedule dry = mat.moved(PrimaryInput.GLASS_SHARE, 1);

        assertEquals(0.325, dry.layUp().matShare(), 1e-15);
        assertEquals(0.458 * (1 / 0.30 - 1), mat.masses().resin(), 1e-12);
        assertEquals(0.458 * (1 / 0.325 - 1), dry.masses().resin(), 1e-12);
    }

    private static Schedule moved(PrimaryInput input, double sigmas) {
        return schedule(List.of(HEAVY), List.of(HEAVY), false).moved(input, sigmas);
    }

    private static Foam foam(Schedule schedule) {
        return Objects.requireNonNull(schedule.board()).foam();
    }

    private static double resin(List<Schedule.Item> skin, boolean wetOnWet) {
        return schedule(skin, List.of(), wetOnWet).masses().resin();
    }

    private static Schedule schedule(
            List<Schedule.Item> outside, List<Schedule.Item> inside, boolean wetOnWet) {
        return new Schedule(
                outside,
                inside,
                BOARD,
                EPOXY,
                LayUp.USUAL,
                new Schedule.SealCoatMass(0.25, 0.15, 0.3, Source.YOURS),
                wetOnWet);
    }

    private static Schedule.Item wet(String cloth) {
        return new Schedule.Wet(TABLES.cloth(cloth).orElseThrow(), 0);
    }

    private static String name(Layer layer) {
        if (layer instanceof Layer.Laid laid) {
            return laid.ply().name();
        }
        return layer instanceof Layer.SealCoat ? "seal coat" : "foam";
    }
}
