package org.coachskin.shell;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.sparse.HalfSolved;

/**
 * The panel on even springs as its seal sees it: how unit forces at points of the seal move the
 * others, with rigid holds held.
 */
final class AtSeal implements Contact.Flexibility {

    private final ShellPanel shell;

    /** Every point of the seal under a unit force per length; worked out when first asked for. */
    private List<HalfSolved> units = List.of();

    /** How each point's unit force moves the rigid holds, and the forces that hold them. */
    private final List<double[]> moved = new ArrayList<>();

    private final List<double[]> holding = new ArrayList<>();

    AtSeal(ShellPanel shell) {
        this.shell = shell;
    }

    @Override
    public double[] solve(double[] load) {
        return shell.linear(load);
    }

    @Override
    public synchronized List<double[]> deflections(List<Integer> points) {
        if (units.isEmpty()) {
            begin();
        }
        return points.parallelStream().map(this::deflections).toList();
    }

    private void begin() {
        int n = shell.seal.points.size();
        List<double[]> loads = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double[] load = new double[shell.seal.unknowns];
            shell.seal.addForce(i, 1, load);
            loads.add(load);
        }
        units = shell.half(loads);
        List<HalfSolved> rigid = shell.half(shell.rigidLoads());
        for (HalfSolved unit : units) {
            double[] at = rigid.stream().mapToDouble(unit::along).toArray();
            moved.add(at);
            holding.add(shell.holding(at));
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
            w[i] = work / shell.seal.points.get(i).length;
        }
        return w;
    }
}
