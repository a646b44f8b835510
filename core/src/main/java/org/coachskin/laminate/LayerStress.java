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
            all.add(
                    of(
                            i,
                            layer,
                            low,
                            high,
                            layer.expansion().times(rise.applyAsDouble(bottom)),
                            layer.expansion().times(rise.applyAsDouble(top))));
            bottom = top;
        }
        return List.copyOf(all);
    }

    /**
     * Returns what one layer carries in plane stress.
     *
     * @param index of the layer, counted from the inside surface
     * @param strainInner total strain at its inner face, panel axes [-]
     * @param strainOuter total strain at its outer face [-]
     * @param freeInner strain at its inner face that raises no stress [-]
     * @param freeOuter strain at its outer face that raises no stress [-]
     */
    public static LayerStress of(
            int index,
            Layer layer,
            Triple strainInner,
            Triple strainOuter,
            Triple freeInner,
            Triple freeOuter) {
        Triple inner = layer.stiffness().times(strainInner.plus(freeInner, -1));
        Triple outer = layer.stiffness().times(strainOuter.plus(freeOuter, -1));
        return new LayerStress(
                index,
                strainInner,
                strainOuter,
                inner,
                outer,
                ownAxes(layer, inner),
                ownAxes(layer, outer));
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
