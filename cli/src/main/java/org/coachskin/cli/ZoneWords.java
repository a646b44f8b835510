package org.coachskin.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.Foam;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Region;
import org.coachskin.panel.ZoneRecipe;

/** What is laid otherwise in a part of the panel, and where that is, as a maker says it. */
final class ZoneWords {

    private final Figures figures;

    ZoneWords(Figures figures) {
        this.figures = figures;
    }

    /** Returns where a zone is and what is done there. */
    String of(ZoneRecipe recipe) {
        return where(recipe.region()) + ": " + what(recipe.build());
    }

    /** Returns the letter of a zone, by its number. */
    static String letter(int zone) {
        return String.valueOf((char) ('a' + zone % 26));
    }

    /** Returns where a zone is. */
    String where(Region region) {
        if (region instanceof Region.AlongEdges band) {
            String edges =
                    band.edges().size() == Edge.values().length
                            ? "all edges"
                            : band.edges().stream()
                                    .map(Edge::words)
                                    .collect(Collectors.joining(", "));
            return figures.size(band.width()) + " along " + edges;
        }
        if (region instanceof Region.Around ring) {
            return figures.size(ring.width()) + " round " + ring.opening();
        }
        Region.Box box = (Region.Box) region;
        return figures.size(box.x2() - box.x1())
                + " x "
                + figures.size(box.y2() - box.y1())
                + ", its middle "
                + figures.size((box.x1() + box.x2()) / 2)
                + " from left, "
                + figures.size((box.y1() + box.y2()) / 2)
                + " from front";
    }

    private String what(ZoneRecipe.Build build) {
        if (build instanceof ZoneRecipe.MorePlies more) {
            List<String> words = new ArrayList<>();
            if (!more.outside().isEmpty()) {
                words.add("outside more: " + plies(more.outside()));
            }
            if (!more.inside().isEmpty()) {
                words.add("inside more: " + plies(more.inside()));
            }
            return String.join("; ", words);
        }
        if (build instanceof ZoneRecipe.FoamStrip strip) {
            return "foam strip "
                    + figures.size(strip.more())
                    + " thick on the inside, under the inside skin, sloping down to nothing over "
                    + figures.size(strip.more() / strip.slope())
                    + " beyond that"
                    + over(strip.over());
        }
        if (build instanceof ZoneRecipe.OtherFoam other) {
            return other.foam().map(this::foam).orElse("foam")
                    + " "
                    + figures.size(other.thickness())
                    + " thick in place of the foam"
                    + over(other.over());
        }
        ZoneRecipe.NoFoam lip = (ZoneRecipe.NoFoam) build;
        return "no foam: both skins on one another"
                + (lip.more().isEmpty() ? "" : ", between them " + plies(lip.more()));
    }

    /** Returns what foam or solid something is of. */
    String foam(Foam foam) {
        return foam.kind() == Foam.Kind.OTHER
                ? foam.name()
                : foam.name() + " foam " + figures.density(foam.density());
    }

    private String over(List<Schedule.Item> plies) {
        return plies.isEmpty() ? "" : ", over it " + plies(plies);
    }

    private String plies(List<Schedule.Item> plies) {
        return plies.stream().map(this::ply).collect(Collectors.joining(", "));
    }

    /** Returns what a ply is called, and how it is turned if it is. */
    String ply(Schedule.Item item) {
        String name =
                item instanceof Schedule.Wet wet
                        ? wet.cloth().name()
                        : ((Schedule.Given) item).ply().name();
        String turned = Figures.decimals(StrictMath.toDegrees(item.angle()), 0);
        return figures.words(name)
                + (turned.equals("0") ? "" : " turned by " + turned + " degrees");
    }
}
