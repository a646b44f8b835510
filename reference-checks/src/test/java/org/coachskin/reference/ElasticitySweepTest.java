package org.coachskin.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** The theory of the verdict against 3-D elasticity over foam panels pressed in the middle. */
class ElasticitySweepTest {

    private static final int WAVES = 241;

    /** Foam of 32, 64, 96 and 160 kg/m^3, 6 to 50 mm, one to four plies, patches 30 to 200 mm. */
    private static final List<PatchedPanel> PANELS =
            List.of(
                    new PatchedPanel(2, 0.012, 1, 12e6, 4.2e6, 0.4, 0.1),
                    new PatchedPanel(2, 0.012, 1, 12e6, 4.2e6, 0.4, 0.03),
                    new PatchedPanel(3, 0.012, 3, 4e6, 1.5e6, 0.4, 0.1),
                    new PatchedPanel(3, 0.012, 3, 4e6, 1.5e6, 0.4, 0.03),
                    new PatchedPanel(1, 0.025, 1, 12e6, 4.2e6, 0.4, 0.03),
                    new PatchedPanel(2, 0.006, 2, 22e6, 8e6, 0.4, 0.03),
                    new PatchedPanel(4, 0.012, 4, 4e6, 1.5e6, 0.4, 0.06),
                    new PatchedPanel(2, 0.050, 2, 12e6, 4.2e6, 0.6, 0.1),
                    new PatchedPanel(2, 0.025, 2, 52e6, 18e6, 0.4, 0.03),
                    new PatchedPanel(1, 0.012, 1, 4e6, 1.5e6, 0.6, 0.2),
                    new PatchedPanel(2, 0.012, 0, 12e6, 4.2e6, 0.4, 0.1));

    private static List<PatchedPanel.Figures> exact = List.of();

    private static synchronized List<PatchedPanel.Figures> exact() {
        if (exact.isEmpty()) {
            List<PatchedPanel.Figures> solved = new ArrayList<>();
            PANELS.forEach(panel -> solved.add(panel.exact(WAVES)));
            exact = List.copyOf(solved);
        }
        return exact;
    }

    @TestFactory
    List<DynamicTest> deflectionWithinOnePerCentStressWithinFiveDentWithinTen() {
        List<DynamicTest> tests = new ArrayList<>();
        for (int i = 0; i < PANELS.size(); i++) {
            PatchedPanel panel = PANELS.get(i);
            PatchedPanel.Figures want = exact().get(i);
            tests.add(
                    DynamicTest.dynamicTest(
                            panel.toString(),
                            () -> {
                                PatchedPanel.Figures got = panel.ours();
                                assertEquals(
                                        want.deflection(),
                                        got.deflection(),
                                        0.01 * want.deflection(),
                                        "deflection");
                                assertEquals(
                                        want.outer(),
                                        got.outer(),
                                        0.05 * Math.abs(want.outer()),
                                        "outside surface");
                                if (panel.inside() > 0) {
                                    assertEquals(
                                            want.inner(),
                                            got.inner(),
                                            0.05 * Math.abs(want.inner()),
                                            "inside surface");
                                    assertEquals(
                                            want.dent(), got.dent(), 0.10 * want.dent(), "dent");
                                }
                            }));
        }
        return tests;
    }

    static EvidenceSection section() {
        StringBuilder text =
                new StringBuilder(
                        """
                Square flat panels, rim carried all round, 250 N on a square patch in the middle; skins of 0.414 mm plies,
                E1 = E2 = 14.5 GPa, nu12 0.13, G12 3.1, G13 = G23 = 3.0 GPa; foam with E and G as given and nu = E/2G - 1, 0.45
                at most. Exact: 3-D elasticity wave by wave. Ours: layered theory with the local effect. Deflection is the mean of
                both surfaces; stress is that of the outside and inside surface under the middle of the patch.

                | plies out / foam mm / plies in | foam E, G MPa | panel, patch mm | deflection mm | ours | stress outside MPa | ours | stress inside MPa | ours | dent mm | ours |
                |---|---|---|---|---|---|---|---|---|---|---|
                """);
        for (int i = 0; i < PANELS.size(); i++) {
            PatchedPanel p = PANELS.get(i);
            PatchedPanel.Figures want = exact().get(i);
            PatchedPanel.Figures got = p.ours();
            text.append(
                    String.format(
                            Locale.ROOT,
                            "| %d / %.0f / %d | %.0f, %.1f | %.0f, %.0f | %.4f | %s | %.2f | %s | %.2f | %s | %.4f | %s |%n",
                            p.outside(),
                            p.foam() * 1e3,
                            p.inside(),
                            p.e() / 1e6,
                            p.g() / 1e6,
                            p.side() * 1e3,
                            p.patch() * 1e3,
                            want.deflection() * 1e3,
                            percent(got.deflection(), want.deflection()),
                            want.outer() / 1e6,
                            percent(got.outer(), want.outer()),
                            want.inner() / 1e6,
                            p.inside() == 0 ? "-" : percent(got.inner(), want.inner()),
                            want.dent() * 1e3,
                            p.inside() == 0 ? "-" : percent(got.dent(), want.dent())));
        }
        return new EvidenceSection("The verdict's theory against 3-D elasticity", text.toString());
    }

    private static String percent(double got, double want) {
        return String.format(Locale.ROOT, "%+.1f %%", 100 * (got - want) / Math.abs(want));
    }
}
