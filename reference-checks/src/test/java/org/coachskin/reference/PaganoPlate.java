package org.coachskin.reference;

import java.util.List;

/** Pagano's exact plates, of total thickness 1: the witness against its own literature. */
abstract class PaganoPlate extends PublishedTable {

    static final String CHAPTER = "3-D elasticity, against which the plate theories are checked";

    static final Elasticity3d.Solid ALONG = face(1, 0);

    static final Elasticity3d.Solid ACROSS = face(1, 1);

    /** Graphite ply of Pagano's papers, relative to E2. */
    static Elasticity3d.Solid face(double t, int turned) {
        return turned == 0
                ? Elasticity3d.Solid.of(t, 25, 1, 1, 0.25, 0.25, 0.25, 0.5, 0.5, 0.2)
                : Elasticity3d.Solid.of(t, 1, 25, 1, 0.25 / 25, 0.25, 0.25, 0.5, 0.2, 0.5);
    }

    static Elasticity3d.Solid core(double t) {
        // nu_zx = 0.25 with Ez = 0.5: nu_xz = 0.25 x 0.04/0.5.
        return Elasticity3d.Solid.of(t, 0.04, 0.04, 0.5, 0.25, 0.02, 0.02, 0.016, 0.06, 0.06);
    }

    static Elasticity3d.Solid thick(Elasticity3d.Solid s, double t) {
        return new Elasticity3d.Solid(
                t, s.c11(), s.c12(), s.c13(), s.c22(), s.c23(), s.c33(), s.c44(), s.c55(), s.c66());
    }

    private final List<Elasticity3d.Solid> layers;

    PaganoPlate(String file, List<Elasticity3d.Solid> layers) {
        super("elasticity/" + file);
        this.layers = layers;
    }

    @Override
    String chapter() {
        return CHAPTER;
    }

    @Override
    double ours(String quantity) {
        int space = quantity.indexOf(" S=");
        double s = Double.parseDouble(quantity.substring(space + 3));
        String name = quantity.substring(0, space);
        double k = Math.PI / s;
        Elasticity3d.Wave wave = new Elasticity3d(layers).wave(k, k);
        double[] middle = at(wave, 0.5, false);
        double square = s * s;
        return switch (name) {
            case "w" -> 100 * middle[Elasticity3d.W] / (square * square);
            case "txz" -> middle[Elasticity3d.TXZ] / s;
            case "tyz" -> middle[Elasticity3d.TYZ] / s;
            case "sx", "sx_top" -> wave.last(Elasticity3d.SX) / square;
            case "sx_bot" -> wave.first(Elasticity3d.SX) / square;
            case "sy_top" -> wave.last(Elasticity3d.SY) / square;
            case "txy", "txy_top" -> wave.last(Elasticity3d.TXY) / square;
            case "txy_bot" -> wave.first(Elasticity3d.TXY) / square;
            case "sy" -> at(wave, 2.0 / 3, false)[Elasticity3d.SY] / square;
            case "sy(+h/4)" -> at(wave, 0.75, false)[Elasticity3d.SY] / square;
            case "sy(-h/4)" -> at(wave, 0.25, true)[Elasticity3d.SY] / square;
            case "sx_face_inner_top" -> at(wave, 0.9, true)[Elasticity3d.SX] / square;
            default -> throw new IllegalArgumentException(quantity);
        };
    }

    /** The node at height z; at an interface the one above or below it. */
    private static double[] at(Elasticity3d.Wave wave, double z, boolean above) {
        double[] found = wave.nodes.get(0);
        for (double[] node : wave.nodes) {
            double gap = Math.abs(node[Elasticity3d.Z] - z);
            double best = Math.abs(found[Elasticity3d.Z] - z);
            if (gap < best - 1e-12 || (above && gap < best + 1e-12)) {
                found = node;
            }
        }
        return found;
    }
}
