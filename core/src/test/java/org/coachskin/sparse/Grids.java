package org.coachskin.sparse;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.ejml.data.DMatrixRMaj;

/** Matrices to try things on, and their dense twins. */
final class Grids {

    private Grids() {}

    /** Pattern of a grid of square elements with (degree + 1)^2 nodes each. */
    static Pattern squares(int across, int up, int degree, int perNode) {
        int wide = across * degree + 1;
        Pattern.Builder builder = Pattern.of(wide * (up * degree + 1) * perNode);
        for (int ey = 0; ey < up; ey++) {
            for (int ex = 0; ex < across; ex++) {
                int[] unknowns = new int[(degree + 1) * (degree + 1) * perNode];
                int k = 0;
                for (int j = 0; j <= degree; j++) {
                    for (int i = 0; i <= degree; i++) {
                        int node = (ey * degree + j) * wide + ex * degree + i;
                        for (int d = 0; d < perNode; d++) {
                            unknowns[k++] = node * perNode + d;
                        }
                    }
                }
                builder.element(unknowns);
            }
        }
        return builder.build();
    }

    /** Coordinates for {@link #squares}. */
    static double[] places(int across, int up, int degree, int perNode) {
        int wide = across * degree + 1;
        double[] place = new double[3 * wide * (up * degree + 1) * perNode];
        for (int u = 0; 3 * u < place.length; u++) {
            int node = u / perNode;
            place[3 * u] = node % wide;
            place[3 * u + 1] = (double) (node - node % wide) / wide;
        }
        return place;
    }

    /** Every element of rank {@code rank}, plus {@code ground} on the diagonal. */
    static SymmetricMatrix filled(Pattern pattern, int rank, double ground, Random random) {
        SymmetricMatrix matrix = new SymmetricMatrix(pattern);
        for (int e = 0; e < pattern.elements(); e++) {
            matrix.add(e, gram(pattern.sizeOf(e), rank, random));
        }
        for (int i = 0; i < pattern.size(); i++) {
            matrix.add(i, i, ground);
        }
        return matrix;
    }

    static double[] gram(int k, int rank, Random random) {
        double[][] g = new double[k][rank];
        for (double[] row : g) {
            for (int q = 0; q < rank; q++) {
                row[q] = random.nextGaussian();
            }
        }
        double[] matrix = new double[k * k];
        for (int i = 0; i < k; i++) {
            for (int j = 0; j < k; j++) {
                for (int q = 0; q < rank; q++) {
                    matrix[i * k + j] += g[i][q] * g[j][q];
                }
            }
        }
        return matrix;
    }

    /** Elements of random unknowns, some of them in none. */
    static Pattern scattered(int size, int elements, Random random) {
        Pattern.Builder builder = Pattern.of(size);
        for (int e = 0; e < elements; e++) {
            List<Integer> all = new ArrayList<>();
            int k = 1 + random.nextInt(Math.min(size, 6));
            while (all.size() < k) {
                int u = random.nextInt(size);
                if (!all.contains(u)) {
                    all.add(u);
                }
            }
            builder.element(all.stream().mapToInt(Integer::intValue).toArray());
        }
        return builder.build();
    }

    /** Springs of stiffness one between neighbours; held all round at one step outside. */
    static SymmetricMatrix membrane(int across, int up, boolean held) {
        Pattern.Builder builder = Pattern.of(across * up);
        for (int y = 0; y < up; y++) {
            for (int x = 0; x < across; x++) {
                if (x + 1 < across) {
                    builder.element(y * across + x, y * across + x + 1);
                }
                if (y + 1 < up) {
                    builder.element(y * across + x, (y + 1) * across + x);
                }
            }
        }
        Pattern pattern = builder.build();
        SymmetricMatrix matrix = new SymmetricMatrix(pattern);
        for (int e = 0; e < pattern.elements(); e++) {
            matrix.add(e, new double[] {1, -1, -1, 1});
        }
        for (int i = 0; held && i < pattern.size(); i++) {
            matrix.add(i, i, 4 - matrix.get(i, i));
        }
        return matrix;
    }

    /** An eigenvalue of {@link #membrane} held all round. */
    static double membraneValue(int across, int up, int m, int n) {
        double x = Math.sin(m * Math.PI / (2 * (across + 1)));
        double y = Math.sin(n * Math.PI / (2 * (up + 1)));
        return 4 * (x * x + y * y);
    }

    static DMatrixRMaj dense(SymmetricMatrix matrix) {
        int n = matrix.size();
        DMatrixRMaj dense = new DMatrixRMaj(n, n);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                dense.set(i, j, matrix.get(i, j));
            }
        }
        return dense;
    }

    static double[] vector(int n, Random random) {
        double[] x = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = random.nextGaussian();
        }
        return x;
    }

    static double apart(double[] a, double[] b) {
        double most = 0;
        for (int i = 0; i < a.length; i++) {
            most = Math.max(most, Math.abs(a[i] - b[i]));
        }
        return most;
    }
}
