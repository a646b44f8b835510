package org.coachskin.reference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A second method for thin rectangles on any edges: Ritz with Legendre polynomials times what the
 * edges ask for. D and the mass per area are 1; x and y are counted from the front left corner.
 * Shares no code with the library.
 */
final class RitzPlate {

    private final double a;
    private final double b;
    private final double nu;
    private final int n;
    private final int step;
    private final int[] powersX;
    private final int[] powersY;
    private final double[][] k;

    /** Of a unit square once it leans. */
    private final double area;

    private final List<double[]> pins = new ArrayList<>();

    /**
     * @param edges how front, right, rear and left edge are held: S, C or F
     * @param n polynomials a side
     * @param even whether only those that are even about both middle lines
     */
    RitzPlate(String edges, double a, double b, double nu, int n, boolean even) {
        this(edges, a, b, nu, n, even, 0);
    }

    /**
     * A plate whose left and right edge lean to the right by an angle [rad]; y is counted along
     * them.
     */
    RitzPlate(String edges, double a, double b, double nu, int n, double lean) {
        this(edges, a, b, nu, n, false, lean);
    }

    private RitzPlate(
            String edges, double a, double b, double nu, int n, boolean even, double lean) {
        this.a = a;
        this.b = b;
        this.nu = nu;
        this.n = n;
        step = even ? 2 : 1;
        powersX = new int[] {power(edges.charAt(3)), power(edges.charAt(1))};
        powersY = new int[] {power(edges.charAt(0)), power(edges.charAt(2))};
        k = new double[n * n][n * n];
        area = Math.cos(lean);
        double[][] bent = bent(nu, lean);
        double[][][][] x = products(powersX, a);
        double[][][][] y = products(powersY, b);
        for (int i = 0; i < n * n; i++) {
            for (int j = 0; j < n * n; j++) {
                int p = i / n;
                int q = i % n;
                int r = j / n;
                int s = j % n;
                for (int c = 0; c < 3; c++) {
                    for (int d = 0; d < 3; d++) {
                        k[i][j] += bent[c][d] * x[2 - c][2 - d][p][r] * y[c][d][q][s];
                    }
                }
            }
        }
    }

    /**
     * Returns what w,11, w,12 and w,22 along the sides resist: with s and c of the lean, w,xx =
     * w,11; w,xy = (w,12 - s w,11)/c; w,yy = (w,22 - 2 s w,12 + s^2 w,11)/c^2.
     */
    private static double[][] bent(double nu, double lean) {
        double s = Math.sin(lean);
        double c = Math.cos(lean);
        double[][] turn = {
            {1, 0, 0}, {-s / c, 1 / c, 0}, {s * s / c / c, -2 * s / c / c, 1 / c / c}
        };
        double[][] d = {{1, 0, nu}, {0, 2 * (1 - nu), 0}, {nu, 0, 1}};
        double[][] out = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                for (int m = 0; m < 9; m++) {
                    out[i][j] += c * turn[m / 3][i] * d[m / 3][m % 3] * turn[m % 3][j];
                }
            }
        }
        return out;
    }

    private static int power(char edge) {
        return "FSC".indexOf(edge);
    }

    /** Adds a beam that does not twist along the front or rear edge. */
    RitzPlate beamAlongX(double y, double stiffness) {
        double[][] bent = products(powersX, a)[2][2];
        double[] here = line(powersY, b, y)[0];
        for (int i = 0; i < n * n; i++) {
            for (int j = 0; j < n * n; j++) {
                k[i][j] += stiffness * bent[i / n][j / n] * here[i % n] * here[j % n];
            }
        }
        return this;
    }

    /** Adds a beam that does not twist along the left or right edge. */
    RitzPlate beamAlongY(double x, double stiffness) {
        double[][] bent = products(powersY, b)[2][2];
        double[] here = line(powersX, a, x)[0];
        for (int i = 0; i < n * n; i++) {
            for (int j = 0; j < n * n; j++) {
                k[i][j] += stiffness * bent[i % n][j % n] * here[i / n] * here[j / n];
            }
        }
        return this;
    }

    /** Holds the deflection at a point. */
    RitzPlate pin(double x, double y) {
        pins.add(shape(x, y, 0, 0));
        return this;
    }

    /** Solves for an even pressure of 1. */
    double[] even() {
        return solve(evenLoad());
    }

    /** Returns the integrals of products of derivatives along x: [order][order][i][j]. */
    double[][][][] alongX() {
        return products(powersX, a);
    }

    /** Returns the work of an even pressure of 1 on every function. */
    double[] evenLoad() {
        double[] load = new double[n * n];
        double[][] gauss = gauss(3 * n + 6);
        for (int i = 0; i < gauss[0].length; i++) {
            double[] fx = line(powersX, a, a * (1 + gauss[0][i]) / 2)[0];
            for (int j = 0; j < gauss[0].length; j++) {
                double[] fy = line(powersY, b, b * (1 + gauss[0][j]) / 2)[0];
                double w = gauss[1][i] * gauss[1][j] * a * b / 4;
                for (int m = 0; m < n * n; m++) {
                    load[m] += w * fx[m / n] * fy[m % n];
                }
            }
        }
        return load;
    }

    /** Solves for a force of 1 at a point. */
    double[] point(double x, double y) {
        return solve(shape(x, y, 0, 0));
    }

    private double[] solve(double[] load) {
        int all = n * n + pins.size();
        double[][] full = new double[all][all];
        for (int i = 0; i < n * n; i++) {
            System.arraycopy(k[i], 0, full[i], 0, n * n);
        }
        for (int p = 0; p < pins.size(); p++) {
            for (int i = 0; i < n * n; i++) {
                full[i][n * n + p] = pins.get(p)[i];
                full[n * n + p][i] = pins.get(p)[i];
            }
        }
        return ByHand.solve(full, Arrays.copyOf(load, all));
    }

    /** Returns the deflection, or one of its derivatives, of a solution. */
    double at(double[] solution, double x, double y, int byX, int byY) {
        double[] shape = shape(x, y, byX, byY);
        double sum = 0;
        for (int i = 0; i < n * n; i++) {
            sum += solution[i] * shape[i];
        }
        return sum;
    }

    double at(double[] solution, double x, double y) {
        return at(solution, x, y, 0, 0);
    }

    double momentX(double[] solution, double x, double y) {
        return -at(solution, x, y, 2, 0) - nu * at(solution, x, y, 0, 2);
    }

    double momentY(double[] solution, double x, double y) {
        return -at(solution, x, y, 0, 2) - nu * at(solution, x, y, 2, 0);
    }

    /** Returns the lowest circular frequencies, those of free movement among them. */
    double[] omegas(int count) {
        double[][] x = products(powersX, a)[0][0];
        double[][] y = products(powersY, b)[0][0];
        int all = n * n;
        double[][] mass = new double[all][all];
        for (int i = 0; i < all; i++) {
            for (int j = 0; j < all; j++) {
                mass[i][j] = area * x[i / n][j / n] * y[i % n][j % n];
            }
        }
        return Vibration.omegas(k, mass, count);
    }

    /**
     * Returns how many times forces per width in the plane it takes, either way round: compression
     * along x and y, and shear.
     */
    double buckling(double nx, double ny, double nxy) {
        double[][][][] x = products(powersX, a);
        double[][][][] y = products(powersY, b);
        int all = n * n;
        double[][] g = new double[all][all];
        double[][] columns = new double[all][];
        for (int i = 0; i < all; i++) {
            for (int j = 0; j < all; j++) {
                int p = i / n;
                int q = i % n;
                int r = j / n;
                int s = j % n;
                g[i][j] =
                        nx * x[1][1][p][r] * y[0][0][q][s]
                                + ny * x[0][0][p][r] * y[1][1][q][s]
                                + nxy * x[1][0][p][r] * y[0][1][q][s]
                                + nxy * x[0][1][p][r] * y[1][0][q][s];
            }
        }
        for (int j = 0; j < all; j++) {
            columns[j] = solve(g[j]);
        }
        // (K^-1 G)^2 x = x/factor^2, as K x = factor^2 G K^-1 G x.
        double[][] twice = new double[all][all];
        for (int i = 0; i < all; i++) {
            for (int j = 0; j < all; j++) {
                for (int m = 0; m < all; m++) {
                    twice[i][j] += g[i][m] * columns[j][m];
                }
            }
        }
        return Vibration.omegas(k, twice, 1)[0];
    }

    private double[] shape(double x, double y, int byX, int byY) {
        double[] fx = line(powersX, a, x)[byX];
        double[] fy = line(powersY, b, y)[byY];
        double[] out = new double[n * n];
        for (int i = 0; i < n * n; i++) {
            out[i] = fx[i / n] * fy[i % n];
        }
        return out;
    }

    /** Returns the integrals of products of derivatives: [order][order][function][function]. */
    private double[][][][] products(int[] powers, double length) {
        double[][][][] out = new double[3][3][n][n];
        double[][] gauss = gauss(2 * n + 6);
        for (int g = 0; g < gauss[0].length; g++) {
            double[][] f = line(powers, length, length * (1 + gauss[0][g]) / 2);
            for (int p = 0; p < 3; p++) {
                for (int q = 0; q < 3; q++) {
                    for (int i = 0; i < n; i++) {
                        for (int j = 0; j < n; j++) {
                            out[p][q][i][j] += gauss[1][g] * length / 2 * f[p][i] * f[q][j];
                        }
                    }
                }
            }
        }
        return out;
    }

    /** Returns value, first and second derivative of every function along one side. */
    private double[][] line(int[] powers, double length, double at) {
        double x = 2 * at / length - 1;
        double[][] edges = times(power(1, x, powers[0]), power(-1, x, powers[1]));
        double[][] legendre = new double[3][step * n];
        for (int i = 0; i < step * n; i++) {
            for (int d = 0; d < 3; d++) {
                // P(i) = ((2 i - 1) x P(i-1) - (i - 1) P(i-2))/i, and its derivatives.
                double before = i < 1 ? 0 : legendre[d][i - 1];
                double lower = i < 1 || d == 0 ? 0 : legendre[d - 1][i - 1];
                double second = i < 2 ? 0 : legendre[d][i - 2];
                legendre[d][i] =
                        i == 0
                                ? (d == 0 ? 1 : 0)
                                : ((2 * i - 1) * (x * before + d * lower) - (i - 1) * second) / i;
            }
        }
        double[][] out = new double[3][n];
        for (int i = 0; i < n; i++) {
            int m = step * i;
            double size = Math.sqrt(m + 0.5);
            double scale = 2 / length;
            for (int d = 0; d < 3; d++) {
                double sum = 0;
                for (int e = 0; e <= d; e++) {
                    double ways = d == 2 && e == 1 ? 2 : 1;
                    sum += ways * edges[e][0] * legendre[d - e][m];
                }
                out[d][i] = size * Math.pow(scale, d) * sum;
            }
        }
        return out;
    }

    /** Returns (1 + sign x)^power and its two derivatives. */
    private static double[][] power(int sign, double x, int power) {
        double base = 1 + sign * x;
        double[][] out = new double[3][1];
        out[0][0] = power == 0 ? 1 : power == 1 ? base : base * base;
        out[1][0] = power == 0 ? 0 : power == 1 ? sign : 2 * sign * base;
        out[2][0] = power == 2 ? 2 : 0;
        return out;
    }

    private static double[][] times(double[][] f, double[][] g) {
        return new double[][] {
            {f[0][0] * g[0][0]},
            {f[1][0] * g[0][0] + f[0][0] * g[1][0]},
            {f[2][0] * g[0][0] + 2 * f[1][0] * g[1][0] + f[0][0] * g[2][0]}
        };
    }

    /** Returns the points and weights of Gauss on -1 to 1, by Newton's method. */
    private static double[][] gauss(int points) {
        double[][] out = new double[2][points];
        for (int i = 0; i < points; i++) {
            double x = Math.cos(Math.PI * (i + 0.75) / (points + 0.5));
            double slope = 1;
            for (int again = 0; again < 20; again++) {
                double p = 1;
                double before = 0;
                for (int m = 1; m <= points; m++) {
                    double next = ((2 * m - 1) * x * p - (m - 1) * before) / m;
                    before = p;
                    p = next;
                }
                slope = points * (x * p - before) / (x * x - 1);
                x -= p / slope;
            }
            out[0][i] = x;
            out[1][i] = 2 / ((1 - x * x) * slope * slope);
        }
        return out;
    }
}
