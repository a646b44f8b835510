package org.coachskin.analysis;

import java.util.List;
import org.coachskin.laminate.SectionState;
import org.coachskin.panel.Panel;

/** A response turned round. */
record Reversed(Response of) implements Response {

    @Override
    public String method() {
        return of.method();
    }

    @Override
    public double deflection(double x, double y) {
        return -of.deflection(x, y);
    }

    @Override
    public SectionState state(double x, double y) {
        return SectionState.ZERO.plus(of.state(x, y), -1);
    }

    @Override
    public Owed owed(double x, double y) {
        return of.owed(x, y).reversed();
    }

    @Override
    public List<Double> nearby(List<Panel> others, double x, double y) {
        return of.nearby(others, x, y).stream().map(w -> -w).toList();
    }

    @Override
    public Field movement() {
        Field field = of.movement();
        return new Field(
                field.nodes().stream()
                        .map(node -> new Field.Node(node.x(), node.y(), -node.value()))
                        .toList(),
                field.triangles());
    }

    @Override
    public List<Spot> spots() {
        return of.spots();
    }

    @Override
    public List<Spot> beside(double x, double y) {
        return of.beside(x, y);
    }

    @Override
    public SectionForces forces(double x, double y) {
        SectionForces f = of.forces(x, y);
        return new SectionForces(f.n().times(-1), f.m().times(-1), -f.qx(), -f.qy());
    }
}
