/**
 * Symmetric sparse systems of some thousand to some hundred thousand unknowns; knows no mechanics.
 *
 * <p><b>Read in this order.</b> A {@link org.coachskin.sparse.Pattern} says which unknowns meet, a
 * {@link org.coachskin.sparse.SymmetricMatrix} puts values on it, an {@link
 * org.coachskin.sparse.Order} keeps what fills in small, a {@link org.coachskin.sparse.FactorPlan}
 * is worked out once for both, a {@link org.coachskin.sparse.Factor} is made from it for each set
 * of values, and a {@link org.coachskin.sparse.Solver} solves with that:
 *
 * <pre>
 *   Pattern pattern = Pattern.of(3).element(0, 1).element(1, 2).build();
 *   SymmetricMatrix a = new SymmetricMatrix(pattern);
 *   a.add(0, new double[] {2, -1, -1, 1});
 *   a.add(1, new double[] {1, -1, -1, 2});
 *   double[] x = FactorPlan.of(pattern).factor(a).solve(new double[] {0, 1, 0});
 * </pre>
 *
 * <p>On top: {@link org.coachskin.sparse.Residual} (how good an answer is, and better ones), {@link
 * org.coachskin.sparse.Condition}, {@link org.coachskin.sparse.HalfSolved} (what many small loads
 * do along one another), {@link org.coachskin.sparse.Eigenpairs}, {@link
 * org.coachskin.sparse.MatrixMarket} (so that anyone can time another solver on our matrices).
 *
 * <p>Vectors are the caller's arrays, one value for each unknown. Everything runs in one thread and
 * gives the same bits on every machine: sums have a fixed order, and no fused operation is used.
 */
@NullMarked
package org.coachskin.sparse;

import org.jspecify.annotations.NullMarked;
