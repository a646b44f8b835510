package org.coachskin.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.coachskin.InputException;
import org.coachskin.Problem;
import org.junit.jupiter.api.io.TempDir;

/** Files of a lid as they are read, and what is said about a bad one. */
abstract class LidFiles {

    /** Seven good lines; what holds the lid is missing. */
    static final String SANDWICH =
            """
            name: lid
            width: 900 mm
            length: 600 mm
            foam: {kind: polyurethane, density: 64 kg/m^3, thickness: 12 mm}
            resin: epoxy
            outside: [twill glass 300 g/m^2]
            inside: [twill glass 300 g/m^2]
            """;

    /** A palm beside the middle, where an opening may be. */
    static final String PALM = "loads: {palm: {at: {from left: 200 mm, from front: 200 mm}}}\n";

    @TempDir Path folder;

    final Path file(String text) throws IOException {
        return Files.writeString(folder.resolve("lid.yaml"), text);
    }

    final PanelFile read(String text) throws IOException {
        return PanelFile.read(file(text));
    }

    final List<Problem> problems(String text) {
        return assertThrows(InputException.class, () -> read(text), text).problems();
    }

    static void only(List<Problem> found, String place, String what, String fix) {
        assertEquals(1, found.size(), found.toString());
        assertEquals(place, found.get(0).place());
        assertTrue(found.get(0).what().contains(what), found.toString());
        assertTrue(found.get(0).fix().contains(fix), found.toString());
    }
}
