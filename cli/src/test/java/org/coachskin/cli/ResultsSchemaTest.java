package org.coachskin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every answer for a program follows the schema that documents it. */
class ResultsSchemaTest {

    private static final Schema SCHEMA =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(Texts.read("results.schema.json"), InputFormat.JSON);

    @ParameterizedTest
    @ValueSource(
            strings = {
                "check ../examples/panels/luggage-lid.yaml",
                "check ../examples/panels/luggage-lid-too-light.yaml",
                "check ../examples/panels/last-ply.yaml",
                "check ../examples/panels/bare-panel.yaml",
                "check ../examples/panels/outside-only.yaml",
                "check ../examples/panels/trailer-roof.yaml",
                "check ../examples/panels/lid-on-a-stay.yaml",
                "check ../examples/panels/roof-hatch.yaml",
                "check nowhere.yaml",
                "compare ../examples/panels/last-ply.yaml",
                "compare src/test/resources/org/coachskin/cli/bad/variant-on-a-latch.yaml",
                "compare ../examples/panels/luggage-lid.yaml ../examples/panels/bare-panel.yaml",
                "reinforce ../examples/panels/trailer-door.yaml window",
                "schedule ../examples/panels/luggage-lid.yaml",
                "schedule ../examples/panels/bare-panel.yaml",
                "materials",
                "materials foam",
                "materials fitting",
                "schedule ../examples/panels/roof-hatch.yaml",
                "loads",
            })
    void answersFollowTheSchema(String line) {
        Outcome outcome = Main.run((line + " --json").split(" ", -1));

        assertEquals("", outcome.err());
        assertEquals(List.of(), SCHEMA.validate(outcome.out(), InputFormat.JSON));
    }

    @Test
    void theSchemaRefusesWhatItDoesNotKnow() {
        String answer = Main.run("loads", "--json").out();

        assertFalse(
                SCHEMA.validate(answer.replace("\"force\"", "\"push\""), InputFormat.JSON)
                        .isEmpty());
    }
}
