package org.coachskin.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.coachskin.check.Answer;
import org.coachskin.design.Comparison;
import org.junit.jupiter.api.Test;

/** Each program runs, and one figure of each is worked out another way. */
class ProgramsTest {

    @Test
    void theLidOfTheFirstProgramHolds() {
        String printed = printedBy(() -> FirstPanel.main(new String[0]));

        assertTrue(printed.startsWith("stiff: YES, strong: YES, unmarked: YES"), printed);
        // 250 N over the movement that the same panel file gives: 64 N/mm against the 40 wanted.
        assertEquals(1.60, number(printed, "felt stiffness .* reserve +([0-9.]+)"), 0.006);
        assertEquals(Answer.YES, FirstPanel.verdict().stiff());
    }

    @Test
    void aHeavyLastPlyWeighsMoreByItsClothAndAsMuchResin() {
        String printed = printedBy(() -> WhichLastPly.main(new String[0]));

        Comparison comparison = WhichLastPly.comparison();
        double added = comparison.columns().get(2).mass() - comparison.columns().get(0).mass();
        // 300 g/m^2 of glass at half the weight of the ply, on 0.54 m^2.
        assertEquals(0.3 / 0.5 * 0.54, added, 1e-9);
        assertTrue(number(printed, "heavy last ply .* gained +([0-9]+) ") > 0, printed);
    }

    @Test
    void theStackIsStretchedByItsSkinsAlmostAlone() {
        String printed = printedBy(() -> StackFigures.main(new String[0]));

        double a11 = number(printed, "A11 ([0-9.e+]+) N/m");
        var layers = Workshop.luggageLid().laminate().layers();
        double sum = layers.stream().mapToDouble(l -> l.thickness() * l.stiffness().m11()).sum();
        assertEquals(sum, a11, 0.005 * sum);
    }

    private static double number(String printed, String pattern) {
        Matcher matcher = Pattern.compile(pattern).matcher(printed);
        assertTrue(matcher.find(), printed);
        return Double.parseDouble(matcher.group(1));
    }

    private static String printedBy(Runnable program) {
        PrintStream out = System.out;
        Locale locale = Locale.getDefault();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            Locale.setDefault(Locale.ROOT);
            System.setOut(new PrintStream(bytes, true, StandardCharsets.UTF_8));
            program.run();
        } finally {
            System.setOut(out);
            Locale.setDefault(locale);
        }
        return bytes.toString(StandardCharsets.UTF_8);
    }
}
