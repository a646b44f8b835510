package org.coachskin.series;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.harmonic.Theory;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.panel.Load;
import org.coachskin.panel.Panel;

/**
 * A rectangular panel carried along its whole rim, by sine series in full layered theory: each skin
 * a plate of its own, the foam a solid between them whose three displacements are cubic through its
 * thickness. It answers what the layered theory of {@link SeriesAnalysis} cannot: the dent, how the
 * skins bend by themselves beside a patch, and the stress of the foam at every height. Under
 * patches of 30 to 100 mm on 12 mm of foam, deflection, dent, skin stress and the foam's stress at
 * mid-height are within 1 % of 3-D elasticity (a test); where the theory stops being good stands in
 * EVIDENCE.md by class: beside a patch narrower than two and a half times the foam's thickness the
 * largest skin stress falls below it.
 *
 * <p><b>Rim.</b> Along every edge, at every height, the deflection and the displacement along the
 * edge are zero, that at right angles to it is free.
 *
 * <p><b>Loads.</b> A patch presses on the outside surface; so do a pressure and, as one, the
 * panel's own weight. Heat acts through the free bow of the stack; what it leaves in a free stack
 * ({@code LayerStress.of} of a {@code ThermalState}) is not in the answer.
 *
 * <p><b>Accuracy.</b> As {@link SeriesAnalysis}: 1e-6 relative to the larger of a figure's own
 * value and a thousandth of that field's largest, except within one panel thickness of the corners
 * of a patch. A stress of the foam at every height is one field.
 *
 * <p><b>Limits.</b> Linear, shallow crown; each skin by itself must not couple bending and twisting
 * (cloth square to the edges). Skins do not change in thickness. In a bare laminate it is
 * first-order theory.
 *
 * <p>Immutable; safe to share between threads. So are its responses.
 */
public final class FullLayeredAnalysis {

    /**
     * Returns what {@code panel} does under several load cases, one response a case.
     *
     * @param cases loads that act together, case by case; a case may be empty
     * @throws org.coachskin.NoAnswerException when cloth lies at an angle that nothing in its own
     *     skin balances
     * @throws IllegalArgumentException when a patch reaches over the edge
     */
    public List<FullLayeredResponse> cases(Panel panel, List<List<Load>> cases) {
        refuseCoupled(panel.laminate());
        List<FullLayeredResponse> responses = new ArrayList<>();
        for (SeriesSum sum : SeriesSum.ofCases(Theory.FULL_LAYERED, panel, cases)) {
            responses.add(new FullLayeredResponse(sum));
        }
        return responses;
    }

    /** Returns what {@code panel} does under {@code loads} acting together. */
    public FullLayeredResponse statics(Panel panel, List<Load> loads) {
        return cases(panel, List.of(loads)).get(0);
    }

    /**
     * Returns the lowest natural frequency [Hz].
     *
     * @throws org.coachskin.NoAnswerException as {@link #cases}
     */
    public double frequency(Panel panel) {
        refuseCoupled(panel.laminate());
        return new Frequencies(Theory.FULL_LAYERED, panel).lowest();
    }

    /** The two skins may balance one another in the whole stack and yet each twist by itself. */
    private static void refuseCoupled(Laminate laminate) {
        SeriesAnalysis.refuseCoupled(laminate);
        List<Layer> skin = new ArrayList<>();
        for (Layer layer : laminate.layers()) {
            if (layer.inSkin()) {
                skin.add(layer);
            } else {
                refuseCoupledSkin(skin);
                skin.clear();
            }
        }
        refuseCoupledSkin(skin);
    }

    private static void refuseCoupledSkin(List<Layer> skin) {
        if (!skin.isEmpty()) {
            SeriesAnalysis.refuseCoupled(new Laminate(skin));
        }
    }
}
