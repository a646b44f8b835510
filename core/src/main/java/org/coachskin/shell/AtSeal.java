package org.coachskin.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.coachskin.sparse.Factor;
import org.coachskin.sparse.HalfSolved;
import org.coachskin.sparse.Solver;

/**
 * The panel on even springs as its seal sees it: how unit forces at points of the seal move the
 * others, with rigid holds held.
 */
final class AtSeal implements Contact.Flexibility {

    private static final int AT_ONCE = 4;

    private final SealLine seal;
    private final Factor factor;
    private final List<double[]> rigidLoads;
    private final UnaryOperator<double[]> hold;
    private final UnaryOperator<double[]> linear;

    /** Every point of the seal under a unit force per length; worked out when first asked for. */
    private List<HalfSolved> units = List.of();

    /** How each point's unit force moves the rigid holds, and the forces that hold them. */
    private final List<double[]> moved = new ArrayList<>();

    private final List<double[]> holding = new ArrayList<>();

    /**
     * @param factor of the stiffness with even springs and props for rigid holds
     * @param rigidLoads unit loads of the rigid holds
     * @param hold forces against the rigid holds that take back how they have moved
     * @param linear the solution under a load, rigid holds held
     */
    AtSeal(
            SealLine seal,
            Factor factor,
            List<double[]> rigidLoads,
            UnaryOperator<double[]> hold,
            UnaryOperator<double[]> linear) {
        this.seal = seal;
        this.factor = factor;
        this.rigidLoads = rigidLoads;
        this.hold = hold;
        this.linear = linear;
    }

    @Override
    public double[] solve(double[] load) {
        return linear.apply(load);
    }

    @Override
    public synchronized List<double[]> deflections(List<Integer> points) {
        if (units.isEmpty()) {
            begin();
        }
        return points.parallelStream().map(this::deflections).toList();
    }

    private void begin() {
        int n = seal.points.size();
        Solver solver = factor.solver();
        List<HalfSolved> all = new ArrayList<>();
        // A few at a time, for all loads at once are the most that a verdict holds in memory.
        for (int from = 0; from < n; from += AT_ONCE) {
            List<double[]> loads = new ArrayList<>();
            for (int i = from; i < Math.min(n, from + AT_ONCE); i++) {
                double[] load = new double[seal.unknowns];
                seal.addForce(i, 1, load);
                loads.add(load);
            }
            all.addAll(solver.half(loads));
        }
        units = all;
        List<HalfSolved> rigid = factor.solver().half(rigidLoads);
        for (HalfSolved unit : units) {
            double[] at = rigid.stream().mapToDouble(unit::along).toArray();
            moved.add(at);
            holding.add(hold.apply(at));
        }
    }

    /** A force per length of 1 at i does its length times the deflection there. */
    private double[] deflections(int point) {
        double[] w = new double[units.size()];
        double[] forces = holding.get(point);
        for (int i = 0; i < w.length; i++) {
            double work = units.get(point).along(units.get(i));
            for (int k = 0; k < forces.length; k++) {
                work -= forces[k] * moved.get(i)[k];
            }
            w[i] = work / seal.points.get(i).length;
        }
        return w;
    }
}
