package org.coachskin.check;

import java.util.IdentityHashMap;
import java.util.List;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Zone;

/** The stacks of a panel, each worked out once. */
final class Stacks {

    private final Panel panel;
    private final Stack plain;
    private final IdentityHashMap<Zone, Stack> zones = new IdentityHashMap<>();

    /** Where the inside skin turns over a bevel. */
    final List<StripEdges.Side> edges;

    Stacks(Panel panel) {
        this.panel = panel;
        plain = new Stack(panel.laminate());
        edges = StripEdges.of(panel);
        for (Zone zone : panel.zones()) {
            zones.put(zone, new Stack(zone.laminate()));
        }
    }

    /** Returns the stack at a place. */
    Stack at(double x, double y) {
        return panel.zones().isEmpty()
                ? plain
                : panel.zoneAt(x, y).map(zone -> zones.getOrDefault(zone, plain)).orElse(plain);
    }
}
