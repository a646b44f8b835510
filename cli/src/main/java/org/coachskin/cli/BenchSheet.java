package org.coachskin.cli;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.check.Picture;
import org.coachskin.check.Verdict;
import org.coachskin.cli.report.Block;
import org.coachskin.cli.report.Sheet;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Schedule;
import org.coachskin.panel.TurnedEdge;
import org.coachskin.panel.ZoneRecipe;
import org.coachskin.prove.StripTest;

/** The sheet for the bench: what to lay, in order, and what should be read before and after. */
final class BenchSheet {

    private final Verdict verdict;
    private final Figures figures;

    BenchSheet(Verdict verdict, Figures figures) {
        this.verdict = verdict;
        this.figures = figures;
    }

    Sheet sheet(Picture picture, StripTest strip) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(laying());
        List<String> careful = new ArrayList<>(Remarks.cautions(verdict, figures));
        careful.add(Remarks.NO_APPROVAL);
        blocks.add(new Block.Words("Careful", "", careful, true, true));
        return new Sheet("bench", "Lay it and prove it", "for the bench", blocks);
    }

    private Block laying() {
        List<List<String>> rows = new ArrayList<>();
        Schedule schedule = verdict.job().schedule();
        Laminate laminate = verdict.job().panel().laminate();
        int first = laminate.outermostCore();
        List<Layer> layers = laminate.layers();
        int number = 1;
        int ply = 0;
        for (int i = first + 1; i < layers.size(); i++) {
            boolean laid = layers.get(i) instanceof Layer.Laid;
            rows.add(row(layers.get(i), laid ? number++ : 0, schedule.outside(), laid ? ply++ : 0));
        }
        if (first > 0) {
            rows.add(List.of("", "", "Let it cure, turn it over.", "", ""));
        }
        ply = 0;
        for (int i = first - 1; i >= 0; i--) {
            boolean laid = layers.get(i) instanceof Layer.Laid;
            rows.add(row(layers.get(i), laid ? number++ : 0, schedule.inside(), laid ? ply++ : 0));
        }
        ZoneWords zones = new ZoneWords(figures);
        for (ZoneRecipe recipe : verdict.job().recipes()) {
            rows.add(List.of("", "", zones.of(recipe), "", ""));
        }
        for (TurnedEdge edge : verdict.job().panel().turned()) {
            rows.add(List.of("", "", turned(edge), "", ""));
        }
        return new Block.Rows(
                "Laying list",
                "Weights for the whole panel without trimmings and without what zones add; resin "
                        + "left in pot and brush comes on top. Zones and turned skins belong to the "
                        + "skin they name: read the list to its end first.",
                List.of("done", "ply", "what", "cloth", "resin"),
                rows,
                "tick",
                true);
    }

    private List<String> row(Layer layer, int number, List<Schedule.Item> items, int at) {
        double area = verdict.job().panel().area();
        double mass = layer.thickness() * layer.density() * area;
        if (!(layer instanceof Layer.Laid)) {
            return List.of("", "", "Seal the foam with resin.", "", figures.grams(mass));
        }
        Schedule.Item item = items.get(at);
        String name = new ZoneWords(figures).ply(item);
        if (item instanceof Schedule.Wet wet) {
            double cloth = wet.cloth().arealMass() * area;
            return List.of(
                    "", "" + number, name, figures.grams(cloth), figures.grams(mass - cloth));
        }
        return List.of("", "" + number, name, figures.grams(mass), "");
    }

    private static String turned(TurnedEdge edge) {
        String skin = edge.skin().name().toLowerCase(java.util.Locale.ROOT);
        String where =
                edge instanceof TurnedEdge.Round round
                        ? "of the " + round.opening()
                        : "along the " + ((TurnedEdge.Along) edge).edge().words();
        return "Turn the " + skin + " skin round the raw foam " + where + ".";
    }
}
