package org.coachskin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Everything the command prints, kept as text beside this class. After a change that was meant, run
 * with {@code -Dcoachskin.renew=true} and read the difference.
 */
class WholeOutputTest {

    private static final Path KEPT = Path.of("src/test/resources/org/coachskin/cli/whole");

    private static final String EXAMPLES = "../examples/panels/";

    private static final String BAD = "src/test/resources/org/coachskin/cli/bad/";

    /** The folders before the name of a panel file. */
    private static final Pattern FOLDERS = Pattern.compile("(\\S*/)(?=\\S+\\.yaml)");

    /** The verdict that the README shows. */
    private static final Path README = Path.of("../README.md");

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            quoteCharacter = '`',
            value = {
                "check-luggage-lid, check EXAMPLES/luggage-lid.yaml",
                "check-too-light, check EXAMPLES/luggage-lid-too-light.yaml --all",
                "check-last-ply-us, check EXAMPLES/last-ply.yaml --units us",
                "check-bare, check EXAMPLES/bare-panel.yaml",
                "check-outside-only, check EXAMPLES/outside-only.yaml",
                "check-roof, check EXAMPLES/trailer-roof.yaml",
                "check-hinged, check EXAMPLES/luggage-lid-hinged.yaml",
                "check-hinged-too-light, check EXAMPLES/luggage-lid-hinged-too-light.yaml",
                "check-stay, check EXAMPLES/lid-on-a-stay.yaml --all",
                "check-hatch, check EXAMPLES/roof-hatch.yaml",
                "check-side-door, check EXAMPLES/trailer-side-door.yaml",
                "compare-lid, compare EXAMPLES/luggage-lid.yaml",
                "compare-last-ply, compare EXAMPLES/last-ply.yaml",
                "check-two-plies, check EXAMPLES/two-plies.yaml",
                "compare-last-ply-hinged, compare EXAMPLES/last-ply-hinged.yaml",
                "compare-side-door, compare EXAMPLES/trailer-side-door.yaml",
                "compare-files, compare EXAMPLES/luggage-lid.yaml EXAMPLES/luggage-lid-too-light.yaml",
                "reinforce-window, reinforce EXAMPLES/trailer-door.yaml window",
                "reinforce-unknown, reinforce EXAMPLES/trailer-door.yaml winow",
                "reinforce-needless, reinforce EXAMPLES/roof-hatch.yaml lip",
                "reinforce-contradictory, reinforce EXAMPLES/trailer-door.yaml window --only plies --without plies",
                "reinforce-no-means, reinforce EXAMPLES/trailer-door.yaml window --only plie",
                "reinforce-no-unit, reinforce EXAMPLES/trailer-door.yaml window --widest 60",
                "reinforce-nothing-left, reinforce EXAMPLES/trailer-door.yaml window --only insert",
                "reinforce-nothing-named, reinforce EXAMPLES/trailer-door.yaml",
                "why-stiff, check EXAMPLES/luggage-lid.yaml --why felt",
                "why-crushed, check EXAMPLES/luggage-lid.yaml --why skin,crushed",
                "why-sheared, check EXAMPLES/luggage-lid.yaml --why foam,sheared",
                "why-unknown, check EXAMPLES/luggage-lid.yaml --why rust",
                "schedule-lid, schedule EXAMPLES/luggage-lid.yaml",
                "schedule-bare, schedule EXAMPLES/bare-panel.yaml",
                "materials, materials",
                "materials-us, materials cloth --units us",
                "materials-unknown, materials clot",
                "materials-fitting-us, materials fitting --units us",
                "loads, loads",
                "new-lid, new lid",
                "new-unknown, new boat",
                "help, --help",
                "help-check, check --help",
                "no-subcommand, chek",
                "no-option, check x.yaml --al",
                "no-file-named, check",
                "no-such-file, check BAD/nowhere.yaml",
                "no-such-file-json, check BAD/nowhere.yaml --json",
                "a-folder, check BAD",
                "too-many, check a b",
                "no-units, check a --units imperial",
                "bad-three, check BAD/three-mistakes.yaml",
                "bad-held, check BAD/held.yaml",
                "bad-bevel, check BAD/bevel.yaml",
                "bad-later, check BAD/later.yaml",
                "no-answer-variant, compare BAD/variant-on-a-latch.yaml",
                "no-variants, compare EXAMPLES/bare-panel.yaml",
            })
    void printsWhatIsKept(String name, String line) throws IOException {
        Locale before = Locale.getDefault();
        Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
        try {
            String[] args =
                    line.replace("EXAMPLES/", EXAMPLES)
                            .replace("BAD/", BAD)
                            .replace("BAD", BAD)
                            .split(" ", -1);
            Outcome outcome = Main.run(args);
            String printed =
                    "exit status "
                            + outcome.status()
                            + "\n"
                            + (outcome.out().isEmpty() ? "" : "--- answer\n" + outcome.out())
                            + (outcome.err().isEmpty() ? "" : "--- to put right\n" + outcome.err());
            if (!line.contains("--json")) {
                printed.lines().forEach(WholeOutputTest::fits);
            }
            Path kept = KEPT.resolve(name + ".txt");
            if (Boolean.getBoolean("coachskin.renew")) {
                Files.writeString(kept, printed);
            }
            assertEquals(Files.readString(kept), printed);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void theReadmeShowsWhatIsPrinted() throws IOException {
        String readme = Files.readString(README);
        int start = readme.indexOf("  STIFF ENOUGH?");
        String shown = readme.substring(start, readme.indexOf("```", start));

        assertTrue(Files.readString(KEPT.resolve("check-luggage-lid.txt")).contains(shown), shown);
    }

    /** Counted without the folders of a path, which are as long as they are. */
    private static void fits(String line) {
        String alone = FOLDERS.matcher(line).replaceAll("");
        assertTrue(alone.length() <= Page.WIDTH, line);
    }
}
