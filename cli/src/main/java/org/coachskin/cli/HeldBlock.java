package org.coachskin.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.coachskin.analysis.Held;
import org.coachskin.check.Verdict;
import org.coachskin.panel.Fitting;

/** What hinges, latches and rubber seals bear, on the first screen. */
final class HeldBlock {

    private HeldBlock() {}

    static void write(Page page, Verdict verdict, Figures figures) {
        if (verdict.held().stream().allMatch(h -> h.grips().isEmpty() && h.seals().isEmpty())) {
            return;
        }
        page.line("What holds it bears: the panel pulls it out or pushes it in");
        List<String> loads = verdict.job().loads().stream().map(load -> load.name()).toList();
        Map<String, String[]> rows = new LinkedHashMap<>();
        rows.put("", head(loads));
        for (int i = 0; i <= loads.size(); i++) {
            Held held = i == 0 ? verdict.atRest().get(0) : verdict.held().get(i - 1);
            for (Held.Grip grip : held.grips()) {
                if (grip.direction() == Fitting.Direction.Z) {
                    put(rows, grip.name(), loads.size(), i, outward(-grip.force(), figures));
                }
            }
            if (!held.seals().isEmpty()) {
                put(rows, "rubber seal, in all", loads.size(), i, figures.force(held.sealForce()));
                put(
                        rows,
                        "widest gap at it",
                        loads.size(),
                        i,
                        held.widestGap() == 0 ? "none" : figures.movement(held.widestGap()));
            }
        }
        Page.Table table = new Page.Table("l" + "r".repeat(loads.size() + 1));
        rows.forEach(
                (name, cells) -> {
                    String[] all = new String[cells.length + 1];
                    all[0] = name;
                    System.arraycopy(cells, 0, all, 1, cells.length);
                    table.row(all);
                });
        page.table(table);
        page.blank();
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
