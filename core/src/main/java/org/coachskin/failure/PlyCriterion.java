package org.coachskin.failure;

import org.coachskin.laminate.Ply;
import org.coachskin.laminate.PlyStrength;
import org.coachskin.laminate.PlyStress;

/**
 * When a ply fails. Every criterion gives a reserve: the smallest factor on the load, zero or more,
 * at which the ply fails with the standing stress added and not multiplied; 0 where the standing
 * stress fails it alone, infinite where no amount of this load does.
 */
public sealed interface PlyCriterion {

    /**
     * Returns the reserve.
     *
     * @param load stress of the load
     * @param standing stress that stands all the time
     */
    double reserve(PlyStress load, PlyStress standing, Ply ply);

    /** Returns the name of the criterion. */
    String words();

    /**
     * Returns what happens first: the mode by maximum stress, which names the event for every
     * criterion.
     */
    static PlyFailure event(PlyStress load, PlyStress standing, Ply ply) {
        PlyStrength s = ply.strength();
        PlyFailure worst =
                new PlyFailure(
                        Double.POSITIVE_INFINITY,
                        Mode.PLY_PULLED,
                        s.tension1(),
                        load.s1(),
                        "along the warp");
        worst =
                worst.orWorse(
                        load.s1(), standing.s1(), s.tension1(), s.compression1(), "along the warp");
        worst =
                worst.orWorse(
                        load.s2(), standing.s2(), s.tension2(), s.compression2(), "along the weft");
        double shear =
                MaxStress.reach(
                        load.t12(), standing.t12(), s.shear12().value(), s.shear12().value());
        if (shear < worst.reserve()) {
            worst =
                    new PlyFailure(
                            shear, Mode.PLY_SHEARED, s.shear12(), load.t12(), "in its plane");
        }
        return worst;
    }

    /**
     * Each stress against its own strength. No interaction; on the safe side for single stresses
     * only.
     */
    record MaxStress() implements PlyCriterion {
        @Override
        public double reserve(PlyStress load, PlyStress standing, Ply ply) {
            PlyStrength s = ply.strength();
            double along =
                    reach(load.s1(), standing.s1(), s.tension1().value(), s.compression1().value());
            double across =
                    reach(load.s2(), standing.s2(), s.tension2().value(), s.compression2().value());
            double shear =
                    reach(load.t12(), standing.t12(), s.shear12().value(), s.shear12().value());
            return Math.min(shear, Math.min(along, across));
        }

        /** Returns the factor on {@code load} at which the sum reaches one of the limits. */
        static double reach(double load, double standing, double tension, double compression) {
            if (standing >= tension || standing <= -compression) {
                return 0;
            }
            return load > 0
                    ? (tension - standing) / load
                    : load < 0 ? (compression + standing) / -load : Double.POSITIVE_INFINITY;
        }

        @Override
        public String words() {
            return "maximum stress";
        }
    }

    /** Each strain against the strength over its modulus (linear to failure). */
    record MaxStrain() implements PlyCriterion {
        @Override
        public double reserve(PlyStress load, PlyStress standing, Ply ply) {
            PlyStrength s = ply.strength();
            double nu21 = ply.nu12() * ply.e2() / ply.e1();
            double along =
                    MaxStress.reach(
                            load.s1() - ply.nu12() * load.s2(),
                            standing.s1() - ply.nu12() * standing.s2(),
                            s.tension1().value(),
                            s.compression1().value());
            double across =
                    MaxStress.reach(
                            load.s2() - nu21 * load.s1(),
                            standing.s2() - nu21 * standing.s1(),
                            s.tension2().value(),
                            s.compression2().value());
            double shear =
                    MaxStress.reach(
                            load.t12(), standing.t12(), s.shear12().value(), s.shear12().value());
            return Math.min(shear, Math.min(along, across));
        }

        @Override
        public String words() {
            return "maximum strain";
        }
    }

    /**
     * Tsai-Hill: (s1/X)^2 - s1 s2/Z^2 + (s2/Y)^2 + (t/S)^2 = 1, with X and Y in tension or
     * compression by the sign of the stress at failure and Z the larger of them (Azzi and Tsai,
     * "Anisotropic strength of composites", Experimental Mechanics 5, 1965, 283-288, where it is X,
     * along the fibres; from memory). With Z the surface closes whichever way a cloth is named.
     * Made for equal strengths in tension and compression; by signs it has kinks where a stress
     * changes its sign.
     */
    record TsaiHill() implements PlyCriterion {
        @Override
        public double reserve(PlyStress load, PlyStress standing, Ply ply) {
            PlyStrength s = ply.strength();
            double best = Double.POSITIVE_INFINITY;
            // Solve for each pair of signs and keep the smallest root whose stresses have those
            // signs.
            for (int quadrant = 0; quadrant < 4; quadrant++) {
                boolean pulled1 = (quadrant & 1) == 0;
                boolean pulled2 = (quadrant & 2) == 0;
                double x = (pulled1 ? s.tension1() : s.compression1()).value();
                double y = (pulled2 ? s.tension2() : s.compression2()).value();
                double stronger = Math.max(x, y);
                Quadric quadric =
                        new Quadric(
                                1 / (x * x),
                                1 / (y * y),
                                1 / (s.shear12().value() * s.shear12().value()),
                                -0.5 / (stronger * stronger),
                                0,
                                0);
                if (fits(standing, pulled1, pulled2) && quadric.value(standing) >= 1) {
                    return 0;
                }
                for (double root : quadric.roots(load, standing)) {
                    if (root >= 0
                            && root < best
                            && fits(standing.plus(load, root), pulled1, pulled2)) {
                        best = root;
                    }
                }
            }
            return best;
        }

        private static boolean fits(PlyStress stress, boolean pulled1, boolean pulled2) {
            return (pulled1 ? stress.s1() >= 0 : stress.s1() <= 0)
                    && (pulled2 ? stress.s2() >= 0 : stress.s2() <= 0);
        }

        @Override
        public String words() {
            return "Tsai-Hill";
        }
    }

    /**
     * Tsai-Wu: F1 s1 + F2 s2 + F11 s1^2 + F22 s2^2 + F66 t^2 + 2 F12 s1 s2 = 1 (Tsai and Wu, "A
     * general theory of strength for anisotropic materials", Journal of Composite Materials 5,
     * 1971, 58-80; from memory).
     *
     * @param interaction F12 over sqrt(F11 F22), between -1 and 1; -0.5 where nothing is known
     */
    record TsaiWu(double interaction) implements PlyCriterion {
        /** Checks that the criterion is a closed surface. */
        public TsaiWu {
            if (!(Math.abs(interaction) < 1)) {
                throw new IllegalArgumentException(
                        "interaction term of Tsai-Wu is "
                                + interaction
                                + "; it must lie between -1 and 1, or the surface does not close");
            }
        }

        @Override
        public double reserve(PlyStress load, PlyStress standing, Ply ply) {
            Quadric quadric = quadric(ply.strength());
            if (quadric.value(standing) >= 1) {
                return 0;
            }
            double best = Double.POSITIVE_INFINITY;
            for (double root : quadric.roots(load, standing)) {
                if (root >= 0) {
                    best = Math.min(best, root);
                }
            }
            return best;
        }

        /** Returns the coefficients F11, F22, F66, F12, F1, F2 for these strengths. */
        public Quadric quadric(PlyStrength s) {
            double xt = s.tension1().value();
            double xc = s.compression1().value();
            double yt = s.tension2().value();
            double yc = s.compression2().value();
            double f11 = 1 / (xt * xc);
            double f22 = 1 / (yt * yc);
            double shear = s.shear12().value();
            return new Quadric(
                    f11,
                    f22,
                    1 / (shear * shear),
                    interaction * Math.sqrt(f11 * f22),
                    1 / xt - 1 / xc,
                    1 / yt - 1 / yc);
        }

        @Override
        public String words() {
            return "Tsai-Wu, interaction term " + interaction;
        }
    }

    /**
     * A quadratic form of ply stress: f11 s1^2 + f22 s2^2 + f66 t^2 + 2 f12 s1 s2 + f1 s1 + f2 s2.
     *
     * @param f11 [1/Pa^2]
     * @param f22 [1/Pa^2]
     * @param f66 [1/Pa^2]
     * @param f12 [1/Pa^2]
     * @param f1 [1/Pa]
     * @param f2 [1/Pa]
     */
    record Quadric(double f11, double f22, double f66, double f12, double f1, double f2) {

        /** Returns the value of the form; 1 is failure. */
        public double value(PlyStress s) {
            return product(s, s) + f1 * s.s1() + f2 * s.s2();
        }

        private double product(PlyStress p, PlyStress q) {
            return f11 * p.s1() * q.s1()
                    + f22 * p.s2() * q.s2()
                    + f66 * p.t12() * q.t12()
                    + f12 * (p.s1() * q.s2() + p.s2() * q.s1());
        }

        /**
         * Returns the factors on {@code load} at which the form is 1 with {@code standing} added;
         * none or two.
         */
        double[] roots(PlyStress load, PlyStress standing) {
            double square = product(load, load);
            double linear = 2 * product(load, standing) + f1 * load.s1() + f2 * load.s2();
            double rest = value(standing) - 1;
            double root = linear * linear - 4 * square * rest;
            if (square <= 0 || root < 0) {
                return new double[0];
            }
            // Without cancellation: the larger sum first.
            double sum = -0.5 * (linear + Math.copySign(Math.sqrt(root), linear));
            return sum == 0
                    ? new double[] {Math.sqrt(-rest / square)}
                    : new double[] {sum / square, rest / sum};
        }
    }
}
