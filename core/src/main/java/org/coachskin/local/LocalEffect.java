package org.coachskin.local;

import org.coachskin.harmonic.SectionFields;
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
 * <p>A force on the inside surface is the mirror image of one on the outside surface of the stack
 * turned over, curved the other way: what points outward there points inward here.
 *
 * <p>A bare laminate has no such effect. Immutable; safe to share between threads.
 */
public final class LocalEffect {

    private static final double MARGIN = 0.2;

    /** The effect is asked for to a thousandth; its series may stop well below that. */
    private static final double SMALL = 1e-6;

    private static final double THICKNESSES = 16;

    /** Laid, curved and pressed from outside; turned over where the force is on the inside. */
    private final Laminate laminate;

    private final Site site;
    private final boolean over;
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

    private LocalEffect(Laminate stack, Patch patch, double force, Site where, boolean over) {
        this.over = over;
        laminate = over ? stack.turnedOver() : stack;
        site = over ? where.turnedOver() : where;
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
        return new LocalEffect(laminate, patch, force, Site.FREE, false);
    }

    /**
     * Returns the effect of a force spread evenly over a patch of the outside surface of a panel
     * whose rim may be near and which may be crowned.
     *
     * @param force [N], positive inward
     */
    public static LocalEffect of(Laminate laminate, Patch patch, double force, Site site) {
        return new LocalEffect(laminate, patch, force, site, false);
    }

    /**
     * Returns the effect of a force spread evenly over a patch of the inside surface, as a hinge or
     * a latch makes it.
     *
     * @param force on the panel [N], positive outward: pressing on it
     */
    public static LocalEffect inside(Laminate laminate, Patch patch, double force, Site site) {
        return new LocalEffect(laminate, patch, force, site, true);
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

        private Site turnedOver() {
            return new Site(left, right, front, rear, -across, -along);
        }
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

        /** Under the middle; the deflections alone are good. */
        SectionFields deflections() {
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
            return section(out);
        }

        SectionFields fields(double dx, double dy) {
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
                return section(out);
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
            return section(turned);
        }

        private SectionFields section(double[] fields) {
            return new SectionFields(system.kinematics(), site.across(), site.along(), fields);
        }
    }

    /**
     * Returns the shortening of the foam under the middle of the patch [m], positive where it
     * shortens.
     *
     * <p>Foam also gets thinner where it is stretched along the panel, and the cell is stretched
     * otherwise than a panel larger than itself. On a lid of 900 by 700 mm that is 2 % of the dent
     * under a patch of 30 mm and 17 % (1.2 &mu;m) under one of 100 mm, on a crowned lid 2 % and 29
     * %. {@code FullLayeredAnalysis} has it.
     */
    public double dent() {
        if (bare) {
            return 0;
        }
        SectionFields middle = full.deflections();
        return middle.outward(foamBottom()) - middle.outward(foamTop());
    }

    /**
     * Returns how much further the surface that is pressed gives way under the middle than the
     * layered theory says [m].
     */
    public double sinking() {
        double half = laminate.thickness() / 2;
        return bare ? 0 : layered.deflections().outward(half) - full.deflections().outward(half);
    }

    /**
     * Returns the effect at one place.
     *
     * @param dx offset from the centre of the patch along x [m]
     * @param dy offset along y [m]
     */
    public Here at(double dx, double dy) {
        return new Here(full.fields(dx, dy), layered.fields(dx, dy), 1, 1);
    }

    /** The effect at one place. */
    public final class Here {
        private final SectionFields f;
        private final SectionFields l;
        private final int sideX;
        private final int sideY;

        private Here(SectionFields f, SectionFields l, int sideX, int sideY) {
            this.f = f;
            this.l = l;
            this.sideX = sideX;
            this.sideY = sideY;
        }

        /**
         * Returns the effect at this place's image: on the other side of the middle of the patch in
         * x or y. It holds where the cell is alike on both sides.
         */
        public Here image(boolean inX, boolean inY) {
            return new Here(f, l, inX ? -sideX : sideX, inY ? -sideY : sideY);
        }

        /**
         * Returns what has to be added to the strain of layered theory at height {@code z} in a
         * skin [-].
         */
        public Triple strain(double z) {
            if (bare) {
                return Triple.ZERO;
            }
            double height = over ? -z : z;
            Triple strain = f.strain(height).plus(l.strain(height), -1);
            return new Triple(strain.x(), strain.y(), sideX * sideY * strain.xy());
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
            double within = 1e-9 + (over ? 1 - share : share) * (1 - 2e-9);
            double z = foamBottom() + within * (foamTop() - foamBottom());
            double g = ((Layer.Core) laminate.layers().get(laminate.outermostCore())).foam().g();
            double turned = over ? -g : g;
            return new FoamShear(
                    sideX * turned * (f.shearX(z) - l.shearX(z)),
                    sideY * turned * (f.shearY(z) - l.shearY(z)));
        }
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
