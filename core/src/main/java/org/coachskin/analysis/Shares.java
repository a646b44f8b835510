package org.coachskin.analysis;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.panel.Bevels;
import org.coachskin.panel.Height;
import org.coachskin.panel.Panel;
import org.coachskin.panel.TurnedEdge;

/**
 * How much of a panel lies in which of its zones, as its weight is counted.
 *
 * @param parts all of the panel, in parts that the same zones hold
 * @param hems skins turned round raw edges of the foam
 * @param ends skins that close the foam where it ends at bare laminate
 */
public record Shares(List<Part> parts, List<Hem> hems, List<End> ends) {

    /** Copies the lists. */
    public Shares {
        parts = List.copyOf(parts);
        hems = List.copyOf(hems);
        ends = List.copyOf(ends);
    }

    /**
     * A part of the panel.
     *
     * @param zones that hold it, by their numbers upward; the last one decides what lies there
     * @param area [m^2]
     */
    public record Part(List<Integer> zones, double area) {
        /** Copies the list. */
        public Part {
            zones = List.copyOf(zones);
        }

        /** Returns the zone that decides; {@link Field.Triangle#NONE} outside of all. */
        public int decides() {
            return Shares.decides(zones);
        }
    }

    /**
     * A skin turned round an edge that foam comes to.
     *
     * @param edge which
     * @param zone that decides there; {@link Field.Triangle#NONE} outside of all
     * @param length of it [m]
     */
    public record Hem(TurnedEdge edge, int zone, double length) {
        /** Returns how much of a layer is turned in {@code panel}, its overlap counted [m^2]. */
        public double area(Panel panel, Layer layer) {
            return length * TurnedEdge.reach(stack(panel, zone), layer);
        }
    }

    /**
     * A skin that comes down over the end of the foam, as at a lip: all its plies, over the foam's
     * thickness.
     *
     * @param skin which one; the other runs on
     * @param zones that hold the place right beside it where there is foam, by their numbers upward
     * @param length of it [m]
     */
    public record End(Height skin, List<Integer> zones, double length) {
        /** Copies the list. */
        public End {
            zones = List.copyOf(zones);
        }

        /** Returns the zone that decides; {@link Field.Triangle#NONE} outside of all. */
        public int decides() {
            return Shares.decides(zones);
        }

        /** Returns how much of each ply comes down in {@code panel} [m^2]. */
        public double area(Panel panel) {
            return length * stack(panel, decides()).foamThickness();
        }
    }

    /** Returns which of the zones that hold a place decides there. */
    public static int decides(List<Integer> zones) {
        return zones.isEmpty() ? Field.Triangle.NONE : zones.get(zones.size() - 1);
    }

    /** Returns a panel of one stack. */
    static Shares plain(Panel panel) {
        return new Shares(List.of(new Part(List.of(), panel.area())), List.of(), List.of());
    }

    /**
     * Returns how much of each layer there is in {@code panel} [m^2], bevels and what closes the
     * foam counted; layers that are equal in everything are one.
     */
    public Map<Layer, Double> areas(Panel panel) {
        Map<Layer, Double> areas = new LinkedHashMap<>();
        for (Part part : parts) {
            for (Layer layer : stack(panel, part.decides()).layers()) {
                areas.merge(layer, part.area(), Double::sum);
            }
        }
        for (Hem hem : hems) {
            Laminate stack = stack(panel, hem.zone());
            for (Layer layer : hem.edge().layers(stack)) {
                areas.merge(layer, hem.area(panel, layer), Double::sum);
            }
        }
        for (End end : ends) {
            for (Layer layer : end.skin().skin(stack(panel, end.decides()))) {
                areas.merge(layer, end.area(panel), Double::sum);
            }
        }
        Bevels.addAreas(panel, areas);
        return areas;
    }

    /** Returns the stack of a zone, of the panel itself for {@link Field.Triangle#NONE}. */
    public static Laminate stack(Panel panel, int zone) {
        return zone == Field.Triangle.NONE ? panel.laminate() : panel.zones().get(zone).laminate();
    }
}
