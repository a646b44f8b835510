package org.coachskin.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.coachskin.laminate.LayerStress;
import org.coachskin.series.FoamStress;
import org.coachskin.series.FullLayeredSection;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the full layered theory gives by itself, foam stress included, against 3-D elasticity. */
class FullLayeredElasticityTest {

    private static final int WAVES = 121;

    static List<PatchedPanel> panels() {
        return List.of(
                new PatchedPanel(2, 0.012, 1, 12e6, 4.2e6, 0.3, 0.1),
                new PatchedPanel(3, 0.012, 3, 4e6, 1.5e6, 0.3, 0.06));
    }

    @ParameterizedTest
    @MethodSource("panels")
    void deflectionDentAndSkinStressUnderThePatch(PatchedPanel panel) {
        PatchedPanel.Figures want = panel.exact(WAVES);
        FullLayeredSection at = panel.fullLayered(0);
        List<LayerStress> skins = at.skins();
        double outer = skins.get(skins.size() - 1).panelOuter().x();
        double inner = skins.get(0).panelInner().x();
        assertEquals(want.deflection(), at.deflection(), 0.01 * want.deflection());
        assertEquals(want.dent(), at.dent(), 0.02 * want.dent());
        assertEquals(want.outer(), outer, 0.02 * Math.abs(want.outer()));
        assertEquals(want.inner(), inner, 0.02 * Math.abs(want.inner()));
    }

    @ParameterizedTest
    @MethodSource("panels")
    void foamStressUnderThePatchAndAtItsEdge(PatchedPanel panel) {
        double z = panel.laminate().bottom(panel.inside()) + panel.foam() / 2;
        double[] under = panel.exactFoam(0, WAVES);
        FoamStress ours = panel.fullLayered(0).foam(z);
        assertEquals(under[0], ours.x(), 0.02 * Math.abs(under[1]));
        assertEquals(under[1], ours.z(), 0.02 * Math.abs(under[1]));
        double[] edge = panel.exactFoam(panel.patch() / 2, WAVES);
        assertEquals(
                edge[2],
                panel.fullLayered(panel.patch() / 2).foam(z).xz(),
                0.02 * Math.abs(edge[2]));
    }
}
