package org.coachskin.local;

import org.coachskin.harmonic.SingleSeries;
import org.coachskin.harmonic.Theory;
import org.coachskin.harmonic.WaveSystem;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Patch;
import org.coachskin.laminate.Triple;

/**
 * What a patch does to skins and foam around it, beyond the layered theory: full layered theory
 * minus layered theory under the same patch, in a cell whose rim is carried.
 *
 * <p>The difference dies out within a few panel thicknesses, so the cell is the patch plus 200 mm,
 * or plus sixteen thicknesses where that is more, curved like the panel. A rim of the panel that is
 * nearer cuts it off there: without that skin stress under a patch that touches the rim was 12 to
 * 27 % too low. A disc is taken as the square of equal area. Places are offsets from the centre of
 * the patch; heights are from mid-height of the stack.
 *
 * <p>A bare laminate has no such effect. Immutable; safe to share between threads.
 */
public final class LocalEffect {

    private static final double MARGIN = 0.2;

    /** The effect is asked for to a thousandth; its series may stop well below that. */
    private static final double SMALL = 1e-6;

    private static final double THICKNESSES = 16;

    private final Laminate laminate;
    private final Site site;
    private final double left;
    private final double front;
    private final double width;
    private final double length;
    private final double halfX;
    private final double halfY;
    private final double pressure;
    private final boolean bare;
    private final Side full;
    private final Side layered;

    private LocalEffect(Laminate laminate, Patch patch, double force, Site site) {
        this.laminate = laminate;
        this.site = site;
        boolean disc = patch instanceof Patch.Disc;
        halfX = disc ? Math.sqrt(patch.area()) / 2 : patch.halfX();
        halfY = disc ? halfX : patch.halfY();
        pressure = force / (4 * halfX * halfY);
        double reach =
                Math.max(halfX, halfY) + Math.max(MARGIN, THICKNESSES * laminate.thickness()) / 2;
        left = Math.min(reach, Math.max(site.left(), halfX));
        front = Math.min(reach, Math.max(site.front(), halfY));
        width = left + Math.min(reach, Math.max(site.right(), halfX));
        length = front + Math.min(reach, Math.max(site.rear(), halfY));
        bare = laminate.isBare();
        full = new Side(Theory.FULL_LAYERED);
        layered = new Side(Theory.LAYERED);
    }

    /**
     * Returns the effect of a force spread evenly over a patch of the outside surface.
     *
     * @param force [N], positive inward
     */
    public static LocalEffect of(Laminate laminate, Patch patch, double force) {
        return new LocalEffect(laminate, patch, force, Site.FREE);
    }

    /**
     * Returns the effect of a force spread evenly over a patch of the outside surface of a panel
     * whose rim may be near and which may be crowned.
     *
     * @param force [N], positive inward
     */
    public static LocalEffect of(Laminate laminate, Patch patch, double force, Site site) {
        return new LocalEffect(laminate, patch, force, site);
    }

    /**
     * Where a patch stands on a panel carried along its rim.
     *
     * @param left from the centre of the patch to the left edge [m]
     * @param right to the right edge [m]
     * @param front to the front edge [m]
     * @param rear to the rear edge [m]
     * @param across curvature of a cut along x, bulging outward [1/m]
     * @param along curvature of a cut along y [1/m]
     */
    public record Site(
            double left, double right, double front, double rear, double across, double along) {

        /** A flat panel without end. */
        public static final Site FREE =
                new Site(
                        Double.POSITIVE_INFINITY,
                        Double.POSITIVE_INFINITY,
                        Double.POSITIVE_INFINITY,
                        Double.POSITIVE_INFINITY,
                        0,
                        0);
    }

    /** One theory in the cell: a series along either side. */
    private final class Side {
        final WaveSystem system;
        final SingleSeries alongX;
        final SingleSeries alongY;

        Side(Theory theory) {
            double x = site.across();
            double y = site.along();
            system = WaveSystem.of(theory, laminate, x, y, false);
            alongX = new SingleSeries(system, width, length, false, SMALL);
            WaveSystem exchanged = WaveSystem.of(theory, laminate, x, y, true);
            // Where cell and stack are alike both ways one series does for both.
            alongY =
                    width == length && x == y && exchanged.isAlike(system)
                            ? alongX
                            : new SingleSeries(exchanged, length, width, false, SMALL);
        }

        /** Fields of which the values of the deflections alone are good, under the middle. */
        double[] deflections() {
            double[] out = new double[3 * system.size];
            alongX.addDeflection(
                    -pressure,
                    left - halfX,
                    left + halfX,
                    front - halfY,
                    front + halfY,
                    left,
                    front,
                    out);
            return out;
        }

        /** Fields with value, x- and y-derivative, in the order of WaveSystem. */
        double[] fields(double dx, double dy) {
            double cx = left;
            double cy = front;
            double[] out = new double[3 * system.size];
            if (Math.abs(Math.abs(dy) - halfY) >= Math.abs(Math.abs(dx) - halfX)) {
                alongX.add(
                        -pressure,
                        cx - halfX,
                        cx + halfX,
                        cy - halfY,
                        cy + halfY,
                        cx + dx,
                        cy + dy,
                        out);
                return out;
            }
            alongY.add(
                    -pressure,
                    cy - halfY,
                    cy + halfY,
                    cx - halfX,
                    cx + halfX,
                    cy + dy,
                    cx + dx,
                    out);
            double[] turned = new double[out.length];
            int second = system.second;
            int first = system.first;
            for (int i = 0; i < system.size; i++) {
                int target = i < second ? first + i : i < first ? i : i - first;
                turned[3 * target] = out[3 * i];
                turned[3 * target + 1] = out[3 * i + 2];
                turned[3 * target + 2] = out[3 * i + 1];
            }
            return turned;
        }

        Triple strain(double[] f, double z) {
            double[] n = new double[system.second];
            system.kinematics().displacement(z, n);
            double x = 0;
            double y = 0;
            double xy = 0;
            for (int i = 0; i < system.second; i++) {
                int v = system.first + i;
                x += n[i] * f[3 * i + 1];
                y += n[i] * f[3 * v + 2];
                xy += n[i] * (f[3 * i + 2] + f[3 * v + 1]);
            }
            double outward = -deflection(f, z);
            return new Triple(x + site.across() * outward, y + site.along() * outward, xy);
        }

        /** Deflection inward of height z. */
        double deflection(double[] f, double z) {
            double[] m = new double[system.first - system.second];
            system.kinematics().deflection(z, m);
            double w = 0;
            for (int k = 0; k < m.length; k++) {
                w -= m[k] * f[3 * (system.second + k)];
            }
            return w;
        }
    }

    /**
     * Returns the shortening of the foam under the middle of the patch [m], positive where it
     * shortens.
     */
    public double dent() {
        if (bare) {
            return 0;
        }
        double[] f = full.deflections();
        return full.deflection(f, foamTop()) - full.deflection(f, foamBottom());
    }

    /**
     * Returns how much further the outside surface goes in under the middle than the layered theory
     * says [m].
     */
    public double sinking() {
        double half = laminate.thickness() / 2;
        return bare
                ? 0
                : full.deflection(full.deflections(), half)
                        - layered.deflection(layered.deflections(), half);
    }

    /**
     * Returns the effect at one place.
     *
     * @param dx offset from the centre of the patch along x [m]
     * @param dy offset along y [m]
     */
    public Here at(double dx, double dy) {
        return new Here(full.fields(dx, dy), layered.fields(dx, dy));
    }

    /** The effect at one place. */
    public final class Here {
        private final double[] f;
        private final double[] l;

        private Here(double[] f, double[] l) {
            this.f = f;
            this.l = l;
        }

        /**
         * Returns what has to be added to the strain of layered theory at height {@code z} in a
         * skin [-].
         */
        public Triple strain(double z) {
            return bare ? Triple.ZERO : full.strain(f, z).plus(layered.strain(l, z), -1);
        }

        /**
         * Returns what has to be added to the shear stress of layered theory, which is even through
         * the foam, at one height in it. Beside a small patch the largest is near the outside face
         * and not at mid-height.
         *
         * @param share height in the foam: 0 at its inside face, 1 at its outside face
         */
        public FoamShear foam(double share) {
            if (bare) {
                return new FoamShear(0, 0);
            }
            double within = 1e-9 + share * (1 - 2e-9);
            double z = foamBottom() + within * (foamTop() - foamBottom());
            double g = ((Layer.Core) laminate.layers().get(laminate.outermostCore())).foam().g();
            return new FoamShear(
                    g * (shear(full.system, f, z, 0) - shear(layered.system, l, z, 0)),
                    g * (shear(full.system, f, z, 1) - shear(layered.system, l, z, 1)));
        }
    }

    /** Transverse shear strain at height z; side 0 for xz, 1 for yz. */
    private static double shear(WaveSystem system, double[] f, double z, int axis) {
        double[] dn = new double[system.second];
        double[] m = new double[system.first - system.second];
        system.kinematics().rotation(z, dn);
        system.kinematics().deflection(z, m);
        // The value of a rotation is its shear strain, so its slope is in it already.
        double[] slope = new double[m.length];
        system.kinematics().slopeLeft(dn, m, slope);
        int offset = axis == 0 ? 0 : system.first;
        double sum = 0;
        for (int i = 0; i < dn.length; i++) {
            sum += dn[i] * f[3 * (offset + i)];
        }
        for (int i = 0; i < m.length; i++) {
            sum += slope[i] * f[3 * (system.second + i) + 1 + axis];
        }
        return sum;
    }

    private double foamTop() {
        int last = laminate.outermostCore();
        return laminate.bottom(last) + laminate.layers().get(last).thickness();
    }

    private double foamBottom() {
        return laminate.bottom(laminate.innermostCore());
    }

    /**
     * Shear stress in the foam.
     *
     * @param x on a face normal to x [Pa]
     * @param y on a face normal to y [Pa]
     */
    public record FoamShear(double x, double y) {}
}
