package org.coachskin.cli;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.bench.LayingList;
import org.coachskin.check.Picture;
import org.coachskin.check.Verdict;
import org.coachskin.cli.report.Block;
import org.coachskin.cli.report.PlanDrawing;
import org.coachskin.cli.report.Sheet;
import org.coachskin.cli.report.StackDrawing;
import org.coachskin.design.Change;
import org.coachskin.failure.Mode;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.panel.Height;
import org.coachskin.panel.Opening;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Shape;
import org.coachskin.panel.ZoneRecipe;

/** The sheet for the wall: what to build. */
final class BuildSheet {

    private final Verdict verdict;
    private final Panel panel;
    private final Figures figures;
    private final ZoneWords zones;

    BuildSheet(Verdict verdict, Figures figures) {
        this.verdict = verdict;
        this.figures = figures;
        panel = verdict.job().panel();
        zones = new ZoneWords(figures);
    }

    Sheet sheet(Picture picture, List<Change> changes) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(plan(picture));
        blocks.add(cut());
        if (!changes.isEmpty()) {
            blocks.add(changes(changes));
        }
        return new Sheet("build", "What to build", "for the wall", blocks);
    }

    Block plan(Picture picture) {
        List<String> letters = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        for (Opening opening : panel.openings()) {
            notes.add(opening(opening));
        }
        List<ZoneRecipe> recipes = verdict.job().recipes();
        for (int i = 0; i < recipes.size(); i++) {
            String letter = ZoneWords.letter(i);
            letters.add(letter);
            notes.add(letter + "  " + zones.of(recipes.get(i)));
        }
        return new Block.Figure(
                "The panel from outside, sizes in " + figures.lengthName(),
                "Seen from outside, rear edge on top. "
                        + held()
                        + " Broken lines: where the panel is pressed, and where it is laid otherwise.",
                PlanDrawing.of(
                        panel,
                        picture.moved().get(0).field(),
                        verdict.job().loads(),
                        letters,
                        figures),
                notes);
    }

    private String opening(Opening opening) {
        String shape = "";
        if (opening.shape() instanceof Shape.Rectangle r) {
            shape =
                    ": "
                            + figures.size(r.x())
                            + " x "
                            + figures.size(r.y())
                            + (r.cornerRadius() == 0
                                    ? ", sharp corners"
                                    : ", corner radius " + figures.size(r.cornerRadius()));
        } else if (opening.shape() instanceof Shape.Circle c) {
            shape = ": circle " + figures.size(c.diameter());
        }
        return opening.name() + shape;
    }

    private String held() {
        return panel.rimCarried()
                ? "Its whole rim is carried (ticks)."
                : "Crossed squares are what it hangs on, dots along the rim the rubber seal.";
    }

    Block cut() {
        Laminate laminate = panel.laminate();
        List<StackDrawing.Label> labels = labels(laminate);
        int outside = verdict.job().schedule().outside().size();
        int inside = verdict.job().schedule().inside().size();
        String thick = figures.size(laminate.thickness()) + " thick when cured.";
        boolean insideFirst = LayingList.first(verdict.job()) == Height.INSIDE;
        int first = insideFirst ? inside : outside;
        String order =
                outside == 0 || inside == 0 || laminate.isBare()
                        ? "Lay in the order of the numbers; "
                        : "Lay "
                                + numbers(1, first)
                                + (insideFirst ? " inside" : " outside")
                                + ", turn over, lay "
                                + numbers(first + 1, outside + inside)
                                + (insideFirst ? " outside; " : " inside; ");
        return new Block.Figure(
                "Cut through the panel",
                order
                        + thick
                        + " True scale on the left, when printed at full size; beside it skins "
                        + StackDrawing.times(laminate)
                        + " times as thick.",
                StackDrawing.of(laminate, labels),
                List.of());
    }

    private static String numbers(int from, int to) {
        return from == to ? "" + from : to == from + 1 ? from + " and " + to : from + " to " + to;
    }

    /** Returns words beside each layer, plies numbered in the order of laying. */
    private List<StackDrawing.Label> labels(Laminate laminate) {
        int count = laminate.layers().size();
        String[] names = new String[count];
        int core = laminate.outermostCore();
        if (LayingList.first(verdict.job()) == Height.OUTSIDE) {
            nameInside(
                    laminate, core - 1, nameOutside(laminate, Math.max(0, core), 1, names), names);
        } else {
            nameOutside(laminate, core, nameInside(laminate, core - 1, 1, names), names);
        }
        List<StackDrawing.Label> labels = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Layer layer = laminate.layers().get(i);
            double mass = layer.thickness() * layer.density() * panel.area();
            labels.add(
                    new StackDrawing.Label(
                            names[i],
                            figures.fineSize(layer.thickness()) + ", " + figures.grams(mass)));
        }
        return labels;
    }

    private int nameOutside(Laminate laminate, int from, int first, String[] names) {
        int number = first;
        for (int i = from; i < laminate.layers().size(); i++) {
            number = name(laminate, i, number, names);
        }
        return number;
    }

    private int nameInside(Laminate laminate, int from, int first, String[] names) {
        int number = first;
        for (int i = from; i >= 0; i--) {
            number = name(laminate, i, number, names);
        }
        return number;
    }

    private int name(Laminate laminate, int layer, int number, String[] names) {
        Layer of = laminate.layers().get(layer);
        if (of instanceof Layer.Laid laid) {
            names[layer] = number + "  " + figures.words(laid.ply().name());
            return number + 1;
        }
        names[layer] = of instanceof Layer.Core core ? core.foam().name() + " foam" : "seal coat";
        return number;
    }

    private Block changes(List<Change> changes) {
        boolean clear = Remarks.clearly(verdict);
        // What is wanting is what the bars show.
        boolean stiffness =
                (verdict.holds() || verdict.governing().mode() == Mode.FELT_STIFFNESS)
                        && verdict.felt().isPresent()
                        && changes.stream().allMatch(c -> c.verdict().felt().isPresent());
        List<Block.Bar> bars = new ArrayList<>();
        bars.add(bar("as drawn", verdict, stiffness, ""));
        for (Change change : changes) {
            String mass = figures.addedGrams(change.addedMass());
            bars.add(bar(figures.words(change.words()), change.verdict(), stiffness, mass));
        }
        String heading = clear ? "What you could leave out" : "What would cure it";
        String sentence =
                clear
                        ? "One at a time, and it still holds."
                        : "One change at a time, lightest first. "
                                + figures.words(Remarks.best(changes));
        return stiffness
                ? WantedBars.stiffnesses(
                        heading,
                        sentence
                                + " Bars: felt stiffness under a palm; the line is what is wanted.",
                        verdict.job().limits().feltStiffness(),
                        bars,
                        figures)
                : WantedBars.reserves(
                        heading,
                        sentence + " Bars: the least reserve; under 1.00 it does not hold.",
                        bars);
    }

    private Block.Bar bar(String words, Verdict of, boolean stiffness, String mass) {
        String outcome = Upshot.of(of).words();
        String more = mass.isEmpty() ? outcome : mass + ", " + outcome;
        return stiffness
                ? new Block.Bar(
                        words,
                        of.felt().orElseThrow().nominal(),
                        Rows.felt(of, figures),
                        more,
                        !of.holds())
                : WantedBars.reserve(words, of.governing().reserve(), more, !of.holds());
    }
}
