package org.coachskin.reinforce;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.coachskin.check.Job;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Height;
import org.coachskin.panel.Opening;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Region;
import org.coachskin.panel.TurnedEdge;
import org.coachskin.panel.ZoneRecipe;

/** What is to be reinforced. */
public sealed interface Target {

    /** Returns what it is called in the panel file. */
    String name();

    /** Returns what the zone is called that reinforces it. */
    String zone();

    /** Returns the part of a panel that reaches {@code width} away from it [m]. */
    Region region(Panel panel, double width);

    /** Returns whether a zone of the file is there to reinforce this. */
    boolean isReinforcedBy(ZoneRecipe recipe);

    /** Returns its raw edge with the inside skin turned round; empty where there is none. */
    default Optional<TurnedEdge> turned() {
        return Optional.empty();
    }

    /**
     * An opening.
     *
     * @param opening which
     */
    record Hole(Opening opening) implements Target {
        @Override
        public String name() {
            return opening.name();
        }

        @Override
        public String zone() {
            return "ring round the " + name();
        }

        @Override
        public Region region(Panel panel, double width) {
            return new Region.Around(opening.name(), width);
        }

        @Override
        public boolean isReinforcedBy(ZoneRecipe recipe) {
            return recipe.region() instanceof Region.Around ring
                    && ring.opening().equals(opening.name());
        }

        @Override
        public Optional<TurnedEdge> turned() {
            return Optional.of(new TurnedEdge.Round(opening.name(), Height.INSIDE));
        }
    }

    /**
     * An edge of the panel.
     *
     * @param edge which
     */
    record Along(Edge edge) implements Target {
        @Override
        public String name() {
            return edge.words();
        }

        @Override
        public String zone() {
            return "band at the " + name();
        }

        @Override
        public Region region(Panel panel, double width) {
            return new Region.AlongEdges(List.of(edge), width);
        }

        @Override
        public boolean isReinforcedBy(ZoneRecipe recipe) {
            return recipe.region() instanceof Region.AlongEdges band
                    && band.edges().equals(List.of(edge))
                    && !(recipe.build() instanceof ZoneRecipe.NoFoam);
        }

        @Override
        public Optional<TurnedEdge> turned() {
            return Optional.of(new TurnedEdge.Along(edge, Height.INSIDE));
        }
    }

    /**
     * A hinge, latch, rest or prop: foam and skins round it.
     *
     * @param pad which
     */
    record Hardware(Fitting.Pad pad) implements Target {
        @Override
        public String name() {
            return pad.name();
        }

        @Override
        public String zone() {
            return "patch under the " + name();
        }

        @Override
        public Region region(Panel panel, double width) {
            return new Region.Box(
                    Math.max(0, pad.x() - pad.sizeX() / 2 - width),
                    Math.min(panel.width(), pad.x() + pad.sizeX() / 2 + width),
                    Math.max(0, pad.y() - pad.sizeY() / 2 - width),
                    Math.min(panel.length(), pad.y() + pad.sizeY() / 2 + width));
        }

        @Override
        public boolean isReinforcedBy(ZoneRecipe recipe) {
            return recipe.region() instanceof Region.Box box
                    && box.x1() < pad.x()
                    && pad.x() < box.x2()
                    && box.y1() < pad.y()
                    && pad.y() < box.y2();
        }
    }

    /**
     * The lip.
     *
     * @param recipe as the file draws it
     */
    record Lip(ZoneRecipe recipe) implements Target {
        @Override
        public String name() {
            return recipe.name();
        }

        @Override
        public String zone() {
            return name();
        }

        @Override
        public Region region(Panel panel, double width) {
            Region.AlongEdges band = (Region.AlongEdges) recipe.region();
            return new Region.AlongEdges(band.edges(), width);
        }

        @Override
        public boolean isReinforcedBy(ZoneRecipe other) {
            return other.equals(recipe);
        }
    }

    /** Returns everything of a panel that can be reinforced, openings first. */
    static List<Target> of(Job job) {
        List<Target> found = new ArrayList<>();
        job.panel().openings().forEach(opening -> found.add(new Hole(opening)));
        job.recipes().stream()
                .filter(recipe -> recipe.build() instanceof ZoneRecipe.NoFoam)
                .filter(recipe -> recipe.region() instanceof Region.AlongEdges)
                .forEach(recipe -> found.add(new Lip(recipe)));
        job.panel().support().pads().forEach(pad -> found.add(new Hardware(pad)));
        for (Edge edge : Edge.values()) {
            found.add(new Along(edge));
        }
        return found;
    }

    /** Returns what is called so, whatever the case of its letters. */
    static Optional<Target> named(Job job, String name) {
        String wanted = name.strip().toLowerCase(Locale.ROOT);
        return of(job).stream()
                .filter(target -> target.name().toLowerCase(Locale.ROOT).equals(wanted))
                .findFirst();
    }
}
