package org.coachskin.laminate;

/** Stiffness seen after the stack is turned, by the tensor rule written out in full. */
final class Turn {

    private Turn() {}

    /** Returns the stiffness of a stack turned by {@code angle} from x toward y [rad]. */
    static Sym3 turned(Sym3 q, double angle) {
        double[][][][] tensor = new double[2][2][2][2];
        double[][] voigt = {
            {q.m11(), q.m12(), q.m16()}, {q.m12(), q.m22(), q.m26()}, {q.m16(), q.m26(), q.m66()}
        };
        double c = StrictMath.cos(angle);
        double s = StrictMath.sin(angle);
        double[][] r = {{c, -s}, {s, c}};
        for (int n = 0; n < 256; n++) {
            int i = n & 1;
            int j = n >> 1 & 1;
            int k = n >> 2 & 1;
            int l = n >> 3 & 1;
            int a = n >> 4 & 1;
            int b = n >> 5 & 1;
            int e = n >> 6 & 1;
            int f = n >> 7 & 1;
            tensor[i][j][k][l] +=
                    r[i][a] * r[j][b] * r[k][e] * r[l][f] * voigt[pair(a, b)][pair(e, f)];
        }
        return new Sym3(
                tensor[0][0][0][0],
                tensor[0][0][1][1],
                tensor[1][1][1][1],
                tensor[0][0][0][1],
                tensor[1][1][0][1],
                tensor[0][1][0][1]);
    }

    private static int pair(int i, int j) {
        return i == j ? i : 2;
    }
}
