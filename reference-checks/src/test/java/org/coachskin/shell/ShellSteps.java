package org.coachskin.shell;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.coachskin.Source;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Ply;
import org.coachskin.laminate.PlyStrength;
import org.coachskin.material.Foam;
import org.coachskin.material.MaterialLibrary;
import org.coachskin.material.Strength;
import org.coachskin.mesh.Drawing;
import org.coachskin.mesh.Loop;
import org.coachskin.mesh.Mesher;
import org.coachskin.mesh.Wishes;
import org.coachskin.panel.Crown;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Fitting;
import org.coachskin.panel.Fitting.Motion;
import org.coachskin.panel.Height;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Stretch;
import org.coachskin.panel.Support;
import org.coachskin.sparse.Factor;
import org.coachskin.sparse.FactorPlan;
import org.coachskin.sparse.MatrixMarket;
import org.coachskin.sparse.Order;
import org.coachskin.sparse.Pattern;
import org.coachskin.sparse.SymmetricMatrix;

/**
 * The steps of the shell's work one by one, on a door of 900 by 600 mm with a window, its rear edge
 * held and rubber along the other three; as finely drawn as asked.
 */
final class ShellSteps {

    private final double edge;
    private final Panel panel = door();
    private final Grid grid;
    private final Model model;
    private final SealLine seal;
    private final Pattern pattern;
    private final FactorPlan plan;
    private final SymmetricMatrix matrix;
    private final Factor factor;
    private final double[] load;

    /**
     * @param edge longest edge of a triangle [m]
     */
    ShellSteps(double edge) {
        this.edge = edge;
        grid = mesh();
        Basis basis = new Basis(ShellAnalysis.ORDER);
        Section[] sections = Sections.of(panel, grid, false);
        List<Rim.Piece> rim = Rim.of(grid);
        List<Fitting> fittings = panel.support().fittings();
        Unknowns unknowns = Holding.unknowns(grid, basis, sections, rim, fittings);
        model = new Model(grid, new ReferenceTriangle(basis, 2), sections, unknowns);
        seal = new SealLine(model, rim, fittings);
        Pattern.Builder builder = Pattern.of(unknowns.count);
        model.enter(builder);
        seal.enter(builder);
        pattern = builder.build();
        plan = plan();
        matrix = assemble();
        factor = plan.factor(matrix);
        load = new double[unknowns.count];
        // Suction that lifts the far edge off its rubber.
        model.addEven(t -> true, new double[] {0, 0, 300, 0, 0, 0, 0}, load);
        seal.addWorkingForce(load);
    }

    private static Panel door() {
        Strength any = new Strength(1, Strength.Level.MEAN, Strength.Event.BREAKING, Source.YOURS);
        PlyStrength strength = new PlyStrength(any, any, any, any, any);
        Ply ply =
                new Ply(
                        "ply",
                        18e9,
                        18e9,
                        0.15,
                        3e9,
                        3e9,
                        3e9,
                        4e-4,
                        1800,
                        0,
                        0,
                        strength,
                        Source.YOURS);
        Foam foam = MaterialLibrary.standard().foam(Foam.Kind.POLYURETHANE, 64).orElseThrow();
        Layer.Laid laid = new Layer.Laid(ply, 0);
        Laminate stack = Laminate.of(laid, new Layer.Core(foam, 0.012), laid, laid);
        List<Stretch> rubber =
                List.of(
                        Stretch.whole(Edge.FRONT),
                        Stretch.whole(Edge.LEFT),
                        Stretch.whole(Edge.RIGHT));
        return new Panel(
                "door",
                0.9,
                0.6,
                Crown.FLAT,
                stack,
                new Support.Fittings(
                        List.of(
                                new Fitting.HeldEdge(
                                        Stretch.whole(Edge.REAR),
                                        Set.of(Motion.values()),
                                        Height.MIDDLE),
                                new Fitting.RubberSeal(rubber, 50, 0.006, 0.009, 50))));
    }

    /** Returns how many unknowns there are. */
    int unknowns() {
        return pattern.size();
    }

    /** Draws the door and cuts it into triangles. */
    Grid mesh() {
        Drawing drawing =
                Drawing.outline(Loop.rectangle(0, 0, 0.9, 0.6))
                        .hole(Loop.rectangle(0.3, 0.2, 0.6, 0.4))
                        .wishes(Wishes.edgesUpTo(edge))
                        .build();
        return Drawn.grid(Mesher.mesh(drawing), ShellAnalysis.ORDER);
    }

    /** Orders the unknowns and finds where the factor has entries. */
    FactorPlan plan() {
        double[] place = ShellPanel.places(grid, model.reference.basis, model.unknowns);
        return FactorPlan.of(pattern, Order.dissection(pattern, place));
    }

    /** Works out all triangles and adds them up. */
    SymmetricMatrix assemble() {
        SymmetricMatrix out = new SymmetricMatrix(pattern);
        model.addStiffness(out);
        seal.addStiffness(out, grid.triangles());
        return out;
    }

    /** Factors anew, in place. */
    Factor factor() {
        factor.refactor(matrix);
        return factor;
    }

    /** Solves for one load. */
    double[] solve() {
        return factor.solve(load);
    }

    /** Finds where the rubber lets go. */
    double[] contact() {
        AtSeal held = new AtSeal(seal, factor, List.of(), moved -> moved, factor::solve);
        return new Contact(seal, held).settle(factor.solve(load));
    }

    /** Writes matrix and load for other solvers to read. */
    void export(Path folder) throws IOException {
        try (var out = Files.newBufferedWriter(folder.resolve("door.mtx"))) {
            MatrixMarket.write(matrix, out);
        }
        try (var out = Files.newBufferedWriter(folder.resolve("door-load.mtx"))) {
            MatrixMarket.write(load, out);
        }
    }
}
