package org.coachskin.reference;

class PlateBucklingTest extends BucklingTable {

    private static final double LONG = 20;

    private static final int FINE = 5;

    PlateBucklingTest() {
        super("buckling");
        String older =
                "Ritz with 12 x 12 polynomials gives ours; the print is an older, shorter sum.";
        differs("supported: shear", byHand("SSSS", 1, 0, 0, 1), older);
        differs("clamped: shear", byHand("CCCC", 1, 0, 0, 1), older);
        differs("clamped: along x and y alike", byHand("CCCC", 1, 1, 1, 0), older);
        differs(
                "long with a free edge",
                byHand("SSFS", LONG, 1, 0, 0),
                "Ritz with 12 x 12 polynomials gives ours; the print is a fitted formula.");
    }

    private static double byHand(String edges, double a, double nx, double ny, double nxy) {
        return new RitzPlate(edges, a, 1, 0.3, 12, false).buckling(nx, ny, nxy)
                / (Math.PI * Math.PI);
    }

    @Override
    void solve() {
        double n = euler();
        for (String edges : new String[] {"SSSS", "CCCC"}) {
            String name = edges.equals("SSSS") ? "supported: " : "clamped: ";
            var plate = loose(edges, SIDE, SIDE, thin(0.3));
            put(name + "along x", factor(plate, FINE, -n, 0, 0));
            put(name + "along x and y alike", factor(plate, FINE, -n, -n, 0));
            put(name + "shear", factor(plate, FINE, 0, 0, n));
        }
        // The half of it up to its middle line.
        var half = loose("SMFS", LONG / 2 * SIDE, SIDE, thin(0.3));
        put("long with a free edge", factor(half, 3, -n, 0, 0));
    }

    @Override
    String title() {
        return "Thin plates pushed and sheared in their plane";
    }

    @Override
    String remark() {
        return "The rim is pushed, the membrane forces are those of the solution; the long plate is solved to its middle.";
    }
}
