package org.coachskin.mesh;

import org.junit.jupiter.api.Test;

class TypicalPanelTest {
    @Test
    void trial() {
        trial(
                "plate",
                Drawing.outline(Loop.rectangle(0, 0, 0.9, 0.6))
                        .wishes(Wishes.edgesUpTo(0.12))
                        .build());
        trial(
                "circle",
                Drawing.outline(Loop.circle(0, 0, 0.3)).wishes(Wishes.edgesUpTo(0.12)).build());
        trial("lid", Panels.lid().build());
        trial("window", Panels.window().build());
    }

    static void trial(String name, Drawing d) {
        Mesh mesh = Mesher.mesh(d);
        System.out.println(MeshChecks.told(name, mesh));
        for (Mesh.SharpCorner c : mesh.sharpCorners()) System.out.println(c);
        for (int r = 0; r < 3; r++) {
            long t = System.nanoTime();
            int n = 40;
            for (int k = 0; k < n; k++) Mesher.mesh(d);
            System.out.printf("   %.1f ms%n", (System.nanoTime() - t) / 1e6 / n);
        }
        MeshChecks.sound(d, mesh);
        MeshChecks.followed(d, mesh, 1e-9 + mesh.largestShift());
        Mesh fine = mesh.refined();
        System.out.println(MeshChecks.told(name + " refined", fine));
    }
}
