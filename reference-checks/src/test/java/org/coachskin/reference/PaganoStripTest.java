package org.coachskin.reference;

import java.util.List;
import java.util.Map;

/** Pagano, Journal of Composite Materials 3 (1969): a strip, nothing varies along y. */
class PaganoStripTest extends PublishedTable {

    private static final Map<String, List<Elasticity3d.Solid>> STACKS =
            Map.of(
                    "[0]",
                    List.of(PaganoPlate.ALONG),
                    "[0/90]",
                    List.of(
                            PaganoPlate.thick(PaganoPlate.ALONG, 0.5),
                            PaganoPlate.thick(PaganoPlate.ACROSS, 0.5)),
                    "[0/90/0]",
                    List.of(
                            PaganoPlate.thick(PaganoPlate.ALONG, 1.0 / 3),
                            PaganoPlate.thick(PaganoPlate.ACROSS, 1.0 / 3),
                            PaganoPlate.thick(PaganoPlate.ALONG, 1.0 / 3)));

    PaganoStripTest() {
        super("elasticity/pagano-1969-strip.csv");
    }

    @Override
    String chapter() {
        return PaganoPlate.CHAPTER;
    }

    @Override
    double ours(String quantity) {
        String[] words = quantity.split(" ", -1);
        double s = Double.parseDouble(words[2].substring(2));
        Elasticity3d.Wave wave =
                new Elasticity3d(STACKS.getOrDefault(words[1], List.of())).wave(Math.PI / s, 0);
        double[] middle = wave.nodes.get(0);
        for (double[] node : wave.nodes) {
            boolean nearer =
                    Math.abs(node[Elasticity3d.Z] - 0.5) < Math.abs(middle[Elasticity3d.Z] - 0.5);
            middle = nearer ? node : middle;
        }
        return 100 * middle[Elasticity3d.W] / (s * s * s * s);
    }

    @Override
    String title() {
        return "Strip bent into a cylinder by a sine pressure, S = span over thickness";
    }
}
