package org.coachskin.series;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.coachskin.TestStacks;
import org.coachskin.harmonic.Theory;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Ply;
import org.coachskin.laminate.Triple;
import org.coachskin.panel.Crown;
import org.coachskin.panel.Panel;

/** Panels of every sort, and the series along a chosen side of each. */
final class SeriesPanels {

    private SeriesPanels() {}

    static Laminate laminate(Layer... layers) {
        return new Laminate(List.of(layers));
    }

    static Layer laid(Ply ply, double degrees) {
        return new Layer.Laid(ply, StrictMath.toRadians(degrees));
    }

    static Layer foam(double thickness) {
        return new Layer.Core(TestStacks.foam(12e6, 4.2e6), thickness);
    }

    static Panel lid() {
        return Panel.flat("lid", 0.9, 0.7, TestStacks.sandwich(2, 0.012, 1, 12e6, 4.2e6));
    }

    static Map<String, Panel> all() {
        Laminate lid = lid().laminate();
        Laminate stout = TestStacks.sandwich(3, 0.012, 3, 4e6, 1.5e6);
        Laminate oneSkin = TestStacks.sandwich(2, 0.012, 0, 12e6, 4.2e6);
        Ply ply = TestStacks.ply();
        Laminate bare = laminate(laid(ply, 0), laid(ply, 0), laid(ply, 45), laid(ply, 0));
        Laminate uneven =
                laminate(laid(TestStacks.unequal(), 90), foam(0.01), laid(TestStacks.unequal(), 0));
        Laminate sheet = laminate(laid(TestStacks.isotropic(70e9, 0.3, 1e-3), 0));
        Map<String, Panel> panels = new LinkedHashMap<>();
        panels.put("lid", lid());
        panels.put("stout skins", Panel.flat("stout skins", 0.6, 0.4, stout));
        panels.put("one skin", Panel.flat("one skin", 0.5, 0.8, oneSkin));
        panels.put("bare", Panel.flat("bare", 0.4, 0.3, bare));
        panels.put("uneven", Panel.flat("uneven", 0.5, 0.5, uneven));
        panels.put("sheet", Panel.flat("sheet", 0.5, 0.4, sheet));
        panels.put(
                "crowned, one skin",
                Panel.flat("crowned, one skin", 0.9, 0.6, oneSkin).withCrown(new Crown(0.25, 0.1)));
        panels.put(
                "crowned lid",
                Panel.flat("crowned lid", 0.9, 0.7, lid).withCrown(new Crown(0.3, 0.1)));
        panels.put(
                "saddle", Panel.flat("saddle", 0.5, 0.5, uneven).withCrown(new Crown(0.4, -0.3)));
        panels.put(
                "trailer roof",
                Panel.flat("trailer roof", 1.2, 2.0, lid).withCrown(new Crown(0.15, 0)));
        return panels;
    }

    /** The sum of series that run along a chosen side. */
    static SeriesSum along(SeriesSum.Along along, Theory theory, Panel panel, PatchLoad... loads) {
        List<SeriesSum.Part> parts = new ArrayList<>();
        for (PatchLoad load : loads) {
            parts.add(new SeriesSum.Part(load, new PanelSeries(theory, panel, load.bow())));
        }
        return new SeriesSum(theory, panel, parts, along);
    }

    static PatchLoad pressure(Panel panel) {
        return new PatchLoad(-1000, 0, panel.width(), 0, panel.length(), Triple.ZERO);
    }
}
