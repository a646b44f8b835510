package org.coachskin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every panel file among the examples goes through the command. */
class PanelFilesTest {

    private static final Path PANELS = Path.of("panels");

    /** Lids that are too light, and one half built, whose bare foam a thumb tears. */
    private static final Set<String> DO_NOT_HOLD =
            Set.of(
                    "luggage-lid-too-light.yaml",
                    "luggage-lid-hinged-too-light.yaml",
                    "last-ply-hinged.yaml",
                    "trailer-door.yaml",
                    "two-plies.yaml",
                    "outside-only.yaml");

    static List<Path> panels() throws IOException {
        try (Stream<Path> files = Files.list(PANELS)) {
            return files.sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("panels")
    void holdsUnlessItIsThereToFail(Path file) {
        Outcome outcome = Main.run("check", file.toString());

        boolean fails = DO_NOT_HOLD.contains(file.getFileName().toString());
        assertEquals(fails ? Outcome.DOES_NOT_HOLD : Outcome.HOLDS, outcome.status());
        assertEquals("", outcome.err());
    }
}
