package org.coachskin.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coachskin.analysis.Held;
import org.coachskin.check.Answer;
import org.coachskin.check.Concentration;
import org.coachskin.check.Job;
import org.coachskin.check.Margin;
import org.coachskin.check.Movement;
import org.coachskin.check.PanelCheck;
import org.coachskin.check.Spread;
import org.coachskin.check.Swept;
import org.coachskin.check.Verdict;
import org.coachskin.design.Change;
import org.coachskin.failure.Mode;
import org.coachskin.laminate.PrimaryInput;
import org.coachskin.prove.StripTest;
import org.jspecify.annotations.Nullable;

/** A verdict as JSON; {@code results.schema.json} describes it. */
final class VerdictJson {

    private VerdictJson() {}

    static Map<String, Object> check(
            Verdict verdict,
            Map<Mode, Spread> spreads,
            List<Change> changes,
            StripTest strip,
            Optional<Swept> swept) {
        Map<String, Object> json = Json.answer("check");
        json.putAll(verdict(verdict, spreads, new PanelCheck().firstOrder(verdict)));
        json.put("layingList", LayingJson.of(verdict.job()));
        List<Object> rows = new ArrayList<>();
        for (Change change : changes) {
            Map<String, Object> row = change(change.words(), change.addedMass(), change.verdict());
            row.put("feltStiffness", feltStiffness(change.verdict()));
            rows.add(row);
        }
        json.put(Remarks.clearly(verdict) ? "couldLeaveOut" : "wouldCure", rows);
        Concentration.of(verdict)
                .ifPresent(
                        raised -> {
                            Map<String, Object> one = new LinkedHashMap<>();
                            one.put("opening", raised.opening());
                            one.put("load", raised.loadCase());
                            one.put("solved", raised.solved());
                            one.put("wideSheet", raised.wideSheet());
                            json.put("concentration", one);
                        });
        Map<String, Object> test = new LinkedHashMap<>();
        test.put("width", strip.width());
        test.put("span", strip.span());
        test.put("mass", strip.mass());
        test.put("reading", strip.reading());
        test.put("low", strip.low());
        test.put("high", strip.high());
        json.put("stripTest", test);
        swept.ifPresent(feel -> json.put("swept", swept(feel)));
        return json;
    }

    /** Returns what a change is, what it weighs and whether the panel holds with it. */
    static Map<String, Object> change(String words, double addedMass, Verdict after) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("change", words);
        json.put("addedMass", addedMass);
        json.put("holds", after.holds());
        return json;
    }

    /** Returns a felt stiffness without its scatter [N/m]; NaN where nobody presses. */
    static double feltStiffness(Verdict verdict) {
        return verdict.felt().map(Spread::nominal).orElse(Double.NaN);
    }

    private static Map<String, Object> swept(Swept swept) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("load", swept.load());
        json.put("force", swept.force());
        json.put("softest", feel(swept.softest()));
        json.put(
                "places", new ArrayList<>(swept.places().stream().map(VerdictJson::feel).toList()));
        return json;
    }

    private static Map<String, Object> feel(Swept.Feel feel) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("x", feel.x());
        json.put("y", feel.y());
        json.put("stiffness", feel.stiffness());
        return json;
    }

    /**
     * Returns a verdict as one object among others.
     *
     * @param firstOrder each movement by first-order theory; empty where it is not asked
     */
    static Map<String, Object> verdict(
            Verdict verdict, Map<Mode, Spread> spreads, List<Double> firstOrder) {
        Job job = verdict.job();
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("panel", job.panel().name());
        json.put("width", job.panel().width());
        json.put("length", job.panel().length());
        json.put("support", job.panel().rimCarried() ? "whole rim carried" : "fittings");
        json.put("method", verdict.method());
        json.put("holds", verdict.holds());
        json.put("stiffEnough", answer(verdict, verdict.stiff(), Mode.Question.STIFF));
        json.put("strongEnough", answer(verdict, verdict.strong(), Mode.Question.STRONG));
        json.put("unmarked", answer(verdict, verdict.unmarked(), Mode.Question.UNMARKED));
        json.put("marksAllowed", job.limits().marksAllowed());
        json.put(
                "modes",
                new ArrayList<>(
                        verdict.margins().stream()
                                .map(m -> mode(m, spreads.get(m.mode())))
                                .toList()));
        List<Object> movements = new ArrayList<>();
        for (int i = 0; i < verdict.movements().size(); i++) {
            double plain = firstOrder.isEmpty() ? Double.NaN : firstOrder.get(i);
            movements.add(movement(verdict.movements().get(i), plain));
        }
        json.put("movements", movements);
        json.put("held", held(verdict));
        verdict.felt().ifPresent(felt -> json.put("feltStiffness", spread(felt)));
        json.put("frequency", verdict.frequency());
        json.put("liftOffSpeed", verdict.liftOffSpeed());
        json.put("mass", verdict.mass());
        json.put("massPerArea", verdict.mass() / job.panel().area());
        json.put(
                "order",
                "layers from the inside to the outside; z outward from mid-height; x from left, y from front");
        json.put("layers", StackJson.layers(job.panel().laminate()));
        json.put("cautions", verdict.cautions());
        Map<String, Object> errors = new LinkedHashMap<>();
        verdict.numericalErrors().forEach(error -> errors.put(error.figure(), error.error()));
        json.put("numericalErrors", errors);
        return json;
    }

    /** Forces of fittings on the panel, load case by load case. */
    private static List<Object> held(Verdict verdict) {
        List<Object> rows = new ArrayList<>();
        for (int i = 0; i < verdict.held().size(); i++) {
            Held under = verdict.held().get(i);
            if (under.grips().isEmpty() && under.seals().isEmpty()) {
                continue;
            }
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("load", verdict.job().loads().get(i).name());
            List<Object> grips = new ArrayList<>();
            for (int k = 0; k < under.grips().size(); k++) {
                Held.Grip grip = under.grips().get(k);
                Map<String, Object> one = new LinkedHashMap<>();
                one.put("fitting", grip.name());
                one.put("direction", grip.direction().name());
                one.put("force", grip.force());
                one.put("forceAtRest", verdict.atRest().get(i).grips().get(k).force());
                grips.add(one);
            }
            row.put("fittings", grips);
            row.put("sealForce", under.sealForce());
            row.put("widestGap", under.widestGap());
            rows.add(row);
        }
        return rows;
    }

    private static String answer(Verdict verdict, Answer answer, Mode.Question question) {
        return verdict.governing(question).isEmpty() ? "NOT ASKED" : answer.name();
    }

    private static Map<String, Object> mode(Margin margin, @Nullable Spread spread) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("mode", margin.mode().words());
        json.put("theory", margin.mode().theory());
        json.put("question", margin.mode().question().name());
        json.put("load", margin.loadCase());
        json.put("reversed", margin.reversed());
        Map<String, Object> place = new LinkedHashMap<>();
        place.put("words", margin.place().words());
        place.put("x", margin.place().x());
        place.put("y", margin.place().y());
        place.put("z", margin.place().z());
        json.put("place", place);
        json.put("applied", margin.applied());
        json.put("allowable", margin.allowable());
        json.put("multiplier", margin.multiplier());
        json.put("factor", margin.factor());
        json.put("reserve", margin.reserve());
        if (spread != null) {
            json.put("reserveLow", spread.low());
            json.put("reserveHigh", spread.high());
        }
        json.put("methodError", margin.methodError());
        json.put("meshError", margin.meshError());
        json.put("remark", margin.remark());
        return json;
    }

    private static Map<String, Object> movement(Movement movement, double firstOrder) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("load", movement.loadCase());
        json.put("force", movement.force());
        json.put("total", movement.total());
        json.put("bending", movement.bending());
        json.put("sliding", movement.sliding());
        json.put("seal", movement.seal());
        json.put("dent", movement.dent());
        json.put("x", movement.at().x());
        json.put("y", movement.at().y());
        json.put("firstOrder", firstOrder);
        return json;
    }

    private static Map<String, Object> spread(Spread felt) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("nominal", felt.nominal());
        json.put("low", felt.low());
        json.put("high", felt.high());
        Map<String, Object> shares = new LinkedHashMap<>();
        for (PrimaryInput input : PrimaryInput.values()) {
            Double share = felt.shares().get(input);
            if (share != null) {
                shares.put(input.words(), share);
            }
        }
        json.put("sharesOfVariance", shares);
        return json;
    }
}
