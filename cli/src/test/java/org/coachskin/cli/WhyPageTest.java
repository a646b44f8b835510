package org.coachskin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.coachskin.check.Margin;
import org.coachskin.check.PanelCheck;
import org.coachskin.check.Verdict;
import org.coachskin.cli.file.PanelFile;
import org.coachskin.failure.Mode;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class WhyPageTest {

    private static final String EXAMPLES = "../examples/panels/";

    /** A number with a unit; a figure of a formula has none. */
    private static final Pattern FIGURE =
            Pattern.compile("\\d+(\\.\\d+)?\\s?(mm|kPa|MPa|GPa|N\\b|%|per cent|times)");

    @ParameterizedTest
    @EnumSource(Mode.class)
    void everyModeHasFormulaSourceAndLimitsAndNoFigureOfItsOwn(Mode mode) {
        String[] text = Texts.read("why/" + mode + ".txt").strip().split("\n\n", -1);
        assertEquals(3, text.length);
        assertFalse(FIGURE.matcher(text[0]).find(), text[0]);
        assertFalse(FIGURE.matcher(text[2]).find(), text[2]);
        assertTrue(
                text[1].contains("[from memory]")
                        || text[1].contains("common practice, no source")
                        || text[1].contains("our derivation"),
                text[1]);
        text[0].lines().forEach(line -> assertTrue(line.length() <= Page.WIDTH - 2, line));
    }

    @TestFactory
    List<DynamicTest> everyRowCanBeFollowedByHand() {
        List<DynamicTest> tests = new ArrayList<>();
        for (String name : List.of("luggage-lid.yaml", "trailer-roof.yaml")) {
            PanelFile file = Panels.read(EXAMPLES + name);
            Verdict verdict = new PanelCheck().check(file.asDrawn());
            for (Margin margin : verdict.margins()) {
                String page = new WhyPage(verdict, Figures.METRIC).about(Rows.words(margin));
                tests.add(
                        DynamicTest.dynamicTest(
                                name + ": " + Rows.words(margin), () -> follow(page, margin)));
            }
        }
        return tests;
    }

    private static void follow(String page, Margin margin) {
        assertTrue(page.contains(margin.mode().theory()), page);
        double reserve = margin.reserve();
        if (margin.mode() == Mode.FELT_STIFFNESS) {
            assertEquals(reserve, number(page, "applied") / number(page, "wanted"), 0.02 * reserve);
            return;
        }
        double wanted = number(page, "wanted");
        assertEquals(margin.factor(), wanted, 1e-9);
        margin.factors()
                .forEach(
                        factor ->
                                assertTrue(
                                        page.replaceAll("\\s+", " ").contains(factor.words()),
                                        page));
        if (page.contains("it takes / applied") && reserve < 99) {
            double byHand = number(page, "it takes") / number(page, "applied") / wanted;
            assertEquals(reserve, byHand, 0.02 * reserve + 0.005, page);
            assertEquals(reserve, number(page, "reserve"), 0.006);
        }
        if (margin.mode() == Mode.CRUSHING || margin.mode() == Mode.LASTING_MARK) {
            double strength = number(page, "foam's crushing strength \\(\\w+\\)");
            // MPa times mm^2 is N.
            double start = strength * number(page, "area of the patch A") / number(page, "share s");
            assertEquals(start / 1e6, number(page, "crushing starts at"), 0.01 * start / 1e6);
            assertTrue(number(page, "crushing starts at") <= number(page, "it takes"), page);
        }
    }

    /** The number of a row, stresses in pascal. */
    private static double number(String page, String row) {
        Matcher found =
                Pattern.compile("(?m)^ +" + row + " +([0-9.]+)(?: (GPa|MPa))?").matcher(page);
        assertTrue(found.find(), row + " in\n" + page);
        double value = Double.parseDouble(found.group(1));
        String unit = found.group(2);
        return unit == null ? value : value * (unit.equals("GPa") ? 1e9 : 1e6);
    }

    @Test
    void theDentTooDeepForFillerStandsInTheCodeOnly() {
        Verdict verdict =
                new PanelCheck().check(Panels.read(EXAMPLES + "luggage-lid.yaml").asDrawn());
        String page = new WhyPage(verdict, Figures.METRIC).about("foam crushed for good");
        assertTrue(page.replaceAll("\\s+", " ").contains("a dent of 0.5 mm"), page);
        assertFalse(page.contains("{"), page);
    }
}
