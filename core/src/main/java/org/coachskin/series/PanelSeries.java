package org.coachskin.series;

import org.coachskin.harmonic.SingleSeries;
import org.coachskin.harmonic.Theory;
import org.coachskin.harmonic.WaveSystem;
import org.coachskin.laminate.Triple;
import org.coachskin.panel.Panel;

/** The two series of a panel, one along each side, for pressure or for a free bow. */
final class PanelSeries {

    final SingleSeries alongX;
    final SingleSeries alongY;

    PanelSeries(Theory theory, Panel panel, Triple bow) {
        boolean isBow = !bow.equals(Triple.ZERO);
        double a = panel.width();
        double b = panel.length();
        alongX =
                new SingleSeries(
                        system(theory, panel, bow, false), a, b, isBow, SingleSeries.EXACT);
        alongY =
                new SingleSeries(system(theory, panel, bow, true), b, a, isBow, SingleSeries.EXACT);
    }

    private static WaveSystem system(Theory theory, Panel panel, Triple bow, boolean exchanged) {
        return WaveSystem.of(
                theory,
                panel.laminate(),
                panel.crown().across(),
                panel.crown().along(),
                bow,
                exchanged);
    }
}
