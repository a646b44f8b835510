package org.coachskin.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.Foam;
import org.coachskin.panel.Region;
import org.coachskin.panel.ZoneRecipe;
import org.coachskin.reinforce.Build;
import org.coachskin.reinforce.Laying;
import org.coachskin.reinforce.Measure;
import org.coachskin.reinforce.Practice;
import org.coachskin.reinforce.Target;
import org.coachskin.reinforce.Tried;

/** A reinforcement as lines to write in the panel file. */
final class FileLines {

    private static final Pattern PLAIN = Pattern.compile("[A-Za-z][A-Za-z0-9 _-]*");

    private FileLines() {}

    /** Returns the lines, keys of the file at the margin. */
    static List<String> of(Target target, Tried tried) {
        Measure measure = tried.measure();
        List<String> lines = new ArrayList<>();
        if (measure.build() instanceof Build.InLip && target instanceof Target.Lip lip) {
            ZoneRecipe recipe = Laying.recipes(tried.job().panel(), target, measure).get(0);
            Region.AlongEdges band = (Region.AlongEdges) lip.recipe().region();
            ZoneRecipe.NoFoam bare = (ZoneRecipe.NoFoam) recipe.build();
            lines.add(
                    "lip: {width: "
                            + mm(band.width())
                            + ", more plies: "
                            + plies(bare.more())
                            + "}");
            return lines;
        }
        List<ZoneRecipe> recipes = Laying.recipes(tried.job().panel(), target, measure);
        if (!recipes.isEmpty()) {
            lines.add("zones:");
            if (measure.build() instanceof Build.Plies plies) {
                String skins =
                        (plies.inside() == 0
                                        ? ""
                                        : ", inside: " + copies(plies.ply(), plies.inside()))
                                + (plies.outside() == 0
                                        ? ""
                                        : ", outside: " + copies(plies.ply(), plies.outside()));
                boolean steps = recipes.size() > 1;
                lines.add(
                        "  - {"
                                + where(recipes.get(0).region())
                                + skins
                                + (steps ? ", step: " + mm(Practice.STEP) : "")
                                + "}");
            } else {
                recipes.forEach(recipe -> lines.add("  - " + zone(recipe)));
            }
        }
        if (measure.turned()) {
            lines.add("turned: {" + name(target.name()) + ": inside}");
        }
        if (measure.radius() > 0) {
            lines.add("and in the opening   corner radius: " + mm(measure.radius()));
        }
        return lines;
    }

    private static String zone(ZoneRecipe recipe) {
        String where = "{" + where(recipe.region());
        if (recipe.build() instanceof ZoneRecipe.MorePlies more) {
            return where + ", inside: " + plies(more.inside()) + "}";
        }
        if (recipe.build() instanceof ZoneRecipe.FoamStrip strip) {
            return where
                    + ", foam strip: "
                    + mm(strip.more())
                    + ", bevel: "
                    + mm(strip.more() / strip.slope())
                    + over(strip.over())
                    + "}";
        }
        ZoneRecipe.OtherFoam other = (ZoneRecipe.OtherFoam) recipe.build();
        Foam foam = other.foam().orElseThrow();
        String what =
                foam.kind() == Foam.Kind.OTHER
                        ? foam.name()
                        : foam.kind().name().toLowerCase(Locale.ROOT)
                                + " "
                                + Figures.METRIC.density(foam.density());
        return where + ", insert: " + what + " " + mm(other.thickness()) + over(other.over()) + "}";
    }

    private static String over(List<Schedule.Item> over) {
        return over.isEmpty() ? "" : ", over it: " + plies(over);
    }

    private static String where(Region region) {
        if (region instanceof Region.Around ring) {
            return "round: " + name(ring.opening()) + ", width: " + mm(ring.width());
        }
        if (region instanceof Region.AlongEdges band) {
            return "at: " + band.edges().get(0).words() + ", width: " + mm(band.width());
        }
        Region.Box box = (Region.Box) region;
        return "patch: "
                + mm(box.x2() - box.x1())
                + " x "
                + mm(box.y2() - box.y1())
                + ", centre: {from left: "
                + mm((box.x1() + box.x2()) / 2)
                + ", from front: "
                + mm((box.y1() + box.y2()) / 2)
                + "}";
    }

    private static String plies(List<Schedule.Item> plies) {
        return plies.isEmpty() ? "[]" : copies(plies.get(0), plies.size());
    }

    private static String copies(Schedule.Item ply, int count) {
        String cloth =
                ply instanceof Schedule.Wet wet
                        ? wet.cloth().name()
                        : ((Schedule.Given) ply).ply().name();
        return "[" + (count == 1 ? "" : count + " x ") + cloth + "]";
    }

    /** Returns a name, in quotes where YAML could take it for something else. */
    private static String name(String name) {
        return PLAIN.matcher(name).matches()
                ? name
                : '"' + name.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }

    private static String mm(double metres) {
        return Figures.METRIC.size(metres);
    }
}
