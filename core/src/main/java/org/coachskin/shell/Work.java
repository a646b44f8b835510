package org.coachskin.shell;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * What two solutions do along one another, summed stack by stack before any stiffness is put to it:
 * the integrals of all products of their fields and derivatives. Any stiffness of the stacks then
 * costs next to nothing. Immutable.
 */
final class Work {

    /** One stack: a triangle that has it, and the integrals, GRADIENTS x GRADIENTS. */
    private static final class Part {
        final int triangle;
        final double[] integrals = new double[Section.GRADIENTS * Section.GRADIENTS];

        Part(int triangle) {
            this.triangle = triangle;
        }
    }

    private final Map<Section, Part> parts = new LinkedHashMap<>();

    Work(Model model, double[] x, double[] y) {
        ReferenceTriangle reference = model.reference;
        double[] g = new double[3 * reference.basis.size];
        double[] left = new double[Section.GRADIENTS];
        double[] right = new double[Section.GRADIENTS];
        for (int t = 0; t < model.grid.triangles(); t++) {
            int triangle = t;
            Part part = parts.computeIfAbsent(model.section(t), key -> new Part(triangle));
            double[] xs = model.fields(x, t);
            double[] ys = model.fields(y, t);
            for (int q = 0; q < reference.points; q++) {
                double area = model.grid.elements[t].gradients(reference, q, g);
                Model.gradients(xs, g, left);
                Model.gradients(ys, g, right);
                for (int i = 0; i < left.length; i++) {
                    double by = area * left[i];
                    int row = i * left.length;
                    for (int j = 0; j < right.length; j++) {
                        part.integrals[row + j] += by * right[j];
                    }
                }
            }
        }
    }

    /** Returns x' K y, K by a part of what each stack resists. */
    double against(Function<Section, double[]> onGradients) {
        double sum = 0;
        for (Map.Entry<Section, Part> entry : parts.entrySet()) {
            sum += dot(onGradients.apply(entry.getKey()), entry.getValue().integrals);
        }
        return sum;
    }

    /** Returns x' K y, K by other stacks, triangle by triangle, where the same zones have them. */
    double against(Section[] others) {
        double sum = 0;
        for (Part part : parts.values()) {
            sum += dot(others[part.triangle].stiffness, part.integrals);
        }
        return sum;
    }

    static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
