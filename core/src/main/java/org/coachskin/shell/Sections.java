package org.coachskin.shell;

import java.util.HashMap;
import java.util.Map;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Zone;

/** Which stack each triangle has: that of the zone named last that holds its middle. */
final class Sections {

    private Sections() {}

    static Section[] of(Panel panel, Grid grid, boolean firstOrder) {
        Section plain = new Section(panel.laminate(), 0, panel.crown(), firstOrder);
        Map<Zone, Section> known = new HashMap<>();
        Section[] sections = new Section[grid.triangles()];
        for (int t = 0; t < sections.length; t++) {
            double[] c = grid.centre(t);
            sections[t] =
                    panel.zoneAt(c[0], c[1])
                            .map(
                                    zone ->
                                            known.computeIfAbsent(
                                                    zone,
                                                    z ->
                                                            new Section(
                                                                    z.laminate(),
                                                                    z.depth(),
                                                                    panel.crown(),
                                                                    firstOrder)))
                            .orElse(plain);
        }
        return sections;
    }
}
