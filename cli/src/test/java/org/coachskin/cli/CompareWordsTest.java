package org.coachskin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coachskin.check.Job;
import org.coachskin.check.NumericalError;
import org.coachskin.check.PanelCheck;
import org.coachskin.check.Spread;
import org.coachskin.check.Verdict;
import org.coachskin.check.Weights;
import org.coachskin.cli.file.PanelFile;
import org.coachskin.design.Comparison;
import org.junit.jupiter.api.Test;

/** What is said of stiffness, with figures put in place of those of a lid. */
class CompareWordsTest {

    private static final Job LID =
            PanelFile.read(Path.of("../examples/panels/last-ply.yaml")).asDrawn();

    private static final Verdict VERDICT = new PanelCheck().check(LID);

    private static final double HAND = 0.1;

    /** Two panels laid alike differ by a tenth. */
    private static Verdict felt(double times, double error, double kilograms) {
        Spread was = VERDICT.felt().orElseThrow();
        double nominal = times * was.nominal();
        double half = HAND / Math.sqrt(2) * Spread.TENTH * nominal;
        return new Verdict(
                VERDICT.job(),
                VERDICT.stiff(),
                VERDICT.strong(),
                VERDICT.unmarked(),
                VERDICT.margins(),
                VERDICT.movements(),
                Optional.of(new Spread(nominal, nominal - half, nominal + half, was.shares())),
                VERDICT.frequency(),
                VERDICT.liftOffSpeed(),
                VERDICT.mass() + kilograms,
                VERDICT.atRest(),
                VERDICT.held(),
                VERDICT.cautions(),
                List.of(new NumericalError("movement under palm", error)),
                VERDICT.method());
    }

    private static String said(Map<String, Verdict> verdicts) {
        List<Comparison.Column> columns = new ArrayList<>();
        verdicts.forEach(
                (name, verdict) ->
                        columns.add(new Comparison.Column(name, verdict, Weights.of(LID))));
        Page page = new Page();
        new CompareWords(page, new Comparison(columns), Figures.METRIC).write();
        return page.toString().replaceAll("\\s+", " ");
    }

    private static Map<String, Verdict> verdicts(double error, double... times) {
        Map<String, Verdict> verdicts = new LinkedHashMap<>();
        verdicts.put("as drawn", felt(1, error, 0));
        for (int i = 0; i < times.length; i++) {
            verdicts.put("variant " + (char) ('A' + i), felt(times[i], error, 0.1 * (i + 1)));
        }
        return verdicts;
    }

    private static void assertSays(String words, String said) {
        assertTrue(said.contains(words), said);
    }

    @Test
    void aLargeDifferenceIsMoreThanHandWork() {
        String said = said(verdicts(0.001, 1.3));
        assertSays(
                "against \"as drawn\": variant A +30 %: more than what hand work alone makes of it",
                said);
        assertFalse(said.contains("change places"), said);
    }

    @Test
    void aSmallDifferenceIsLessThanHandWork() {
        String said = said(verdicts(0.001, 0.95));
        assertSays(
                "against \"as drawn\": variant A -5 %: smaller than what hand work alone makes of it",
                said);
        assertSays("(10 %)", said);
    }

    @Test
    void bothKindsAreSetApart() {
        String said = said(verdicts(0.001, 1.3, 1.05));
        assertSays("variant A +30 %: more than", said);
        assertSays("Smaller than that: variant B +5 %.", said);
    }

    @Test
    void withinTheErrorOfTheElementsNothingIsSaidToDiffer() {
        String said = said(verdicts(0.03, 1.05, 1.3));
        assertSays("As stiff as \"as drawn\", as near as it can be told: variant A.", said);
        assertSays("Per added kg, variant B is worth", said);
    }

    @Test
    void gainsThatAreAlikeAreWorthTheSame() {
        // 0.1 kg gives 10 %, 0.2 kg gives 20 %, 0.3 kg gives 10 %, a third of it for its weight.
        String said = said(verdicts(0.001, 1.1, 1.2, 1.1));
        assertSays("Per added kg, variant A and variant B are worth the same stiffness, ", said);
        assertSays(", about 3 times as much as variant C (", said);
    }

    @Test
    void whatIsLighterAndStifferGainsNothingPerKilogram() {
        Map<String, Verdict> verdicts = verdicts(0.001);
        verdicts.put("lighter", felt(1.3, 0.001, -0.2));
        assertFalse(said(verdicts).contains("Per added"), said(verdicts));
    }

    @Test
    void nothingOfLoadsThatDiffer() {
        Map<String, Verdict> verdicts = verdicts(0.001, 1.3);
        Job other = LID.withLoads(LID.loads().subList(0, 1));
        Verdict pressed = new PanelCheck().check(other);
        verdicts.put("no thumb", pressed);
        String said = said(verdicts);
        assertSays("Each under its own loads, not those of \"as drawn\": no thumb.", said);
        assertEquals(said.indexOf("no thumb"), said.lastIndexOf("no thumb"), said);
    }

    @Test
    void whatTheWindLiftsIsSetApart() {
        Job lid =
                PanelFile.read(Path.of("../examples/panels/luggage-lid-hinged-too-light.yaml"))
                        .asDrawn();
        Job latched =
                Optional.ofNullable(
                                PanelFile.read(
                                                Path.of(
                                                        "../examples/panels/luggage-lid-hinged.yaml"))
                                        .jobs()
                                        .get("two latches"))
                        .orElseThrow();
        PanelCheck check = PanelCheck.brief();
        Map<String, Verdict> verdicts = new LinkedHashMap<>();
        verdicts.put("as drawn", check.check(lid));
        verdicts.put("two latches", check.check(lid.withSupport(latched.panel().support())));
        String said = said(verdicts);
        assertTrue(
                said.matches(
                        ".*Lifted off the rubber seal by more than 2.0 mm: as drawn \\d+(\\.\\d)? mm; not so: two latches\\..*"),
                said);
        verdicts.put("two latches", verdicts.get("as drawn"));
        assertFalse(said(verdicts).contains("Lifted off"), said(verdicts));
    }
}
