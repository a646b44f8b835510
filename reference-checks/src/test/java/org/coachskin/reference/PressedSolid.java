package org.coachskin.reference;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.special.BesselJ;

/**
 * One panel under several patches, one at a time, by 3-D elasticity: the waves are solved once and
 * summed for each patch at places under it, beside it and off its corners.
 *
 * <p>Waves shorter than {@code shortest} are left out and those up to twice as long faded, so no
 * step of the load rings.
 */
final class PressedSolid {

    /** Heights in the foam at which its shear is looked at, ends included. */
    private static final int HEIGHTS = 17;

    /** Places on a half axis, as shares of the half side. */
    private static final double[] UNDER = {0, 0.2, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1};

    /** And beside it, in thicknesses from the edge. */
    private static final double[] BESIDE = {0.06, 0.125, 0.25, 0.5, 1, 2};

    private static final int SKIN = 4;

    private final SweepCase.Shape shape;
    private final Elasticity3d solid;
    private final double[] skinHeights;
    private final double[] foamHeights;
    private final double total;

    PressedSolid(SweepCase.Shape shape) {
        this.shape = shape;
        List<Elasticity3d.Solid> layers = shape.solids();
        solid =
                new Elasticity3d(
                        layers,
                        shape.radiusX() == 0 ? 0 : 1 / shape.radiusX(),
                        shape.radiusY() == 0 ? 0 : 1 / shape.radiusY());
        total = layers.stream().mapToDouble(Elasticity3d.Solid::t).sum();
        double inner = shape.inside() > 0 ? layers.get(0).t() : 0;
        double outer =
                shape.outside() > 0 && shape.foam() > 0 ? layers.get(layers.size() - 1).t() : 0;
        // Just inside each skin: outside surface, foam face, foam face, inside surface.
        double hair = 1e-7 * total;
        skinHeights = new double[] {total, total - outer + hair, inner, 0};
        foamHeights = new double[shape.foam() > 0 ? HEIGHTS : 0];
        for (int k = 0; k < foamHeights.length; k++) {
            foamHeights[k] = inner + hair + (shape.foam() - 2 * hair) * k / (HEIGHTS - 1);
        }
    }

    /** One wave where it is looked at: w outside and inside, sx sy txy, txz tyz by height. */
    private static final class Sample {
        final double[] w;
        final double[][] skin;
        final double[][] foam;

        Sample(double[] w, double[][] skin, double[][] foam) {
            this.w = w;
            this.skin = skin;
            this.foam = foam;
        }

        Sample turned() {
            double[][] s = new double[skin.length][];
            for (int i = 0; i < s.length; i++) {
                s[i] = new double[] {skin[i][1], skin[i][0], skin[i][2]};
            }
            double[][] f = new double[foam.length][];
            for (int i = 0; i < f.length; i++) {
                f[i] = new double[] {foam[i][1], foam[i][0]};
            }
            return new Sample(w, s, f);
        }
    }

    private Sample sample(double alpha, double beta) {
        Elasticity3d.Wave wave = solid.wave(alpha, beta);
        double[][] skin = new double[SKIN][];
        for (int i = 0; i < SKIN; i++) {
            double[] at = wave.at(skinHeights[i]);
            skin[i] = new double[] {at[Elasticity3d.SX], at[Elasticity3d.SY], at[Elasticity3d.TXY]};
        }
        double[][] foam = new double[foamHeights.length][];
        for (int i = 0; i < foam.length; i++) {
            double[] at = wave.at(foamHeights[i]);
            foam[i] = new double[] {at[Elasticity3d.TXZ], at[Elasticity3d.TYZ]};
        }
        return new Sample(
                new double[] {wave.last(Elasticity3d.W), wave.first(Elasticity3d.W)}, skin, foam);
    }

    /** A patch with its places and what is summed there. */
    private final class Sum {
        final SweepCase load;
        final List<double[]> places = new ArrayList<>();
        final double[][] sx;
        final double[][] cx;
        final double[][] sy;
        final double[][] cy;
        final double[][][] skin;
        final double[][][] foam;
        final double[] w = new double[2];

        Sum(SweepCase load, double longest) {
            this.load = load;
            boolean quarter = load.isCentred();
            for (int turn = 0; turn < (quarter ? shape.isSquare() ? 1 : 2 : 4); turn++) {
                addRay(turn % 2 == 0 ? 1 : 0, turn % 2 == 0 ? 0 : 1, turn < 2 ? 1 : -1);
            }
            for (int turn = 0; turn < (quarter ? 1 : 4); turn++) {
                addRay(turn % 2 == 0 ? 1 : -1, 1, turn < 2 ? 1 : -1);
            }
            int mx = (int) (longest * shape.width() / Math.PI);
            int my = (int) (longest * shape.length() / Math.PI);
            sx = table(mx, Math.PI / shape.width(), 0, true);
            cx = table(mx, Math.PI / shape.width(), 0, false);
            sy = table(my, Math.PI / shape.length(), 1, true);
            cy = table(my, Math.PI / shape.length(), 1, false);
            skin = new double[places.size()][SKIN][3];
            foam = new double[places.size()][foamHeights.length][2];
        }

        private void addRay(int dx, int dy, int sign) {
            double half = load.disc() ? load.patch() / 2 : load.half();
            // Off a disc the diagonal is a radius like any other.
            double diagonal = load.disc() && dx * dy != 0 ? Math.sqrt(0.5) : 1;
            List<Double> offsets = new ArrayList<>();
            for (double share : UNDER) {
                offsets.add(diagonal * share * half);
            }
            for (double share : BESIDE) {
                offsets.add(diagonal * half + share * total);
            }
            for (double off : offsets) {
                double x = load.x() + sign * dx * off;
                double y = load.y() + sign * dy * off;
                if (x > 0 && y > 0 && x < shape.width() && y < shape.length()) {
                    places.add(new double[] {x, y});
                }
            }
        }

        private double[][] table(int waves, double k, int axis, boolean sine) {
            double[][] table = new double[waves + 1][places.size()];
            for (int m = 0; m <= waves; m++) {
                for (int p = 0; p < places.size(); p++) {
                    double phase = m * k * places.get(p)[axis];
                    table[m][p] = sine ? Math.sin(phase) : Math.cos(phase);
                }
            }
            return table;
        }

        void add(int m, int n, double fade, Sample s) {
            double alpha = m * Math.PI / shape.width();
            double beta = n * Math.PI / shape.length();
            double spread =
                    load.disc()
                            ? bessel(Math.hypot(alpha, beta) * load.patch() / 2)
                            : sinc(alpha * load.half()) * sinc(beta * load.half());
            double here = Math.sin(alpha * load.x()) * Math.sin(beta * load.y());
            double q =
                    4 * SweepCase.FORCE / (shape.width() * shape.length()) * spread * here * fade;
            w[0] += q * here * s.w[0];
            w[1] += q * here * s.w[1];
            for (int p = 0; p < places.size(); p++) {
                double ss = q * sx[m][p] * sy[n][p];
                double cc = q * cx[m][p] * cy[n][p];
                double cs = q * cx[m][p] * sy[n][p];
                double sc = q * sx[m][p] * cy[n][p];
                for (int i = 0; i < SKIN; i++) {
                    skin[p][i][0] += ss * s.skin[i][0];
                    skin[p][i][1] += ss * s.skin[i][1];
                    skin[p][i][2] += cc * s.skin[i][2];
                }
                for (int i = 0; i < foamHeights.length; i++) {
                    foam[p][i][0] += cs * s.foam[i][0];
                    foam[p][i][1] += sc * s.foam[i][1];
                }
            }
        }

        SweepFigures figures() {
            double[] direct = new double[SKIN];
            double sheared = 0;
            double core = 0;
            for (int p = 0; p < places.size(); p++) {
                for (int i = 0; i < SKIN; i++) {
                    if (hasSkin(i)) {
                        double[] s = skin[p][i];
                        direct[i] = Math.max(direct[i], Math.max(Math.abs(s[0]), Math.abs(s[1])));
                        sheared = Math.max(sheared, Math.abs(s[2]));
                    }
                }
                for (double[] t : foam[p]) {
                    core = Math.max(core, Math.hypot(t[0], t[1]));
                }
            }
            // The load of a wave is outward, the force inward.
            return new SweepFigures(
                    (w[0] + w[1]) / 2,
                    w[0],
                    hasSkin(0) ? -skin[0][0][0] : 0,
                    hasSkin(3) ? -skin[0][3][0] : 0,
                    Math.max(direct[0], direct[1]),
                    Math.max(direct[2], direct[3]),
                    sheared,
                    core,
                    w[0] - w[1]);
        }
    }

    private boolean hasSkin(int height) {
        return height < 2 ? shape.outside() > 0 : shape.foam() == 0 || shape.inside() > 0;
    }

    /** Solves the panel under each of these patches by itself. */
    List<SweepFigures> under(List<SweepCase> loads, double shortest) {
        double longest = 2 * Math.PI / shortest;
        List<Sum> sums = new ArrayList<>();
        loads.forEach(load -> sums.add(new Sum(load, longest)));
        boolean odd = loads.stream().allMatch(SweepCase::isCentred);
        boolean square = shape.isSquare();
        int step = odd ? 2 : 1;
        for (int m = 1; m * Math.PI / shape.width() < longest; m += step) {
            double alpha = m * Math.PI / shape.width();
            for (int n = 1; !square || n <= m; n += step) {
                double beta = n * Math.PI / shape.length();
                double share = Math.hypot(alpha, beta) / longest;
                if (share >= 1) {
                    break;
                }
                double fade = share < 0.5 ? 1 : Math.pow(Math.cos(Math.PI * (share - 0.5)), 2);
                Sample sample = sample(alpha, beta);
                for (Sum sum : sums) {
                    sum.add(m, n, fade, sample);
                    if (square && m != n) {
                        sum.add(n, m, fade, sample.turned());
                    }
                }
            }
        }
        return sums.stream().map(Sum::figures).toList();
    }

    private static double sinc(double x) {
        return Math.sin(x) / x;
    }

    private static double bessel(double x) {
        return 2 * BesselJ.value(1, x) / x;
    }
}
