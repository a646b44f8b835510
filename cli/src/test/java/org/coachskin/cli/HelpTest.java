package org.coachskin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.coachskin.failure.Mode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Nothing the command takes or prints stays unexplained. */
class HelpTest {

    static List<String> subcommands() {
        return Main.subcommands();
    }

    @ParameterizedTest
    @MethodSource("subcommands")
    void everyOptionStandsInTheHelpOfItsSubcommand(String name) {
        String help = Main.run(name, "--help").out();

        Main.specOf(name).optionsMap().keySet().forEach(o -> assertTrue(help.contains(o), o));
        assertTrue(Main.run("--help").out().contains("coachskin " + name));
    }

    @ParameterizedTest
    @EnumSource(Mode.class)
    void everyModeHasAFormulaItsOriginAndItsLimits(Mode mode) {
        assertEquals(3, Texts.read("why/" + mode + ".txt").strip().split("\n\n", -1).length);
    }

    @Test
    void theVersionIsTold() {
        assertTrue(Main.run("--version").out().startsWith("coachskin "));
    }

    @Test
    void theFileToStartFromIsOneThatCanBeChecked(
            @org.junit.jupiter.api.io.TempDir java.nio.file.Path folder) {
        for (String kind : NewCommand.KNOWN) {
            String file = folder.resolve(kind + ".yaml").toString();

            assertEquals(Outcome.HOLDS, Main.run("new", kind, file).status());
            assertEquals(Outcome.INPUT, Main.run("new", kind, file).status());
            assertEquals(Outcome.HOLDS, Main.run("schedule", file).status());
        }
    }

    @Test
    void aCommandToTypeQuotesASpace(@TempDir Path folder) {
        String file = folder.resolve("my lid.yaml").toString();

        assertTrue(Main.run("new", "lid", file).out().contains("check \"" + file + "\""));
        assertTrue(Main.run("check", file).out().contains("check \"" + file + "\" --why"));
    }
}
