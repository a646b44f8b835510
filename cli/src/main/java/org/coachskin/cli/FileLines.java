package org.coachskin.cli;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.Foam;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Height;
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

    private static final Pattern PLAIN = Pattern.compile("(?:\\d+ x )?[A-Za-z][A-Za-z0-9 _/^.-]*");

    private static final int INDENT = 4;

    private FileLines() {}

    /** Returns the lines, keys of the file at the margin. */
    static List<String> of(Target target, Tried tried) {
        Measure measure = tried.measure();
        List<String> lines = new ArrayList<>();
        if (measure.build() instanceof Build.InLip && target instanceof Target.Lip lip) {
            lines.add(lip(Laying.recipes(tried.job().panel(), lip, measure).get(0)));
            return lines;
        }
        List<ZoneRecipe> recipes = Laying.recipes(tried.job().panel(), target, measure);
        if (!recipes.isEmpty()) {
            lines.add("zones:");
            if (measure.build() instanceof Build.Plies plies) {
                String skins =
                        (plies.inside() == 0
                                        ? ""
                                        : ", inside: " + plies(plies.ply(), plies.inside()))
                                + (plies.outside() == 0
                                        ? ""
                                        : ", outside: " + plies(plies.ply(), plies.outside()));
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

    /** Prints lines, broken after commas alone: within a key they could not be read. */
    static void print(List<String> lines, Page page) {
        for (String line : lines) {
            int indent = INDENT + line.length() - line.stripLeading().length();
            String whole = line.strip().replaceAll("(?<!,) ", "\u00a0");
            page.wrap(" ".repeat(indent), indent + INDENT, whole);
        }
    }

    private static String lip(ZoneRecipe recipe) {
        Region.AlongEdges band = (Region.AlongEdges) recipe.region();
        ZoneRecipe.NoFoam bare = (ZoneRecipe.NoFoam) recipe.build();
        List<String> edges = band.edges().stream().map(Edge::words).toList();
        return "lip: {width: "
                + mm(band.width())
                + (edges.size() == Edge.values().length
                        ? ""
                        : ", at: [" + String.join(", ", edges) + "]")
                + ", more plies: "
                + plies(bare.more())
                + (bare.flush() == Height.INSIDE ? ", flush: inside" : "")
                + "}";
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

    private static String plies(Schedule.Item ply, int count) {
        return plies(Collections.nCopies(count, ply));
    }

    private static String plies(List<Schedule.Item> plies) {
        List<String> words = new ArrayList<>();
        int to;
        for (int from = 0; from < plies.size(); from = to) {
            to = from + 1;
            while (to < plies.size() && plies.get(to).equals(plies.get(from))) {
                to++;
            }
            words.add(ply(plies.get(from), to - from));
        }
        return "[" + String.join(", ", words) + "]";
    }

    private static String ply(Schedule.Item ply, int count) {
        String cloth =
                ply instanceof Schedule.Wet wet
                        ? wet.cloth().name()
                        : ((Schedule.Given) ply).ply().name();
        String laid = name((count == 1 ? "" : count + " x ") + cloth);
        String angle = Figures.decimals(StrictMath.toDegrees(ply.angle()), 2);
        return angle.equals("0") ? laid : "{cloth: " + laid + ", angle: " + angle + " deg}";
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
