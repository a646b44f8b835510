package org.coachskin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A hatch with a round hole beside which its skins break first. */
class BesideAnOpeningTest {

    private static final String HATCH =
            """
            name: hatch with a filler hole
            width: 700 mm
            length: 500 mm
            foam: {kind: polyurethane, density: 64 kg/m^3, thickness: 12 mm}
            resin: epoxy
            outside: [twill glass 300 g/m^2]
            inside: [twill glass 200 g/m^2]
            openings:
              - {name: filler hole, shape: circle 90 mm, centre: {from left: 320 mm, from front: 300 mm}}
            held: all edges
            loads: {wind: 110 km/h}
            """;

    @TempDir Path folder;

    private String answer(String... more) throws IOException {
        Path file = Files.writeString(folder.resolve("hatch.yaml"), HATCH);
        String[] line = new String[2 + more.length];
        line[0] = "check";
        line[1] = file.toString();
        System.arraycopy(more, 0, line, 2, more.length);
        return Main.run(line).out();
    }

    @Test
    void theScreenSaysOnceHowItWasRead() throws IOException {
        List<String> said = answer().lines().filter(l -> l.contains("an assumption")).toList();

        assertEquals(
                List.of(
                        "  - beside the filler hole: the mean over 3.8 mm from the rim, an assumption"),
                said);
    }

    @Test
    void whySetsTheElementsBesideTheTheory() throws IOException {
        String page = answer("--why", "inside skin ply");

        assertTrue(page.contains("1.0 mm from the rim, an assumption"), page);
        assertTrue(page.contains("open hole: Whitney and Nuismer"), page);
        assertTrue(page.contains("Right at the rim of the filler hole this skin has"), page);
        assertTrue(page.lines().allMatch(l -> l.length() <= 80), page);
    }

    @Test
    void aProgramIsToldBothFactors() throws IOException {
        String json = answer("--json");

        assertTrue(json.contains("\"wideSheet\""), json);
        assertEquals(
                List.of(),
                SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(Texts.read("results.schema.json"), InputFormat.JSON)
                        .validate(json, InputFormat.JSON));
    }
}
