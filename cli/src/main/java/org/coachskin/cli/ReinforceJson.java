package org.coachskin.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coachskin.check.Margin;
import org.coachskin.check.Verdict;
import org.coachskin.design.Change;
import org.coachskin.failure.Mode;
import org.coachskin.reinforce.Reinforcement;
import org.coachskin.reinforce.Tried;

/** A search for a reinforcement as JSON; {@code results.schema.json} describes it. */
final class ReinforceJson {

    private ReinforceJson() {}

    static Map<String, Object> of(Reinforcement found) {
        Map<String, Object> json = Json.answer("reinforce");
        json.put("panel", found.bare().job().panel().name());
        json.put("target", found.target().name());
        json.put("needed", !found.isNeedless());
        json.put("stopped", found.stopped());
        json.put("offered", found.offered());
        json.put("solved", found.solved());
        found.uncut().ifPresent(verdict -> json.put("uncut", state(verdict)));
        json.put("bare", state(found.bare()));
        found.drawn().ifPresent(verdict -> json.put("asDrawn", state(verdict)));
        put(json, "chosen", found.chosen(), found);
        put(json, "holdsClearly", found.clear(), found);
        put(json, "nearest", found.nearest(), found);
        if (found.nearest().isPresent()) {
            json.put("cured", found.cured().stream().map(Mode::words).toList());
        }
        json.put(
                "tried",
                new ArrayList<>(found.tried().stream().map(ReinforceJson::tried).toList()));
        List<Object> further = new ArrayList<>();
        for (Change change : found.further()) {
            Map<String, Object> row =
                    VerdictJson.change(change.words(), change.addedMass(), change.verdict());
            row.put("reserve", change.verdict().governing().reserve());
            further.add(row);
        }
        json.put("wouldHelpMore", further);
        return json;
    }

    private static void put(
            Map<String, Object> json, String key, Optional<Tried> tried, Reinforcement found) {
        tried.ifPresent(
                one -> {
                    Map<String, Object> row = tried(one);
                    one.verdict().ifPresent(verdict -> row.put("state", state(verdict)));
                    row.put("benchSteps", one.benchSteps(found.target()));
                    row.put("panelFile", FileLines.of(found.target(), one));
                    json.put(key, row);
                });
    }

    private static Map<String, Object> tried(Tried one) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("build", one.measure().build().words());
        row.put("width", one.measure().width());
        row.put("turned", one.measure().turned());
        row.put("cornerRadius", one.measure().radius());
        row.put("addedMass", one.addedMass());
        row.put("feltStiffness", one.felt());
        row.put("solved", one.isSolved());
        row.put("reserve", one.reserve());
        row.put("governs", one.governing().map(margin -> margin.mode().words()).orElse(""));
        return row;
    }

    private static Map<String, Object> state(Verdict verdict) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("holds", verdict.holds());
        json.put("feltStiffness", VerdictJson.feltStiffness(verdict));
        json.put("mass", verdict.mass());
        Map<String, Object> reserves = new LinkedHashMap<>();
        for (Margin margin : verdict.margins()) {
            reserves.put(margin.mode().words(), margin.reserve());
        }
        json.put("reserves", reserves);
        return json;
    }
}
