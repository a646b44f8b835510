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
        int size = reference.basis.size;
        double[] g = new double[3 * size];
        double[] left = new double[Section.GRADIENTS];
        double[] right = new double[Section.GRADIENTS];
        for (int t = 0; t < model.grid.triangles(); t++) {
            int triangle = t;
            Part part = parts.computeIfAbsent(model.section(t), key -> new Part(triangle));
            double[] xs = model.fields(x, t);
            double[] ys = model.fields(y, t);
            for (int q = 0; q < reference.points; q++) {
                double area = model.grid.elements[t].gradients(reference, q, g);
                sum(xs, g, size, left);
                sum(ys, g, size, right);
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

    /** Writes value, x- and y-derivative of every field. */
    private static void sum(double[] fields, double[] g, int size, double[] out) {
        for (int f = 0; f < Section.FIELDS; f++) {
            double value = 0;
            double dx = 0;
            double dy = 0;
            for (int k = 0; k < size; k++) {
                double c = fields[k * Section.FIELDS + f];
                value += c * g[k];
                dx += c * g[size + k];
                dy += c * g[2 * size + k];
            }
            out[3 * f] = value;
            out[3 * f + 1] = dx;
            out[3 * f + 2] = dy;
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

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
