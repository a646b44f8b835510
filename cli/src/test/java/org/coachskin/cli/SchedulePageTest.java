package org.coachskin.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.coachskin.cli.file.PanelFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SchedulePageTest {

    @TempDir Path folder;

    @Test
    void theListOfWhatIsLaidSaysWhichSkinGoesRoundWhichEdge() throws IOException {
        Path file =
                Files.writeString(
                        folder.resolve("door.yaml"),
                        """
                        foam: {kind: polyurethane, density: 64 kg/m^3, thickness: 12 mm}
                        resin: epoxy
                        outside: [twill glass 300 g/m^2]
                        inside: [twill glass 300 g/m^2]
                        turned: {all edges: inside, window: outside}
                        """);
        SchedulePage page = new SchedulePage(PanelFile.readLaid(file), Figures.METRIC);
        String text = page.text();
        assertTrue(text.contains("  Turn the inside skin round the raw foam: all edges.\n"), text);
        assertTrue(text.contains("  Turn the outside skin round the raw foam: window.\n"), text);
        assertTrue(
                page.json()
                        .replaceAll("\\s+", "")
                        .contains("{\"place\":\"window\",\"skin\":\"outside\"}"),
                page.json());
    }
}
