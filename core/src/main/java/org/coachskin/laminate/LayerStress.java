package org.coachskin.laminate;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Strain and stress at both faces of one layer.
 *
 * @param layer index of the layer, counted from the inside surface
 * @param strainInner total strain at its inner face, panel axes [-]
 * @param strainOuter total strain at its outer face, panel axes [-]
 * @param panelInner stress at its inner face, panel axes [Pa]
 * @param panelOuter stress at its outer face, panel axes [Pa]
 * @param inner stress at its inner face in the layer's own axes; those of the panel for foam and
 *     seal coat
 * @param outer stress at its outer face in the layer's own axes
 */
public record LayerStress(
        int layer,
        Triple strainInner,
        Triple strainOuter,
        Triple panelInner,
        Triple panelOuter,
        PlyStress inner,
        PlyStress outer) {

    /** Returns what every layer carries under {@code state}, inside to outside. */
    public static List<LayerStress> of(Laminate laminate, SectionState state) {
        return of(laminate, state, z -> 0);
    }

    /**
     * Returns what every layer carries by itself in a free stack that is warmed, inside to outside:
     * the standing stress, which no load multiplies.
     */
    public static List<LayerStress> of(Laminate laminate, ThermalState warm) {
        SectionState free =
                new SectionState(warm.membrane(), warm.curvature(), warm.curvature(), 0, 0, 0, 0);
        return of(laminate, free, warm::rise);
    }

    private static List<LayerStress> of(
            Laminate laminate, SectionState state, DoubleUnaryOperator rise) {
        LayeredStiffness stiffness = LayeredStiffness.of(laminate);
        List<LayerStress> all = new ArrayList<>();
        double bottom = -laminate.thickness() / 2;
        for (int i = 0; i < laminate.layers().size(); i++) {
            Layer layer = laminate.layers().get(i);
            double top = bottom + layer.thickness();
            Triple low = state.strainAt(stiffness, bottom);
            Triple high = state.strainAt(stiffness, top);
            Triple inner = stress(layer, low, rise.applyAsDouble(bottom));
            Triple outer = stress(layer, high, rise.applyAsDouble(top));
            all.add(
                    new LayerStress(
                            i,
                            low,
                            high,
                            inner,
                            outer,
                            ownAxes(layer, inner),
                            ownAxes(layer, outer)));
            bottom = top;
        }
        return List.copyOf(all);
    }

    private static Triple stress(Layer layer, Triple strain, double rise) {
        return layer.stiffness().times(strain.plus(layer.expansion(), -rise));
    }

    private static PlyStress ownAxes(Layer layer, Triple stress) {
        double angle = layer instanceof Layer.Laid laid ? laid.angle() : 0;
        double c = StrictMath.cos(angle);
        double s = StrictMath.sin(angle);
        return new PlyStress(
                stress.x() * c * c + stress.y() * s * s + 2 * stress.xy() * c * s,
                stress.x() * s * s + stress.y() * c * c - 2 * stress.xy() * c * s,
                (stress.y() - stress.x()) * c * s + stress.xy() * (c * c - s * s));
    }
}
