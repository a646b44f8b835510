package org.coachskin.harmonic;

/**
 * The strip solution as a sum of simple fractions in &mu; = &alpha;^2, and its sums over all waves
 * in closed form.
 *
 * <p>A field of the strip is a rational function of &mu;: it has poles at the roots of its matrix
 * ({@link StripPoles}), and at nought where no crown carries it. With the roots known the
 * numerators follow from as many solutions. A field along x goes like (c + d/&mu; + e/&mu;^2 + sum
 * of f/(&mu; + &kappa;))/&alpha;, a deflection like c/&mu; + d/&mu;^2 + e/&mu;^3 + sum of f/(&mu; +
 * &kappa;). What rounding leaves is small and is added wave by wave, by {@link Strip}.
 *
 * <p>The sums are Bernoulli polynomials and the cosh and sinh of a string on an elastic bed, whose
 * stiffness may be complex (Abramowitz and Stegun, <i>Handbook of Mathematical Functions</i>, 1964,
 * 23.1.16 to 23.1.18; Gradshteyn and Ryzhik, <i>Table of Integrals, Series, and Products</i>,
 * 1.445; both from memory).
 */
final class StripTail {

    private static final double PI = Math.PI;

    private final StripPoles poles;
    private final int block;
    private final int inPlane;
    private final int terms;
    private final double[] part;

    /** By rows: for each field the numerators. */
    private final double[] numerator;

    /**
     * Fits the numerators.
     *
     * @param alphas wave numbers of the solutions, as many as there are {@link #terms}
     * @param solutions two runs of {@code block} fields each
     * @param inPlane how many of a run go along x
     */
    StripTail(StripPoles poles, double[] alphas, double[][] solutions, int block, int inPlane) {
        this.poles = poles;
        this.block = block;
        this.inPlane = inPlane;
        terms = terms(poles);
        part = new double[terms];
        numerator = new double[2 * block * terms];
        fit(true, alphas, solutions);
        fit(false, alphas, solutions);
    }

    /** Returns how many numerators a field has. */
    static int terms(StripPoles poles) {
        return 3 + poles.count();
    }

    private boolean along(int i) {
        return i % block < inPlane;
    }

    private void fit(boolean along, double[] alphas, double[][] solutions) {
        int width = 2 * (along ? inPlane : block - inPlane);
        double[] matrix = new double[terms * terms];
        double[] rhs = new double[terms * width];
        double[] columns = new double[terms];
        for (int r = 0; r < terms; r++) {
            parts(along, alphas[r]);
            double most = 0;
            for (double value : part) {
                most = Math.max(most, Math.abs(value));
            }
            for (int c = 0; c < terms; c++) {
                matrix[r * terms + c] = part[c] / most;
                columns[c] = Math.max(columns[c], Math.abs(part[c] / most));
            }
            double factor = (along ? alphas[r] : 1) / most;
            for (int i = 0, c = 0; i < 2 * block; i++) {
                if (along(i) == along) {
                    rhs[r * width + c++] = solutions[r][i] * factor;
                }
            }
        }
        for (int r = 0; r < terms; r++) {
            for (int c = 0; c < terms; c++) {
                matrix[r * terms + c] /= columns[c];
            }
        }
        Elimination.solve(matrix, terms, rhs, width);
        for (int i = 0, c = 0; i < 2 * block; i++) {
            if (along(i) == along) {
                for (int t = 0; t < terms; t++) {
                    numerator[i * terms + t] = rhs[t * width + c] / columns[t];
                }
                c++;
            }
        }
    }

    /**
     * Writes the fractions whose sum a field is, a field along x times alpha. A pair of complex
     * roots gives a real part and an imaginary one.
     */
    private void parts(boolean along, double alpha) {
        double mu = alpha * alpha;
        part[0] = along ? 1 : 1 / mu / mu / mu;
        part[1] = 1 / mu;
        part[2] = 1 / mu / mu;
        for (int p = 0; p < poles.count(); p++) {
            double re = mu + poles.re(p);
            double im = poles.im(p);
            double size = re * re + im * im;
            part[3 + p] = im < 0 ? im / size : re / size;
        }
    }

    /** Writes what the fractions give for every field at {@code alpha}. */
    void at(double alpha, double[] out) {
        for (int run = 0; run < 2; run++) {
            parts(run == 0, alpha);
            for (int i = 0; i < 2 * block; i++) {
                if (along(i) == (run == 0)) {
                    double sum = 0;
                    for (int t = 0; t < terms; t++) {
                        sum += numerator[i * terms + t] * part[t];
                    }
                    out[i] = run == 0 ? sum / alpha : sum;
                }
            }
        }
    }

    /**
     * Adds the whole sum over the waves of phase {@code theta}: the value by the numerators of a
     * field of the first run, the x-derivative by those of the second.
     *
     * @param a side [m]
     * @param theta phase of the first wave [rad]
     * @param sign of this phase
     * @param sum added to; value, x-derivative and y-derivative of each field
     */
    void add(double a, double theta, double sign, double[] sum) {
        double t = theta - 2 * PI * Math.floor(theta / (2 * PI));
        double unit = a / PI;
        // Of along-x values and deflections' slopes; of deflections and along-x slopes.
        double[] alongValue = new double[terms];
        double[] alongSlope = new double[terms];
        double[] outValue = new double[terms];
        double[] outSlope = new double[terms];
        double u2 = unit * unit;
        double c2 = cosines2(t) * u2;
        double c4 = cosines4(t) * u2 * u2;
        double c6 = cosines6(t) * u2 * u2 * u2;
        double s1 = sines1(t) * unit;
        double s3 = sines3(t) * u2 * unit;
        double s5 = sines5(t) * u2 * u2 * unit;
        alongValue[0] = c2;
        alongValue[1] = c4;
        alongValue[2] = c6;
        alongSlope[0] = s1;
        alongSlope[1] = s3;
        alongSlope[2] = s5;
        outValue[0] = sines7(t) * u2 * u2 * u2 * unit;
        outValue[1] = s3;
        outValue[2] = s5;
        outSlope[0] = c6;
        outSlope[1] = c2;
        outSlope[2] = c4;
        double[] bed = new double[4];
        for (int p = 0; p < poles.count(); p++) {
            double re = poles.re(p);
            double im = Math.abs(poles.im(p));
            boolean imaginary = poles.im(p) < 0;
            bed(re * u2, im * u2, t, bed);
            // 1/(mu (mu + kappa)) is (1/mu - 1/(mu + kappa))/kappa.
            double size = re * re + im * im;
            double cr = (c2 - bed[0] * u2) / size;
            double ci = -bed[1] * u2 / size;
            double sr = (s1 - bed[2] * unit) / size;
            double si = -bed[3] * unit / size;
            alongValue[3 + p] = imaginary ? ci * re - cr * im : cr * re + ci * im;
            alongSlope[3 + p] = imaginary ? si * re - sr * im : sr * re + si * im;
            outValue[3 + p] = alongSlope[3 + p];
            outSlope[3 + p] = u2 * (imaginary ? bed[1] : bed[0]);
        }
        double weight = sign / a;
        for (int i = 0; i < block; i++) {
            boolean along = along(i);
            double value = 0;
            double slope = 0;
            for (int k = 0; k < terms; k++) {
                value += numerator[i * terms + k] * (along ? alongValue[k] : outValue[k]);
                slope += numerator[(block + i) * terms + k] * (along ? alongSlope[k] : outSlope[k]);
            }
            sum[3 * i] += weight * value;
            sum[3 * i + 1] += along ? -weight * slope : weight * slope;
        }
    }

    /** Sum of sin(m t)/m. */
    static double sines1(double t) {
        return t == 0 ? 0 : (PI - t) / 2;
    }

    /** Sum of cos(m t)/m^2. */
    static double cosines2(double t) {
        return PI * PI / 6 - PI * t / 2 + t * t / 4;
    }

    /** Sum of sin(m t)/m^3. */
    static double sines3(double t) {
        return t * (PI * PI / 6 - t * (PI / 4 - t / 12));
    }

    /** Sum of cos(m t)/m^4. */
    static double cosines4(double t) {
        return PI * PI * PI * PI / 90 - t * t * (PI * PI / 12 - t * (PI / 12 - t / 48));
    }

    /** Sum of sin(m t)/m^5. */
    static double sines5(double t) {
        double t2 = t * t;
        return t * (PI * PI * PI * PI / 90 - t2 * (PI * PI / 36 - t * (PI / 48 - t / 240)));
    }

    /** Sum of cos(m t)/m^6. */
    static double cosines6(double t) {
        double t2 = t * t;
        double p4 = PI * PI * PI * PI;
        return p4 * PI * PI / 945
                - t2 * (p4 / 180 - t2 * (PI * PI / 144 - t * (PI / 240 - t / 1440)));
    }

    /** Sum of sin(m t)/m^7. */
    static double sines7(double t) {
        double t2 = t * t;
        double p4 = PI * PI * PI * PI;
        return t
                * (p4 * PI * PI / 945
                        - t2 * (p4 / 540 - t2 * (PI * PI / 720 - t * (PI / 1440 - t / 10080))));
    }

    /**
     * Writes the sums of cos(m t)/(m^2 + kappa) and of m sin(m t)/(m^2 + kappa), real and imaginary
     * parts.
     *
     * @param re real part of kappa
     * @param im its imaginary part, not below zero
     */
    static void bed(double re, double im, double t, double[] out) {
        double size = Math.sqrt(re * re + im * im);
        double kr = Math.sqrt((size + re) / 2);
        double ki = kr > 0 ? im / (2 * kr) : Math.sqrt(size);
        double near = StrictMath.exp(-kr * t);
        double far = StrictMath.exp(-kr * (2 * PI - t));
        double whole = StrictMath.exp(-2 * PI * kr);
        double nr = near;
        double ni = 0;
        double fr = far;
        double fi = 0;
        double wr = 1 - whole;
        double wi = 0;
        if (ki != 0) {
            nr = near * StrictMath.cos(ki * t);
            ni = -near * StrictMath.sin(ki * t);
            fr = far * StrictMath.cos(ki * (2 * PI - t));
            fi = -far * StrictMath.sin(ki * (2 * PI - t));
            wr = 1 - whole * StrictMath.cos(2 * PI * ki);
            wi = whole * StrictMath.sin(2 * PI * ki);
        }
        double square = wr * wr + wi * wi;
        double sr = ((nr + fr) * wr + (ni + fi) * wi) / square;
        double si = ((ni + fi) * wr - (nr + fr) * wi) / square;
        // Over k, which has size^(1/2); kappa is its square.
        out[0] = PI / 2 * (sr * kr + si * ki) / size - re / (2 * size * size);
        out[1] = PI / 2 * (si * kr - sr * ki) / size + im / (2 * size * size);
        boolean jump = t == 0;
        out[2] = jump ? 0 : PI / 2 * ((nr - fr) * wr + (ni - fi) * wi) / square;
        out[3] = jump ? 0 : PI / 2 * ((ni - fi) * wr - (nr - fr) * wi) / square;
    }
}
