package org.coachskin.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.coachskin.bench.LayingList;
import org.coachskin.bench.Piece;
import org.coachskin.bench.Pieces;
import org.coachskin.bench.Step;
import org.coachskin.bench.Weight;
import org.coachskin.check.Job;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.Foam;
import org.coachskin.panel.TurnedEdge;

/** What is cut and laid, in order, as JSON; {@code results.schema.json} describes it. */
final class LayingJson {

    private final Job job;

    private LayingJson(Job job) {
        this.job = job;
    }

    /** Returns the list of a panel. */
    static Map<String, Object> of(Job job) {
        LayingJson writer = new LayingJson(job);
        LayingList list = LayingList.of(job);
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("trim", Pieces.TRIM);
        Schedule.Board board = job.schedule().board();
        if (board != null) {
            Piece whole = new Piece(1, job.panel().width(), job.panel().length());
            Map<String, Object> row = new LinkedHashMap<>();
            put(row, board.foam());
            row.put("thickness", board.thickness());
            row.put("pieces", pieces(List.of(whole)));
            json.put("board", row);
        }
        json.put("stages", new ArrayList<>(list.stages().stream().map(writer::stage).toList()));
        put(json, list.weight());
        return json;
    }

    private Map<String, Object> stage(LayingList.Stage stage) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("skin", stage.skin().name().toLowerCase(Locale.ROOT));
        json.put("steps", new ArrayList<>(stage.steps().stream().map(this::step).toList()));
        put(json, stage.weight());
        return json;
    }

    private Map<String, Object> step(Step step) {
        Map<String, Object> json = new LinkedHashMap<>();
        if (step instanceof Step.Ply ply) {
            json.put("what", "ply");
            json.put("number", ply.number());
            put(json, ply.item());
            json.put("pieces", pieces(List.of(ply.cut())));
        } else if (step instanceof Step.ZonePly ply) {
            json.put("what", "ply of a zone");
            json.put("zone", zone(ply.zone()));
            put(json, ply.item());
            json.put("betweenSkins", ply.between());
            json.put("pieces", pieces(ply.cut()));
            json.put("notIn", zones(ply.without()));
        } else if (step instanceof Step.Strip strip) {
            json.put("what", "foam strip");
            json.put("zone", zone(strip.zone()));
            json.put("thickness", strip.thickness());
            json.put("bevel", strip.bevel());
            json.put("pieces", pieces(strip.cut()));
            json.put("notIn", zones(strip.without()));
        } else if (step instanceof Step.Insert insert) {
            json.put("what", "insert");
            json.put("zone", zone(insert.zone()));
            insert.foam().ifPresent(foam -> put(json, foam));
            json.put("thickness", insert.thickness());
            json.put("pieces", pieces(insert.cut()));
            json.put("notIn", zones(insert.without()));
        } else if (step instanceof Step.NoFoam lip) {
            json.put("what", "take foam out");
            json.put("zone", zone(lip.zone()));
        } else if (step instanceof Step.Hem hem) {
            json.put("what", "turn skin round raw foam");
            json.put("round", round(hem.edge()));
            json.put("over", hem.over());
        } else {
            json.put("what", "seal foam");
        }
        put(json, step.weight());
        return json;
    }

    private static void put(Map<String, Object> json, Weight weight) {
        json.put("cloth", weight.cloth());
        json.put("resin", weight.resin());
    }

    private static void put(Map<String, Object> json, Schedule.Item item) {
        json.put(
                "of",
                item instanceof Schedule.Wet wet
                        ? wet.cloth().name()
                        : ((Schedule.Given) item).ply().name());
        json.put("angle", item.angle());
    }

    private static void put(Map<String, Object> json, Foam foam) {
        json.put("of", foam.name());
        json.put("density", foam.density());
    }

    private static List<Object> pieces(List<Piece> pieces) {
        List<Object> rows = new ArrayList<>();
        for (Piece piece : pieces) {
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("count", piece.count());
            row.put("one", piece.one());
            row.put("other", piece.other());
            row.put("disc", piece.round());
            rows.add(row);
        }
        return rows;
    }

    private String zone(int zone) {
        return job.recipes().get(zone).name();
    }

    private List<Object> zones(List<Integer> zones) {
        return new ArrayList<>(zones.stream().map(this::zone).toList());
    }

    private static String round(TurnedEdge edge) {
        return edge instanceof TurnedEdge.Round round
                ? round.opening()
                : ((TurnedEdge.Along) edge).edge().words();
    }
}
