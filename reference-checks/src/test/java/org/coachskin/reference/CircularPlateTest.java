package org.coachskin.reference;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.coachskin.analysis.Response;
import org.coachskin.panel.Fitting.Motion;

class CircularPlateTest extends ShellTable {

    CircularPlateTest() {
        super("circular");
    }

    @Override
    void solve() {
        double a = SIDE / 2;
        double d = bending(0.3, THIN);
        Map<String, Set<Motion>> rims =
                Map.of("clamped", Set.of(Motion.values()), "supported", SOFT);
        rims.forEach(
                (name, held) -> {
                    List<Response> both =
                            solve(
                                    circle(SIDE, thin(0.3), held),
                                    5,
                                    even(),
                                    point(a, a, 0.002 * SIDE));
                    double square = a * a;
                    put(
                            name + ": even pressure",
                            both.get(0).deflection(a, a) * d / (square * square));
                    put(name + ": force", both.get(1).deflection(a, a) * d / square);
                });
    }

    @Override
    String title() {
        return "Round plates, clamped and supported: deflection in the middle";
    }

    @Override
    String remark() {
        return "The outline is a square whose corners are rounded until nothing straight is left; the triangles follow the arc exactly.";
    }
}
