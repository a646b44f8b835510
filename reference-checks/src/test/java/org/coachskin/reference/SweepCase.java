package org.coachskin.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Patch;
import org.coachskin.laminate.Ply;
import org.coachskin.panel.Crown;
import org.coachskin.panel.Load;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Support;

/**
 * A pressed panel of the sweep.
 *
 * @param shape what is pressed
 * @param disc whether the patch is a disc; else a square
 * @param patch side of the square or diameter of the disc [m]
 * @param x its centre from the left edge [m]
 * @param y its centre from the front edge [m]
 */
record SweepCase(Shape shape, boolean disc, double patch, double x, double y) {

    static final double FORCE = 250;

    /**
     * A panel.
     *
     * @param outside plies outside
     * @param foam thickness [m]; 0 for a bare laminate
     * @param inside plies inside
     * @param density of the foam [kg/m^3], one of 32, 64, 96, 160
     * @param width along x [m]
     * @param length along y [m]
     * @param radiusX of a cut along x [m]; 0 where it is straight
     * @param radiusY of a cut along y [m]; 0 where it is straight
     */
    record Shape(
            int outside,
            double foam,
            int inside,
            int density,
            double width,
            double length,
            double radiusX,
            double radiusY) {

        static Shape square(int outside, double foam, int inside, int density, double side) {
            return new Shape(outside, foam, inside, density, side, side, 0, 0);
        }

        /** Modulus of the foam [Pa]. */
        double e() {
            return switch (density) {
                case 32 -> 4e6;
                case 64 -> 12e6;
                case 96 -> 22e6;
                case 160 -> 52e6;
                default -> throw new IllegalArgumentException("no foam of " + density);
            };
        }

        double g() {
            return switch (density) {
                case 32 -> 1.5e6;
                case 64 -> 4.2e6;
                case 96 -> 8e6;
                default -> 18e6;
            };
        }

        /** Poisson's ratio of an isotropic foam with these moduli, 0.45 where they ask for more. */
        double nu() {
            return Math.min(0.45, e() / (2 * g()) - 1);
        }

        Laminate laminate() {
            Ply ply = TestPlies.ply();
            List<Layer> layers = new ArrayList<>();
            for (int i = 0; i < inside; i++) {
                layers.add(new Layer.Laid(ply, 0));
            }
            if (foam > 0) {
                layers.add(new Layer.Core(TestPlies.foam(e(), g(), nu()), foam));
            }
            for (int i = 0; i < outside; i++) {
                layers.add(new Layer.Laid(ply, 0));
            }
            return new Laminate(layers);
        }

        Panel panel() {
            Crown crown = new Crown(radiusX == 0 ? 0 : 1 / radiusX, radiusY == 0 ? 0 : 1 / radiusY);
            return new Panel("panel", width, length, crown, laminate(), new Support.WholeRim());
        }

        /** Like plies of a skin are one layer to 3-D elasticity. */
        List<Elasticity3d.Solid> solids() {
            List<Elasticity3d.Solid> solids = new ArrayList<>();
            if (inside > 0) {
                solids.add(TestPlies.solid(TestPlies.ply(), inside));
            }
            if (foam > 0) {
                solids.add(TestPlies.solid(e(), g(), nu(), foam));
            }
            if (outside > 0) {
                solids.add(TestPlies.solid(TestPlies.ply(), outside));
            }
            return solids;
        }

        /** Whether x and y may change places. */
        boolean isSquare() {
            return width == length && radiusX == radiusY;
        }

        SweepCase middle(boolean disc, double patch) {
            return new SweepCase(this, disc, patch, width / 2, length / 2);
        }
    }

    Patch area() {
        return disc ? new Patch.Disc(patch) : new Patch.Rectangle(patch, patch);
    }

    Load.Press press() {
        return new Load.Press(FORCE, area(), x, y);
    }

    /** Half the side of the square, of the square of equal area for a disc [m]. */
    double half() {
        return disc ? Math.sqrt(Math.PI) / 4 * patch : patch / 2;
    }

    /** Thickness of the foam over the side of the patch. */
    double slenderness() {
        return shape.foam() / (2 * half());
    }

    boolean isCentred() {
        return x == shape.width() / 2 && y == shape.length() / 2;
    }

    /** Distance from the edge of the patch to the nearest rim [m]. */
    double toRim() {
        double toX = Math.min(x, shape.width() - x);
        double toY = Math.min(y, shape.length() - y);
        return Math.min(toX, toY) - patch / 2;
    }

    /** The panel in words: plies, foam, sizes in mm, places from left and front. */
    String words() {
        Shape s = shape;
        String text =
                s.foam() == 0
                        ? String.format(Locale.ROOT, "%d plies bare", s.outside())
                        : String.format(
                                Locale.ROOT,
                                "%d / %.0f / %d of %d kg/m^3",
                                s.outside(),
                                s.foam() * 1e3,
                                s.inside(),
                                s.density());
        text +=
                String.format(
                        Locale.ROOT,
                        ", %.0f x %.0f, %s %.0f",
                        s.width() * 1e3,
                        s.length() * 1e3,
                        disc ? "disc" : "square",
                        patch * 1e3);
        if (s.radiusX() != 0 || s.radiusY() != 0) {
            text += String.format(Locale.ROOT, ", R %.1f, %.1f m", s.radiusX(), s.radiusY());
        }
        return isCentred()
                ? text
                : text + String.format(Locale.ROOT, " at %.0f, %.0f", x * 1e3, y * 1e3);
    }
}
