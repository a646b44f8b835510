package org.coachskin.laminate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.coachskin.Source;
import org.coachskin.laminate.Compatibility.Severity;
import org.coachskin.material.Foam;
import org.coachskin.material.MaterialLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CompatibilityTest {

    private static final MaterialLibrary TABLES = MaterialLibrary.standard();

    @ParameterizedTest
    @CsvSource({
        "XPS, 32, polyester, true", "EPS, 24, vinyl ester, true", "XPS, 32, polyester iso, true",
        "XPS, 32, epoxy, false", "PVC, 60, polyester, false", "POLYURETHANE, 64, vinyl ester, false"
    })
    void onlyStyreneOnPolystyreneIsRefused(
            Foam.Kind kind, double density, String resin, boolean refused) {
        assertEquals(
                refused,
                found(kind, density, resin, 0.3).stream()
                        .anyMatch(finding -> finding.severity() == Severity.REFUSED));
    }

    @Test
    void friableBoardAndAHeavySealCoatAreCautions() {
        assertEquals(2, found(Foam.Kind.POLYISOCYANURATE, 37, "epoxy", 0.6).size());
        assertEquals(3, found(Foam.Kind.POLYISOCYANURATE, 37, "epoxy", 0.7).size());
        assertEquals(1, found(Foam.Kind.POLYURETHANE, 64, "epoxy", 0.6).size());
    }

    @Test
    void aColdResinIsTooSoftInTheSunInAnyColourAWarmedOneInDarkColoursOnly() {
        String cold = heat("epoxy");
        assertTrue(cold.contains("white too"), cold);
        assertTrue(cold.contains("softens at 65 degC and is trusted up to 50 degC"), cold);
        String warmed = heat("epoxy warm cured");
        assertTrue(warmed.contains("in a dark colour"), warmed);
        assertTrue(warmed.contains("trusted up to 72 degC"), warmed);
    }

    @ParameterizedTest
    @CsvSource({"XPS, 32, 75", "EPS, 24, 75", "PVC, 80, 70"})
    void foamThatSoftensInTheSunIsACautionWhateverTheResin(
            Foam.Kind kind, double density, int limit) {
        List<String> hot =
                found(kind, density, "epoxy warm cured", 0.3).stream()
                        .map(Compatibility.Finding::toString)
                        .filter(words -> words.contains("for the foam"))
                        .toList();
        assertEquals(1, hot.size());
        assertTrue(hot.get(0).contains("up to about " + limit + " degC"), hot.get(0));
        assertTrue(hot.get(0).contains("paint it white"), hot.get(0));
    }

    @Test
    void urethaneStandsTheSun() {
        assertTrue(
                found(Foam.Kind.POLYURETHANE, 64, "epoxy warm cured", 0.3).stream()
                        .noneMatch(finding -> finding.text().contains("for the foam")));
    }

    private static String heat(String resin) {
        return found(Foam.Kind.POLYURETHANE, 64, resin, 0.3).get(0).toString();
    }

    private static List<Compatibility.Finding> found(
            Foam.Kind kind, double density, String resin, double coat) {
        Foam foam = TABLES.foam(kind, density).orElseThrow();
        return Compatibility.of(
                new Schedule(
                        List.of(
                                new Schedule.Wet(
                                        TABLES.cloth("twill glass 300 g/m^2").orElseThrow(), 0)),
                        List.of(),
                        new Schedule.Board(foam, 0.012, 0),
                        TABLES.resin(resin).orElseThrow(),
                        LayUp.USUAL,
                        new Schedule.SealCoatMass(coat, 0.3, 0.3, Source.YOURS),
                        false));
    }
}
