package org.coachskin.cli.file;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.coachskin.laminate.Ply;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.Cloth;
import org.coachskin.material.MaterialLibrary;
import org.coachskin.units.Dimension;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** Plies by the names of cloths, in the order of laying. */
final class PlyList {

    static final List<String> PLY = List.of("cloth", "ply", "angle");

    /** Plies in one line of a file. */
    private static final int MOST = 40;

    private static final Pattern COUNT = Pattern.compile("^(\\d+)\\s*[x\u00d7]\\s+(.*)$");

    private final Findings findings;
    private final MaterialSection materials;
    private final MaterialLibrary library;
    private final List<PanelFile.Assumption> assumptions;

    PlyList(Findings findings, MaterialSection materials, List<PanelFile.Assumption> assumptions) {
        this.findings = findings;
        this.materials = materials;
        this.library = materials.library();
        this.assumptions = assumptions;
    }

    /** Plies of one face, with those that a variant adds. */
    List<Schedule.Item> face(Section keys, String face) {
        List<Schedule.Item> items = new ArrayList<>();
        for (String key : List.of(face, face + " add")) {
            items.addAll(read(keys, key, "none"));
        }
        return items;
    }

    /**
     * Plies under one key, in the order of laying.
     *
     * @param none the word that says there are none
     */
    List<Schedule.Item> read(Section keys, String key, String none) {
        if (keys.node(key).filter(node -> says(node, none)).isPresent()) {
            return List.of();
        }
        if (keys.has(key) && keys.list(key).stream().allMatch(Yaml::isNothing)) {
            findings.add(
                    keys.keyNode(key),
                    "The skin is empty.",
                    "Write   " + key + ": [twill glass 300 g/m^2]   or   " + key + ": " + none);
            return List.of();
        }
        List<Schedule.Item> items = new ArrayList<>();
        keys.list(key).forEach(node -> items.addAll(items(node, keys, key)));
        return items;
    }

    private static boolean says(Node node, String word) {
        return node instanceof ScalarNode scalar && scalar.getValue().strip().equals(word);
    }

    private List<Schedule.Item> items(Node node, Section section, String face) {
        double angle = 0;
        Node name = node;
        if (node instanceof MappingNode map) {
            Section keys = new Section(findings, map).allowing(PLY);
            Optional<Node> given = keys.node("cloth").or(() -> keys.node("ply"));
            if (given.isEmpty()) {
                findings.add(
                        node,
                        "The cloth of this ply is missing.",
                        "Write   {cloth: twill glass 300 g/m^2, angle: 45 deg}");
                return List.of();
            }
            name = given.get();
            angle = keys.quantity("angle", Dimension.ANGLE, -2 * Math.PI, 2 * Math.PI).orElse(0);
        }
        Optional<String> text = section.scalar(name, face);
        return text.isEmpty() ? List.of() : items(name, text.get(), angle);
    }

    private List<Schedule.Item> items(Node node, String text, double angle) {
        Matcher counted = COUNT.matcher(text);
        int count = 1;
        String name = text;
        if (counted.matches()) {
            count = counted.group(1).length() > 3 ? MOST + 1 : Integer.parseInt(counted.group(1));
            name = counted.group(2);
            if (count < 1 || count > MOST) {
                findings.add(
                        node,
                        "From 1 to " + MOST + " plies can be laid by hand.",
                        "Write   2 x " + name);
                return List.of();
            }
        }
        Optional<Ply> ply = materials.ply(name);
        if (ply.isPresent()) {
            return Collections.nCopies(count, new Schedule.Given(ply.get(), angle));
        }
        Optional<Cloth> cloth = cloth(name);
        if (cloth.isEmpty()) {
            findings.add(
                    node,
                    "No cloth of that name is known.",
                    "Write   "
                            + SoldCloth.nearest(library, name)
                            + (SoldCloth.of(name).filter(SoldCloth::isMatByTheYard).isPresent()
                                    ? "\nMat is sold by the square foot: is   oz/ft^2   meant?"
                                    : "")
                            + "\nOr give your own under  my cloths.  List:  coachskin materials cloth");
            return List.of();
        }
        return Collections.nCopies(count, new Schedule.Wet(cloth.get(), angle));
    }

    /** Returns the cloth of that name, or one whose name says the same, and notes that. */
    private Optional<Cloth> cloth(String name) {
        Optional<Cloth> named = library.cloth(name);
        if (named.isPresent()) {
            return named;
        }
        Optional<Cloth> cloth = SoldCloth.of(name).flatMap(sold -> sold.in(library));
        cloth.ifPresent(
                each ->
                        assumptions.add(
                                new PanelFile.Assumption(
                                        "cloth", "\"" + name + "\" is " + each.name())));
        return cloth;
    }
}
