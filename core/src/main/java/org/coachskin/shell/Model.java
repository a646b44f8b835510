package org.coachskin.shell;

import java.util.function.Function;
import java.util.function.IntPredicate;
import org.coachskin.sparse.Pattern;
import org.coachskin.sparse.SymmetricMatrix;

/** The panel cut into triangles: its unknowns, stiffness, mass and loads. Immutable. */
final class Model {

    final Grid grid;
    final ReferenceTriangle reference;
    final Unknowns unknowns;

    /** Functions of each triangle. */
    private final int[][] functions;

    /** Section of each triangle. */
    private final Section[] sections;

    Model(Grid grid, ReferenceTriangle reference, Section[] sections, Unknowns unknowns) {
        this.grid = grid;
        this.reference = reference;
        this.sections = sections;
        this.unknowns = unknowns;
        functions = new int[grid.triangles()][];
        for (int t = 0; t < functions.length; t++) {
            functions[t] = unknowns.functions(grid, t);
        }
    }

    private Model(Model other, Section[] sections) {
        grid = other.grid;
        reference = other.reference;
        unknowns = other.unknowns;
        functions = other.functions;
        this.sections = sections;
    }

    /** Returns the same with other stacks. */
    Model with(Section[] others) {
        return new Model(this, others);
    }

    Section section(int triangle) {
        return sections[triangle];
    }

    /** Returns the unknowns of a triangle, function by function. */
    int[] unknowns(int triangle) {
        int count = 0;
        for (int f : functions[triangle]) {
            count += unknowns.width(f);
        }
        int[] out = new int[count];
        int at = 0;
        for (int f : functions[triangle]) {
            for (int k = 0; k < unknowns.width(f); k++) {
                out[at++] = unknowns.start(f) + k;
            }
        }
        return out;
    }

    /** Enters all triangles in a pattern. */
    void enter(Pattern.Builder pattern) {
        for (int t = 0; t < grid.triangles(); t++) {
            pattern.element(unknowns(t));
        }
    }

    /** Adds the stiffness of all triangles to a matrix whose first elements they are. */
    void addStiffness(SymmetricMatrix matrix) {
        add(section -> section.stiffness, matrix);
    }

    /** Adds the mass of all triangles. */
    void addMass(SymmetricMatrix matrix) {
        add(section -> section.mass, matrix);
    }

    private void add(Function<Section, double[]> onGradients, SymmetricMatrix matrix) {
        int size = reference.basis.size;
        double[][][] products = new double[3][3][size * size];
        for (int t = 0; t < grid.triangles(); t++) {
            grid.elements[t].products(reference, products);
            matrix.add(t, matrix(t, onGradients.apply(sections[t]), products));
        }
    }

    /**
     * Returns the matrix of one triangle over its unknowns, by rows; the lower triangle is filled.
     */
    private double[] matrix(int t, double[] onGradients, double[][][] products) {
        int size = reference.basis.size;
        int fields = Section.FIELDS;
        int n = 0;
        int[] start = new int[size];
        for (int m = 0; m < size; m++) {
            start[m] = n;
            n += unknowns.width(functions[t][m]);
        }
        double[] out = new double[n * n];
        double[] block = new double[fields * fields];
        for (int m = 0; m < size; m++) {
            for (int k = 0; k <= m; k++) {
                block(onGradients, products, m * size + k, block);
                place(block, functions[t][m], functions[t][k], start[m], start[k], n, out);
            }
        }
        return out;
    }

    /** Returns the seven fields of every function of a triangle, function by function. */
    double[] fields(double[] solution, int triangle) {
        double[] out = new double[functions[triangle].length * Section.FIELDS];
        for (int k = 0; k < functions[triangle].length; k++) {
            unknowns.fields(solution, functions[triangle][k], out, k * Section.FIELDS);
        }
        return out;
    }

    /** Returns x' K y over all triangles. */
    double energy(double[] x, double[] y) {
        return new Work(this, x, y).against(section -> section.stiffness);
    }

    /** Adds K x over all triangles. */
    void addForces(double[] x, double[] forces) {
        int size = reference.basis.size;
        double[][][] products = new double[3][3][size * size];
        for (int t = 0; t < grid.triangles(); t++) {
            grid.elements[t].products(reference, products);
            double[] k = matrix(t, sections[t].stiffness, products);
            int[] own = unknowns(t);
            for (int i = 0; i < own.length; i++) {
                for (int j = 0; j < own.length; j++) {
                    double stiff = j <= i ? k[i * own.length + j] : k[j * own.length + i];
                    forces[own[i]] += stiff * x[own[j]];
                }
            }
        }
    }

    /** Writes what two functions do to one another, field by field. */
    private static void block(double[] c, double[][][] products, int pair, double[] block) {
        int fields = Section.FIELDS;
        double p00 = products[0][0][pair];
        double p01 = products[0][1][pair];
        double p02 = products[0][2][pair];
        double p10 = products[1][0][pair];
        double p11 = products[1][1][pair];
        double p12 = products[1][2][pair];
        double p20 = products[2][0][pair];
        double p21 = products[2][1][pair];
        double p22 = products[2][2][pair];
        for (int i = 0; i < fields; i++) {
            int row = 3 * i * Section.GRADIENTS;
            for (int j = 0; j < fields; j++) {
                int a = row + 3 * j;
                int b = a + Section.GRADIENTS;
                int d = b + Section.GRADIENTS;
                block[i * fields + j] =
                        c[a] * p00
                                + c[a + 1] * p01
                                + c[a + 2] * p02
                                + c[b] * p10
                                + c[b + 1] * p11
                                + c[b + 2] * p12
                                + c[d] * p20
                                + c[d + 1] * p21
                                + c[d + 2] * p22;
            }
        }
    }

    private void place(double[] block, int rows, int columns, int r0, int c0, int n, double[] out) {
        int fields = Section.FIELDS;
        if (unknowns.isFree(rows) && unknowns.isFree(columns)) {
            for (int i = 0; i < fields; i++) {
                System.arraycopy(block, i * fields, out, (r0 + i) * n + c0, fields);
            }
            return;
        }
        double[] half = new double[fields];
        for (int r = 0; r < unknowns.width(rows); r++) {
            for (int j = 0; j < fields; j++) {
                half[j] = 0;
                for (int i = 0; i < fields; i++) {
                    half[j] += unknowns.share(rows, r, i) * block[i * fields + j];
                }
            }
            for (int q = 0; q < unknowns.width(columns); q++) {
                double sum = 0;
                for (int j = 0; j < fields; j++) {
                    sum += unknowns.share(columns, q, j) * half[j];
                }
                out[(r0 + r) * n + c0 + q] = sum;
            }
        }
    }

    /**
     * Adds to a load the integral of the fields' values over a triangle.
     *
     * @param intensity per area of each of the FIELDS fields
     * @param load overwritten with the sum
     */
    void addEven(int triangle, double[] intensity, double[] load) {
        double[] by = new double[reference.basis.size];
        for (int q = 0; q < reference.points; q++) {
            double area = grid.elements[triangle].area(reference, q);
            for (int k = 0; k < by.length; k++) {
                by[k] += area * reference.values[q][k];
            }
        }
        for (int k = 0; k < by.length; k++) {
            addTo(load, functions[triangle][k], intensity, by[k]);
        }
    }

    /** Adds to a load the integral of the fields' values over some triangles. */
    void addEven(IntPredicate which, double[] intensity, double[] load) {
        for (int t = 0; t < grid.triangles(); t++) {
            if (which.test(t)) {
                addEven(t, intensity, load);
            }
        }
    }

    /** Returns the area of a triangle [m^2]. */
    double area(int t) {
        return grid.elements[t].area(reference);
    }

    /** Adds a force at one place. */
    void addPoint(int triangle, double[] local, double[] force, double[] load) {
        int size = reference.basis.size;
        double[] n = new double[size];
        reference.basis.at(local[0], local[1], n, new double[size], new double[size]);
        for (int k = 0; k < size; k++) {
            addTo(load, functions[triangle][k], force, n[k]);
        }
    }

    private void addTo(double[] load, int function, double[] intensity, double by) {
        for (int k = 0; k < unknowns.width(function); k++) {
            double sum = 0;
            for (int f = 0; f < Section.FIELDS; f++) {
                sum += unknowns.share(function, k, f) * intensity[f];
            }
            load[unknowns.start(function) + k] += by * sum;
        }
    }

    /**
     * Adds the work of a standing strain, for example a free bow: the load that this strain would
     * need, C strain.
     *
     * @param triangle which one
     * @param strain Section.STRAINS values, even over the triangle
     */
    void addStrain(int triangle, double[] strain, double[] load) {
        int size = reference.basis.size;
        Section s = sections[triangle];
        double[] force = new double[Section.GRADIENTS];
        for (int r = 0; r < Section.STRAINS; r++) {
            double stress = 0;
            for (int k = 0; k < Section.STRAINS; k++) {
                stress += s.rigidity[r * Section.STRAINS + k] * strain[k];
            }
            for (int g = 0; g < Section.GRADIENTS; g++) {
                force[g] += s.strain[r * Section.GRADIENTS + g] * stress;
            }
        }
        double[] g = new double[3 * size];
        double[] intensity = new double[Section.FIELDS];
        for (int q = 0; q < reference.points; q++) {
            double area = grid.elements[triangle].gradients(reference, q, g);
            for (int k = 0; k < size; k++) {
                for (int f = 0; f < Section.FIELDS; f++) {
                    intensity[f] =
                            force[3 * f] * g[k]
                                    + force[3 * f + 1] * g[size + k]
                                    + force[3 * f + 2] * g[2 * size + k];
                }
                addTo(load, functions[triangle][k], intensity, area);
            }
        }
    }

    /**
     * Returns value, x- and y-derivative of every field at a place.
     *
     * @param solution values of all unknowns
     */
    double[] gradients(double[] solution, int triangle, double[] local) {
        int size = reference.basis.size;
        double[] values = new double[3 * size];
        double[] n = new double[size];
        double[] dXi = new double[size];
        double[] dEta = new double[size];
        reference.basis.at(local[0], local[1], n, dXi, dEta);
        System.arraycopy(n, 0, values, 0, size);
        System.arraycopy(dXi, 0, values, size, size);
        System.arraycopy(dEta, 0, values, 2 * size, size);
        double[] g = new double[3 * size];
        grid.elements[triangle].gradients(values, size, local[0], local[1], g);
        double[] out = new double[Section.GRADIENTS];
        gradients(fields(solution, triangle), g, out);
        return out;
    }

    /**
     * Writes value, x- and y-derivative of every field.
     *
     * @param fields of every function
     * @param g values, x- and y-derivatives of the functions
     */
    static void gradients(double[] fields, double[] g, double[] out) {
        int size = g.length / 3;
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
}
