package org.coachskin.reinforce;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.coachskin.check.Job;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.Cloth;
import org.coachskin.panel.ZoneRecipe;

/** What is at hand to be laid: the cloths of the file. */
final class AtHand {

    private AtHand() {}

    /**
     * Returns cloths of the file, the heaviest first, laid along the sides, two at most; where it
     * has none, a ply given outright.
     *
     * @param bare without what reinforces the target
     * @param drawn as the file draws it
     */
    static List<Schedule.Item> plies(Job bare, Job drawn) {
        List<List<Schedule.Item>> skins = skins(bare, drawn);
        Map<String, Cloth> cloths = new LinkedHashMap<>();
        for (List<Schedule.Item> skin : skins) {
            for (Schedule.Item item : skin) {
                if (item instanceof Schedule.Wet wet) {
                    cloths.put(wet.cloth().name(), wet.cloth());
                }
            }
        }
        List<Schedule.Item> plies = new ArrayList<>();
        cloths.values().stream()
                .sorted(Comparator.comparingDouble(Cloth::arealMass).reversed())
                .limit(2)
                .forEach(cloth -> plies.add(new Schedule.Wet(cloth, 0)));
        if (plies.isEmpty()) {
            skins.stream().flatMap(List::stream).limit(1).forEach(plies::add);
        }
        return plies;
    }

    /** Every list of plies in the file. */
    private static List<List<Schedule.Item>> skins(Job bare, Job drawn) {
        List<List<Schedule.Item>> all = new ArrayList<>();
        all.add(bare.schedule().inside());
        all.add(bare.schedule().outside());
        for (ZoneRecipe recipe : drawn.recipes()) {
            if (recipe.build() instanceof ZoneRecipe.MorePlies more) {
                all.add(more.inside());
                all.add(more.outside());
            } else if (recipe.build() instanceof ZoneRecipe.FoamStrip strip) {
                all.add(strip.over());
            } else if (recipe.build() instanceof ZoneRecipe.OtherFoam other) {
                all.add(other.over());
            } else if (recipe.build() instanceof ZoneRecipe.NoFoam lip) {
                all.add(lip.more());
            }
        }
        return all;
    }
}
