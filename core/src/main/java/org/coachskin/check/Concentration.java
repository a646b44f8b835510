package org.coachskin.check;

import java.util.List;
import java.util.Optional;
import org.coachskin.analysis.Analysis;
import org.coachskin.analysis.CaseResponse;
import org.coachskin.analysis.Response;
import org.coachskin.failure.EllipticHole;
import org.coachskin.failure.Face;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.SectionState;
import org.coachskin.laminate.Sym3;
import org.coachskin.laminate.Triple;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Opening;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Region;
import org.coachskin.panel.Shape;
import org.coachskin.shell.ShellAnalysis;

/**
 * How much a round opening raises the stress of a skin along its rim, against the largest principal
 * stress at its middle in the same panel uncut; by the elements, and by theory as if the skin were
 * a wide sheet under the forces it has there. The theory leaves out the foam, which ties the skins
 * to one another (less), the slope of the forces across the opening, and edges.
 *
 * @param opening its name
 * @param loadCase the load
 * @param solved by the elements [-]
 * @param wideSheet by theory [-]
 */
public record Concentration(String opening, String loadCase, double solved, double wideSheet) {

    private static final int PLACES = 96;

    /** So near to the rim its stress is read [m]. */
    private static final double AT = 2e-5;

    /**
     * Returns that of the opening beside which a mode of a skin's plies governs; empty where it
     * governs elsewhere, and where the theory has nothing to say: other shapes, bare laminate, an
     * edge, another opening or another stack nearer than the opening is wide.
     */
    public static Optional<Concentration> of(Verdict verdict, Margin margin) {
        Job job = verdict.job();
        Panel panel = job.panel();
        Optional<Opening> beside = verdict.openingBeside(margin);
        if (beside.isEmpty()
                || !margin.mode().isOfPlies()
                || !stands(panel, beside.get())
                || !(beside.get().shape() instanceof Shape.Circle circle)) {
            return Optional.empty();
        }
        Opening hole = beside.get();
        Stack stack = new Stack(panel.laminateAt(margin.place().x(), margin.place().y()));
        double foamMiddle = (stack.layered.foamBottom() + stack.layered.foamTop()) / 2;
        Face face = margin.place().z() > foamMiddle ? Face.OUTSIDE : Face.INSIDE;
        Analysis analysis = new ShellAnalysis();
        LoadCase load =
                job.loads().stream()
                        .filter(l -> l.name().equals(margin.loadCase()))
                        .findFirst()
                        .orElseThrow();
        Triple far =
                force(stack, face, response(analysis, without(panel, hole), load, margin), hole);
        Response cut = response(analysis, panel, load, margin);
        double radius = circle.diameter() / 2;
        double most = 0;
        for (int i = 0; i < PLACES; i++) {
            double c = StrictMath.cos(2 * Math.PI * i / PLACES);
            double s = StrictMath.sin(2 * Math.PI * i / PLACES);
            Triple n =
                    force(
                            stack,
                            face,
                            cut,
                            hole.x() + (radius + AT) * c,
                            hole.y() + (radius + AT) * s);
            most = Math.max(most, Math.abs(n.x() * s * s + n.y() * c * c - 2 * n.xy() * c * s));
        }
        double mean = (far.x() + far.y()) / 2;
        double nominal = Math.abs(mean) + StrictMath.hypot((far.x() - far.y()) / 2, far.xy());
        double sheet =
                Math.abs(new EllipticHole(stiffness(stack, face), radius, radius).largestHoop(far));
        return Optional.of(
                new Concentration(hole.name(), margin.loadCase(), most / nominal, sheet / nominal));
    }

    /** Returns that of the first mode beside a round opening that has one. */
    public static Optional<Concentration> of(Verdict verdict) {
        for (Margin margin : verdict.margins()) {
            Optional<Concentration> found = of(verdict, margin);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    /** Returns whether an opening is far from all that the theory does not know. */
    private static boolean stands(Panel panel, Opening hole) {
        if (!(hole.shape() instanceof Shape.Circle circle)) {
            return false;
        }
        double radius = circle.diameter() / 2;
        Laminate whole = panel.laminateAt(hole.x() + radius + AT, hole.y());
        for (int i = 0; i < PLACES; i++) {
            double c = StrictMath.cos(2 * Math.PI * i / PLACES);
            double s = StrictMath.sin(2 * Math.PI * i / PLACES);
            for (double r : new double[] {radius + AT, 2 * radius, 3 * radius}) {
                double x = hole.x() + r * c;
                double y = hole.y() + r * s;
                if (!panel.hasMaterialAt(x, y) || !panel.laminateAt(x, y).equals(whole)) {
                    return false;
                }
            }
        }
        return !whole.isBare();
    }

    private static Panel without(Panel panel, Opening hole) {
        return panel.withZones(
                        panel.zones().stream()
                                .filter(
                                        zone ->
                                                !(zone.region() instanceof Region.Around ring
                                                        && ring.opening().equals(hole.name())))
                                .toList())
                .withOpenings(panel.openings().stream().filter(o -> !o.equals(hole)).toList());
    }

    private static Response response(Analysis analysis, Panel panel, LoadCase load, Margin margin) {
        CaseResponse answer = analysis.loadCases(panel, List.of(load)).get(0);
        return margin.reversed() ? answer.reversed() : answer.loaded();
    }

    private static Triple force(Stack stack, Face face, Response response, Opening hole) {
        return force(stack, face, response, hole.x(), hole.y());
    }

    private static Triple force(Stack stack, Face face, Response response, double x, double y) {
        SectionState state = response.state(x, y);
        return stack.skinForce(face, (layer, z) -> state.strainAt(stack.layered, z));
    }

    private static Sym3 stiffness(Stack stack, Face face) {
        Sym3 sum = Sym3.ZERO;
        Laminate whole = stack.laminate;
        for (Layer layer : face == Face.OUTSIDE ? whole.outsideSkin() : whole.insideSkin()) {
            sum = sum.plus(layer.stiffness(), layer.thickness());
        }
        return sum;
    }
}
