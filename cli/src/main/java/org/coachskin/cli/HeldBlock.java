package org.coachskin.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.coachskin.analysis.Held;
import org.coachskin.check.Verdict;
import org.coachskin.panel.Fitting;

/** What hinges, latches and rubber seals bear, on the first screen. */
final class HeldBlock {

    /** Load cases side by side. */
    private static final int ABREAST = 4;

    private HeldBlock() {}

    static void write(Page page, Verdict verdict, Figures figures) {
        if (!bears(verdict)) {
            return;
        }
        page.line("What holds it bears: the panel pulls it out or pushes it in");
        int count = verdict.held().size();
        for (int from = 0; from < count; from += ABREAST) {
            int to = Math.min(count, from + ABREAST);
            Page.Table table = new Page.Table("l" + "r".repeat(to - from + 1));
            rows(verdict, figures, from, to).forEach(table::row);
            page.table(table);
        }
        page.blank();
    }

    /** Returns whether anything but held edges holds the panel. */
    static boolean bears(Verdict verdict) {
        return verdict.held().stream().anyMatch(h -> !h.grips().isEmpty() || !h.seals().isEmpty());
    }

    /** Returns what is borne at rest and under some of the load cases, row by row, with a head. */
    static List<List<String>> rows(Verdict verdict, Figures figures, int from, int to) {
        List<String> loads =
                verdict.job().loads().subList(from, to).stream().map(load -> load.name()).toList();
        Map<String, String[]> rows = new LinkedHashMap<>();
        rows.put("", head(loads));
        for (int i = 0; i <= loads.size(); i++) {
            Held held = i == 0 ? verdict.atRest().get(0) : verdict.held().get(from + i - 1);
            for (Held.Grip grip : held.grips()) {
                if (grip.direction() == Fitting.Direction.Z) {
                    put(rows, grip.name(), loads.size(), i, outward(-grip.force(), figures));
                }
            }
            if (!held.seals().isEmpty()) {
                String force = figures.force(held.sealForce());
                put(rows, "rubber seal, in all", loads.size(), i, force);
                double gap = held.widestGap();
                String shown = gap == 0 ? "none" : figures.movement(gap);
                put(rows, "widest gap at it", loads.size(), i, shown);
            }
        }
        List<List<String>> out = new ArrayList<>();
        rows.forEach(
                (name, cells) -> {
                    List<String> row = new ArrayList<>(List.of(name));
                    row.addAll(Arrays.asList(cells));
                    out.add(row);
                });
        return out;
    }

    private static String[] head(List<String> loads) {
        String[] head = new String[loads.size() + 1];
        head[0] = "at rest";
        for (int i = 0; i < loads.size(); i++) {
            head[i + 1] = loads.get(i);
        }
        return head;
    }

    private static void put(
            Map<String, String[]> rows, String name, int loads, int column, String cell) {
        rows.computeIfAbsent(name, n -> new String[loads + 1])[column] = cell;
    }

    /** The panel's pull on a fitting. */
    private static String outward(double pull, Figures figures) {
        return figures.force(Math.abs(pull)) + (pull > 0 ? " out" : " in");
    }
}
