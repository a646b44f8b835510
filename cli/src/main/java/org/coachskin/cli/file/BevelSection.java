package org.coachskin.cli.file;

import java.util.LinkedHashMap;
import java.util.Map;
import org.coachskin.panel.Bevels;
import org.coachskin.panel.Panel;
import org.snakeyaml.engine.v2.nodes.Node;

/** Bevels that are written in the file, to see that each finds room on the panel. */
final class BevelSection {

    private final Findings findings;

    /** Where each is written, by the number of its zone. */
    private final Map<Integer, Node> written = new LinkedHashMap<>();

    BevelSection(Findings findings) {
        this.findings = findings;
    }

    void add(int zone, Node key) {
        written.put(zone, key);
    }

    /** Notes what runs over the rim, into an opening or onto a part without foam. */
    void check(Panel panel) {
        written.forEach(
                (zone, key) ->
                        Bevels.cut(panel, panel.zones().get(zone)).ifPresent(cut -> add(key, cut)));
    }

    private void add(Node key, Bevels.Cut cut) {
        // Hand work goes by whole millimetres.
        double room = Math.floor(1000 * cut.room() + 1e-3) / 1000;
        double least = cut.bevel().step();
        String before = cut.before();
        findings.add(
                key,
                "The bevel slopes over "
                        + Side.mm(cut.bevel().reach())
                        + "; from the strip to "
                        + before
                        + " there are "
                        + Side.mm(room)
                        + ".",
                room >= least
                        ? "Write   bevel: " + Side.mm(room) + "   or less"
                        : "Let the strip end "
                                + Side.mm(least)
                                + " or more before "
                                + before
                                + ", or go on to "
                                + before);
    }
}
