package org.coachskin.bench;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.coachskin.analysis.Field;
import org.coachskin.analysis.Shares;
import org.coachskin.check.Job;
import org.coachskin.check.Weights;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Ply;
import org.coachskin.laminate.Schedule;
import org.coachskin.panel.Bevels;
import org.coachskin.panel.Height;
import org.coachskin.panel.Panel;
import org.coachskin.panel.TurnedEdge;
import org.coachskin.panel.ZoneRecipe;

/** Finds which piece each layer of each part of a panel belongs to, and puts them in order. */
final class Stages {

    private static final Comparator<Key> IN_ORDER =
            Comparator.comparingInt(Key::zone).thenComparingInt(Key::index);

    private final Job job;
    private final Panel panel;
    private final Shares shares;
    private final Map<Ply, Double> cloth;
    private final Map<Key, Piecework> pieces = new LinkedHashMap<>();

    Stages(Job job) {
        this.job = job;
        panel = job.panel();
        shares = Weights.shares(job);
        cloth = job.cloth();
        shares.parts().forEach(part -> count(part, 0, Integer.MAX_VALUE));
        Bevels.longer(panel)
                .forEach((zones, area) -> count(new Shares.Part(zones, area), Height.INSIDE));
        for (Shares.End end : shares.ends()) {
            count(new Shares.Part(end.zones(), end.area(panel)), end.skin());
        }
    }

    /**
     * What is laid in one go.
     *
     * @param at the skin it belongs to; {@link Height#MIDDLE} between both
     * @param zone as far as which it reaches; {@link Field.Triangle#NONE} for all of the panel
     * @param index in the order of laying there
     */
    private record Key(Height at, int zone, int index) {
        private static final int SEAL_COAT = -1;
        private static final int FOAM = -2;

        private static Key ofPanel(Height at, int index) {
            return new Key(at, Field.Triangle.NONE, index);
        }
    }

    /** What a piece comes to so far. */
    private record Piecework(Weight weight, List<Shares.Part> parts) {
        Piecework plus(Piecework other) {
            List<Shares.Part> both = new ArrayList<>(parts);
            both.addAll(other.parts);
            return new Piecework(weight.plus(other.weight), both);
        }
    }

    /** Counts what one skin of a part weighs. */
    private void count(Shares.Part part, Height skin) {
        Laminate stack = Shares.stack(panel, part.decides());
        int size = skin.skin(stack).size();
        int from = skin == Height.INSIDE ? 0 : stack.layers().size() - size;
        count(part, from, from + size);
    }

    /**
     * Counts what a part weighs.
     *
     * @param from the first layer that counts, from the inside on
     * @param to the one after the last, at most
     */
    private void count(Shares.Part part, int from, int to) {
        List<Layer> layers = Shares.stack(panel, part.decides()).layers();
        List<Key> keys = keys(part.decides());
        // A seal coat without any resin is no layer.
        keys.removeIf(key -> key.index() == Key.SEAL_COAT && coat(key.at()) == 0);
        if (keys.size() != layers.size()) {
            throw new IllegalArgumentException(
                    "the stacks of " + panel.name() + " are not those of its schedule");
        }
        for (int i = from; i < Math.min(to, layers.size()); i++) {
            pieces.merge(
                    owner(keys.get(i), part),
                    new Piecework(weight(layers.get(i), part.area()), List.of(part)),
                    Piecework::plus);
        }
    }

    private double coat(Height skin) {
        Schedule.SealCoatMass coat = job.schedule().sealCoat();
        return skin == Height.OUTSIDE ? coat.outside() : coat.inside();
    }

    /** Returns what each layer of a zone's stack is, from its inside to its outside. */
    private List<Key> keys(int zone) {
        Schedule base = job.schedule();
        List<Key> inside = skin(Height.INSIDE, base.inside(), zone);
        List<Key> outside = skin(Height.OUTSIDE, base.outside(), zone);
        Collections.reverse(inside);
        List<Key> keys = new ArrayList<>(inside);
        if (base.board() == null || isBare(zone)) {
            for (int i = 0; i < more(zone, Height.MIDDLE).size(); i++) {
                keys.add(new Key(Height.MIDDLE, zone, i));
            }
        } else {
            if (!inside.isEmpty()) {
                keys.add(Key.ofPanel(Height.INSIDE, Key.SEAL_COAT));
            }
            keys.add(Key.ofPanel(Height.MIDDLE, Key.FOAM));
            if (!outside.isEmpty()) {
                keys.add(Key.ofPanel(Height.OUTSIDE, Key.SEAL_COAT));
            }
        }
        keys.addAll(outside);
        return keys;
    }

    private List<Key> skin(Height at, List<Schedule.Item> base, int zone) {
        List<Key> keys = new ArrayList<>();
        for (int i = 0; i < base.size(); i++) {
            keys.add(Key.ofPanel(at, i));
        }
        for (int i = 0; i < more(zone, at).size(); i++) {
            keys.add(new Key(at, zone, i));
        }
        return keys;
    }

    private boolean isBare(int zone) {
        return zone >= 0 && job.recipes().get(zone).build() instanceof ZoneRecipe.NoFoam;
    }

    /** Returns the plies that a zone has beside the panel's own. */
    private List<Schedule.Item> more(int zone, Height at) {
        if (zone < 0) {
            return List.of();
        }
        ZoneRecipe.Build build = job.recipes().get(zone).build();
        if (build instanceof ZoneRecipe.MorePlies plies) {
            return at == Height.OUTSIDE
                    ? plies.outside()
                    : at == Height.INSIDE ? plies.inside() : List.of();
        }
        if (build instanceof ZoneRecipe.NoFoam lip) {
            return at == Height.MIDDLE ? lip.more() : List.of();
        }
        List<Schedule.Item> over =
                build instanceof ZoneRecipe.FoamStrip strip
                        ? strip.over()
                        : ((ZoneRecipe.OtherFoam) build).over();
        return at == Height.INSIDE ? over : List.of();
    }

    /**
     * Returns the piece that a layer belongs to: a ply goes on from a zone into those within it as
     * far as they have the same plies up to it.
     */
    private Key owner(Key key, Shares.Part part) {
        if (key.zone() < 0) {
            return key;
        }
        int upTo = key.index() + 1;
        List<Schedule.Item> own = more(key.zone(), key.at()).subList(0, upTo);
        for (int zone : part.zones()) {
            List<Schedule.Item> under = more(zone, key.at());
            if (under.size() >= upTo
                    && under.subList(0, upTo).equals(own)
                    && isWithin(key.zone(), zone)) {
                return new Key(key.at(), zone, key.index());
            }
        }
        return key;
    }

    private boolean isWithin(int zone, int other) {
        return shares.parts().stream()
                .map(Shares.Part::zones)
                .allMatch(zones -> !zones.contains(zone) || zones.contains(other));
    }

    private Weight weight(Layer layer, double area) {
        double mass = layer.thickness() * layer.density() * area;
        if (layer instanceof Layer.Core) {
            return Weight.NONE;
        }
        if (!(layer instanceof Layer.Laid laid)) {
            return new Weight(0, mass);
        }
        Double dry = cloth.get(laid.ply());
        return dry == null ? new Weight(mass, 0) : new Weight(dry * area, mass - dry * area);
    }

    List<LayingList.Stage> inOrder() {
        List<LayingList.Stage> stages = new ArrayList<>();
        Height first = LayingList.first(job);
        Height second = first == Height.OUTSIDE ? Height.INSIDE : Height.OUTSIDE;
        int plies = 0;
        for (Height skin : List.of(first, second)) {
            List<Step> steps = new ArrayList<>();
            if (skin == second) {
                lips(steps);
            }
            if (skin == Height.INSIDE) {
                letIn(steps);
            }
            sealCoat(skin, steps);
            if (skin == second) {
                zonePlies(Height.MIDDLE, steps);
            }
            plies = panelPlies(skin, plies, steps);
            zonePlies(skin, steps);
            hems(skin, steps);
            if (!steps.isEmpty()) {
                stages.add(new LayingList.Stage(skin, steps));
            }
        }
        return stages;
    }

    private boolean isSomewhere(int zone) {
        return shares.parts().stream().anyMatch(part -> part.decides() == zone);
    }

    private void lips(List<Step> steps) {
        for (int zone = 0; zone < job.recipes().size(); zone++) {
            if (isBare(zone) && isSomewhere(zone)) {
                steps.add(new Step.NoFoam(zone));
            }
        }
    }

    private void letIn(List<Step> steps) {
        for (int zone = 0; zone < job.recipes().size(); zone++) {
            ZoneRecipe recipe = job.recipes().get(zone);
            if (!isSomewhere(zone)) {
                continue;
            }
            if (recipe.build() instanceof ZoneRecipe.OtherFoam other) {
                steps.add(
                        new Step.Insert(
                                zone,
                                other.foam(),
                                other.thickness(),
                                Pieces.boards(panel, recipe.region(), 0),
                                others(zone)));
            } else if (recipe.build() instanceof ZoneRecipe.FoamStrip strip) {
                double bevel = strip.more() / strip.slope();
                steps.add(
                        new Step.Strip(
                                zone,
                                strip.more(),
                                bevel,
                                Pieces.boards(panel, recipe.region(), bevel),
                                others(zone)));
            }
        }
    }

    /** Returns the zones that decide in another one in its stead. */
    private List<Integer> others(int zone) {
        return without(zone, part -> part.decides() == zone);
    }

    /** Returns the zones that decide where a piece of a zone does not lie. */
    private List<Integer> without(int zone, Predicate<Shares.Part> lies) {
        return shares.parts().stream()
                .filter(part -> part.zones().contains(zone))
                .filter(lies.negate())
                .map(Shares.Part::decides)
                .distinct()
                .sorted()
                .toList();
    }

    private void sealCoat(Height skin, List<Step> steps) {
        Piecework coat = pieces.get(Key.ofPanel(skin, Key.SEAL_COAT));
        if (coat != null) {
            steps.add(new Step.SealCoat(skin, coat.weight()));
        }
    }

    private int panelPlies(Height skin, int before, List<Step> steps) {
        List<Schedule.Item> items =
                skin == Height.OUTSIDE ? job.schedule().outside() : job.schedule().inside();
        int number = before;
        for (int i = 0; i < items.size(); i++) {
            number++;
            Piecework piece = pieces.get(Key.ofPanel(skin, i));
            Weight weight = piece == null ? Weight.NONE : piece.weight();
            steps.add(new Step.Ply(number, items.get(i), Pieces.skin(panel, skin), weight));
        }
        return number;
    }

    private void zonePlies(Height at, List<Step> steps) {
        pieces.entrySet().stream()
                .filter(piece -> piece.getKey().zone() >= 0 && piece.getKey().at() == at)
                .sorted(Map.Entry.comparingByKey(IN_ORDER))
                .forEach(piece -> steps.add(zonePly(piece.getKey(), piece.getValue())));
    }

    private Step zonePly(Key key, Piecework piece) {
        return new Step.ZonePly(
                key.zone(),
                more(key.zone(), key.at()).get(key.index()),
                key.at() == Height.MIDDLE,
                Pieces.cloth(panel, job.recipes().get(key.zone()).region()),
                without(key.zone(), piece.parts()::contains),
                piece.weight());
    }

    private void hems(Height skin, List<Step> steps) {
        for (TurnedEdge edge : panel.turned()) {
            double over = 0;
            Weight weight = Weight.NONE;
            for (Shares.Hem hem : shares.hems()) {
                if (edge.skin() == skin && hem.edge().equals(edge)) {
                    Laminate stack = Shares.stack(panel, hem.zone());
                    over = Math.max(over, TurnedEdge.reach(stack));
                    for (Layer layer : edge.layers(stack)) {
                        weight = weight.plus(weight(layer, hem.area(panel, layer)));
                    }
                }
            }
            if (over > 0) {
                steps.add(new Step.Hem(edge, over, weight));
            }
        }
    }
}
