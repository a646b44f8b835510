package org.coachskin.cli.report;

import java.util.List;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;

/** Where the layers of a stack lie in a drawing: skins magnified, foam cut short. */
final class Heights {

    /** Pixels per metre at true scale, by the pixel of style sheets: 96 an inch. */
    static final double TRUE = 96 / 0.0254;

    private static final List<Integer> TIMES = List.of(20, 15, 10, 5, 2, 1);

    private static final double MOST = 330;

    /** Height of foam in pixels. */
    private static final double FOAM = 44;

    private final Laminate laminate;
    private final int times;

    Heights(Laminate laminate) {
        this.laminate = laminate;
        int fitting = 1;
        for (int i = TIMES.size() - 1; i >= 0; i--) {
            if (skins() * TRUE * TIMES.get(i) < MOST) {
                fitting = TIMES.get(i);
            }
        }
        times = fitting;
    }

    private double skins() {
        return laminate.layers().stream()
                .filter(layer -> !isFoam(layer))
                .mapToDouble(Layer::thickness)
                .sum();
    }

    static boolean isFoam(Layer layer) {
        return layer instanceof Layer.Core;
    }

    /** Returns how many times thicker skins are drawn than they are. */
    int times() {
        return times;
    }

    /** Returns the height of one layer. */
    double height(Layer layer) {
        return isFoam(layer) ? FOAM : layer.thickness() * TRUE * times;
    }

    /** Returns the height of all. */
    double whole() {
        return laminate.layers().stream().mapToDouble(this::height).sum();
    }

    /** Returns how far the outer face of a layer lies below the outside surface. */
    double top(int layer) {
        double below = 0;
        for (int i = laminate.layers().size() - 1; i > layer; i--) {
            below += height(laminate.layers().get(i));
        }
        return below;
    }

    /** Returns how far a height lies below the outside surface, taken within one layer. */
    double below(int layer, double z) {
        Layer of = laminate.layers().get(layer);
        double share = (z - laminate.bottom(layer)) / of.thickness();
        return top(layer) + (1 - share) * height(of);
    }
}
