package org.coachskin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.coachskin.check.Job;
import org.coachskin.check.PanelCheck;
import org.coachskin.check.Weights;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The laying list for a program. */
class LayingJsonTest {

    private static final Schema SCHEMA = schema();

    /** The part of the schema that describes the list alone. */
    private static Schema schema() {
        String all = Texts.read("results.schema.json");
        String parts = all.substring(all.indexOf("\"$defs\""));
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema("{\"$ref\": \"#/$defs/layingList\", " + parts, InputFormat.JSON);
    }

    private static Job job(String panel) {
        return Panels.read("../examples/panels/" + panel + ".yaml").asDrawn();
    }

    private static List<Map<?, ?>> rows(Map<?, ?> json, String key) {
        List<Map<?, ?>> rows = new ArrayList<>();
        for (Object row : (List<?>) Objects.requireNonNull(json.get(key))) {
            rows.add((Map<?, ?>) row);
        }
        return rows;
    }

    private static List<Map<?, ?>> steps(Map<?, ?> json) {
        List<Map<?, ?>> steps = new ArrayList<>();
        rows(json, "stages").forEach(stage -> steps.addAll(rows(stage, "steps")));
        return steps;
    }

    private static double number(Map<?, ?> json, String key) {
        return (Double) Objects.requireNonNull(json.get(key));
    }

    private static double sum(List<Map<?, ?>> rows, String key) {
        return rows.stream().mapToDouble(row -> number(row, key)).sum();
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "roof-hatch",
                "trailer-side-door",
                "luggage-lid",
                "bare-panel",
                "outside-only"
            })
    void itFollowsTheSchemaAndAddsUp(String panel) {
        Job job = job(panel);
        Map<String, Object> json = LayingJson.of(job);

        String text = Json.text(json);
        assertEquals(List.of(), SCHEMA.validate(text, InputFormat.JSON));
        assertFalse(
                SCHEMA.validate(text.replace("\"resin\"", "\"glue\""), InputFormat.JSON).isEmpty());
        Weights weights = Weights.of(job);
        double laid = new PanelCheck().mass(job) - weights.foam() - weights.inserts();
        double cloth = number(json, "cloth");
        double resin = number(json, "resin");
        assertEquals(laid, cloth + resin, 1e-5 * laid);
        for (List<Map<?, ?>> rows : List.of(rows(json, "stages"), steps(json))) {
            assertEquals(cloth, sum(rows, "cloth"), 1e-12);
            assertEquals(resin, sum(rows, "resin"), 1e-12);
        }
    }

    @Test
    void theDoorIsToldStepByStep() {
        Map<String, Object> json = LayingJson.of(job("trailer-side-door"));
        List<Map<?, ?>> steps = steps(json);

        assertEquals(
                List.of(
                        "seal foam",
                        "ply",
                        "ply",
                        "foam strip",
                        "insert",
                        "seal foam",
                        "ply",
                        "ply of a zone",
                        "turn skin round raw foam"),
                steps.stream().map(step -> step.get("what")).toList());
        assertEquals(
                List.of("outside", "inside"),
                rows(json, "stages").stream().map(stage -> stage.get("skin")).toList());
        assertEquals(
                List.of(Map.of("count", 1, "one", 0.65, "other", 1.1, "disc", false)),
                rows((Map<?, ?>) Objects.requireNonNull(json.get("board")), "pieces"));
        Map<?, ?> strip = steps.get(3);
        assertEquals(0.01, number(strip, "thickness"), 1e-12);
        assertEquals(0.04, number(strip, "bevel"), 1e-12);
        List<Map<?, ?>> cut = rows(strip, "pieces");
        assertEquals(2, cut.size());
        assertEquals(2, cut.get(0).get("count"));
        assertEquals(0.09, number(cut.get(0), "one"), 1e-12);
        assertEquals(0.5, number(cut.get(0), "other"), 1e-12);
        assertEquals(List.of(), strip.get("notIn"));
        assertEquals("window", steps.get(8).get("round"));
        assertEquals(0.045, number(steps.get(8), "over"), 1e-12);
    }
}
