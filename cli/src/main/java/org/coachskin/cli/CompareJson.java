package org.coachskin.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coachskin.check.Weights;
import org.coachskin.design.Comparison;
import org.coachskin.design.OneMore;
import org.coachskin.failure.Mode;

/** A comparison as JSON; {@code results.schema.json} describes it. */
final class CompareJson {

    private CompareJson() {}

    static Map<String, Object> of(Comparison comparison, OneMore oneMore) {
        Map<String, Object> json = Json.answer("compare");
        List<Object> columns = new ArrayList<>();
        for (Comparison.Column column : comparison.columns()) {
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("name", column.name());
            row.put("stiffnessGainedPerMass", comparison.gainPerMass(column));
            row.put("loadedAsTheFirst", comparison.isLoadedAlike(column));
            row.put("againstTheFirst", againstTheFirst(comparison, column));
            row.put("weights", weights(column.weights()));
            row.putAll(VerdictJson.verdict(column.verdict(), Map.of(), List.of()));
            columns.add(row);
        }
        json.put("panels", columns);
        json.put("handScatter", comparison.handScatter());
        List<Object> steps = new ArrayList<>();
        for (OneMore.Step step : oneMore.steps()) {
            steps.add(step(step, oneMore));
        }
        json.put("oneMore", steps);
        return json;
    }

    private static Map<String, Object> againstTheFirst(
            Comparison comparison, Comparison.Column column) {
        Map<String, Object> json = new LinkedHashMap<>();
        put(json, "feltStiffness", comparison.stiffness(column));
        put(json, "strength", comparison.reserve(column, Mode.Question.STRONG));
        put(json, "mark", comparison.reserve(column, Mode.Question.UNMARKED));
        return json;
    }

    private static void put(
            Map<String, Object> json, String name, Optional<Comparison.Difference> difference) {
        difference.ifPresent(
                d -> {
                    Map<String, Object> one = new LinkedHashMap<>();
                    one.put("share", d.share());
                    one.put("numericalError", d.numericalError());
                    one.put("tells", d.tells());
                    json.put(name, one);
                });
    }

    private static Map<String, Object> weights(Weights weights) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("glass", weights.glass());
        json.put("resin", weights.resin());
        json.put("sealCoat", weights.sealCoat());
        json.put("foam", weights.foam());
        json.put("inserts", weights.inserts());
        json.put("given", weights.given());
        return json;
    }

    private static Map<String, Object> step(OneMore.Step step, OneMore oneMore) {
        Map<String, Object> json = VerdictJson.change(step.words(), step.addedMass(), step.after());
        json.put("feltStiffness", VerdictJson.feltStiffness(step.after()));
        json.put("feltStiffnessTimes", oneMore.stiffer(step).orElse(Double.NaN));
        json.put("stiffTimes", oneMore.reserve(step, Mode.Question.STIFF).orElse(Double.NaN));
        json.put("strongTimes", oneMore.reserve(step, Mode.Question.STRONG).orElse(Double.NaN));
        json.put("unmarkedTimes", oneMore.reserve(step, Mode.Question.UNMARKED).orElse(Double.NaN));
        return json;
    }
}
