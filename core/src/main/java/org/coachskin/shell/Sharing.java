package org.coachskin.shell;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import org.coachskin.analysis.Field;
import org.coachskin.analysis.Shares;
import org.coachskin.laminate.Laminate;
import org.coachskin.panel.Panel;

/** How much of a panel lies in which of its zones: triangles follow them, so each is in or out. */
final class Sharing {

    private Sharing() {}

    static Shares of(Panel panel, Grid grid, int order) {
        ReferenceTriangle reference = new ReferenceTriangle(new Basis(order), 0);
        List<List<Integer>> held = new ArrayList<>();
        Map<List<Integer>, Double> areas = new LinkedHashMap<>();
        for (int t = 0; t < grid.triangles(); t++) {
            List<Integer> zones = zones(panel, grid.centre(t));
            held.add(zones);
            areas.merge(zones, grid.elements[t].area(reference), Double::sum);
        }
        List<Shares.Part> parts = new ArrayList<>();
        areas.forEach((zones, area) -> parts.add(new Shares.Part(zones, area)));
        return new Shares(parts, hems(panel, grid, held), ends(panel, grid, held));
    }

    private static List<Integer> zones(Panel panel, double[] at) {
        List<Integer> zones = new ArrayList<>();
        for (int i = 0; i < panel.zones().size(); i++) {
            if (panel.zones().get(i).region().holds(panel, at[0], at[1])) {
                zones.add(i);
            }
        }
        return List.copyOf(zones);
    }

    private static List<Shares.Hem> hems(Panel panel, Grid grid, List<List<Integer>> held) {
        Map<Shares.Hem, Double> lengths = new LinkedHashMap<>();
        IntFunction<Laminate> stacks = t -> Shares.stack(panel, Shares.decides(held.get(t)));
        for (Turned.Piece piece : Turned.of(panel, grid, stacks)) {
            int zone = Shares.decides(held.get(piece.triangle()));
            lengths.merge(
                    new Shares.Hem(piece.turned(), zone, 0),
                    Turned.length(grid, piece.edge()),
                    Double::sum);
        }
        List<Shares.Hem> hems = new ArrayList<>();
        lengths.forEach((hem, length) -> hems.add(new Shares.Hem(hem.edge(), hem.zone(), length)));
        return hems;
    }

    private static List<Shares.End> ends(Panel panel, Grid grid, List<List<Integer>> held) {
        Map<Shares.End, Double> lengths = new LinkedHashMap<>();
        IntFunction<FoamEnds.Placed> placed =
                t -> {
                    int zone = Shares.decides(held.get(t));
                    double depth =
                            zone == Field.Triangle.NONE ? 0 : panel.zones().get(zone).depth();
                    return new FoamEnds.Placed(Shares.stack(panel, zone), depth);
                };
        for (FoamEnds.Piece piece : FoamEnds.of(grid, placed)) {
            lengths.merge(
                    new Shares.End(piece.skin(), held.get(piece.triangle()), 0),
                    Turned.length(grid, piece.edge()),
                    Double::sum);
        }
        List<Shares.End> ends = new ArrayList<>();
        lengths.forEach((end, length) -> ends.add(new Shares.End(end.skin(), end.zones(), length)));
        return ends;
    }
}
