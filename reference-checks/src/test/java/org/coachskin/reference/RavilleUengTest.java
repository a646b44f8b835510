package org.coachskin.reference;

import java.util.List;
import org.coachskin.harmonic.WaveSystem;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Ply;
import org.coachskin.laminate.Sym2;

class RavilleUengTest extends PlateTable {

    RavilleUengTest() {
        super("raville-ueng-1967");
        double face = 0.4064e-3;
        double core = 6.35e-3;
        double d = face + core;
        Laminate laminate = new Laminate(List.of(skin(face), soft(core), skin(face)));
        Sym2 h = new Sym2(134.45e6 * d * d / core, 0, 51.71e6 * d * d / core);
        WaveSystem system = WaveSystem.firstOrder(laminate, h, 0, 0);
        for (int m = 1; m <= 4; m++) {
            for (int n = 1; n <= 3; n++) {
                double omega = omega(system, m * Math.PI / 1.83, n * Math.PI / 1.22);
                put(m + " " + n, omega / (2 * Math.PI));
                if (m + n > 3 || n == 2) {
                    differs(
                            m + " " + n,
                            solid(m * Math.PI / 1.83, n * Math.PI / 1.22),
                            "3-D elasticity of faces and core gives ours; the print is high.");
                }
            }
        }
    }

    /** Frequency by 3-D elasticity: stiffness of one wave over the mass of the panel [Hz]. */
    private static double solid(double alpha, double beta) {
        double t = 0.4064e-3;
        double c = 6.35e-3;
        double e = 68.98e9;
        double g = e / 2.6;
        Elasticity3d.Solid face = Elasticity3d.Solid.of(t, e, e, e, 0.3, 0.3, 0.3, g, g, g);
        Elasticity3d.Solid core =
                Elasticity3d.Solid.of(c, 1e3, 1e3, 1e10, 0, 0, 0, 1e3, 134.45e6, 51.71e6);
        double w =
                new Elasticity3d(List.of(face, core, face)).wave(alpha, beta).last(Elasticity3d.W);
        return Math.sqrt(1 / (w * (2 * t * 2768 + c * 121.83))) / (2 * Math.PI);
    }

    private static Layer skin(double t) {
        double g = 68.98e9 / 2.6;
        return layer(68.98e9, 0.3, g, t, 2768);
    }

    private static Layer soft(double t) {
        return layer(1, 0, 1, t, 121.83);
    }

    private static Layer layer(double e, double nu, double g, double t, double density) {
        Ply of = StackTable.ply(e, e, nu, g, g, g, t, 0, 0);
        return new Layer.Laid(
                new Ply(of.name(), e, e, nu, g, g, g, t, density, 0, 0, of.strength(), of.source()),
                0);
    }

    @Override
    String title() {
        return "Natural frequencies of a honeycomb panel, first-order theory with S = G d^2/t";
    }
}
