package org.coachskin.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.coachskin.analysis.CaseResponse;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Patch;
import org.coachskin.local.LocalEffect;
import org.coachskin.panel.Height;
import org.coachskin.panel.Panel;

/**
 * What a pad that holds inward and outward does beyond the layered theory for each newton it pushes
 * outward: it presses or pulls, evenly, the face it is fixed to, with what of it lies on the panel.
 * It does so under the load by what that adds to its force, and all the time by its force at rest.
 * The same for all load cases; pads that are alike share one cell.
 */
final class PadEffect implements Presser {

    private final PadPlace place;
    private final MethodError error;
    private final Laminate stack;
    private final Cell cell;

    private PadEffect(PadPlace place, Laminate stack, Cell cell, MethodError error) {
        this.place = place;
        this.stack = stack;
        this.cell = cell;
        this.error = error;
    }

    /** Returns the effects of all pads that press on a face of foam and skins. */
    static List<PadEffect> of(Panel panel) {
        Map<Alike, Cell> cells = new LinkedHashMap<>();
        List<PadEffect> effects = new ArrayList<>();
        for (PadPlace place : PadPlace.of(panel)) {
            boolean inside = place.pad().height() == Height.INSIDE;
            Laminate stack = panel.laminateAt(place.x(), place.y());
            Patch patch = new Patch.Rectangle(2 * place.halfX(), 2 * place.halfY());
            LocalEffect.Site site = Patches.site(panel, place.x(), place.y());
            Cell cell =
                    cells.computeIfAbsent(
                            new Alike(stack, patch, site, inside),
                            alike ->
                                    new Cell(
                                            inside
                                                    ? LocalEffect.inside(stack, patch, 1, site)
                                                    : LocalEffect.of(stack, patch, -1, site),
                                            site));
            MethodError error =
                    MethodError.under(
                            inside ? stack.turnedOver() : stack, patch, panel.crown(), site);
            effects.add(new PadEffect(place, stack, cell, error));
        }
        return effects;
    }

    /** What decides an effect. */
    private record Alike(Laminate stack, Patch patch, LocalEffect.Site site, boolean inside) {}

    @Override
    public List<Stations.Sample> felt(Stations.Station at) {
        return at.samples();
    }

    @Override
    public LocalEffect.Here at(double x, double y) {
        return cell.at(x - place.x(), y - place.y());
    }

    /** Within its reach and in its own stack. */
    @Override
    public boolean reaches(Laminate there, double x, double y) {
        double reach = Stations.REACH * stack.thickness();
        return there.equals(stack)
                && Math.abs(x - place.x()) < place.halfX() + reach
                && Math.abs(y - place.y()) < place.halfY() + reach;
    }

    @Override
    public MethodError error() {
        return error;
    }

    @Override
    public Times times(CaseResponse answer) {
        String pad = place.pad().name();
        double still = answer.atRest().outward(pad);
        double loaded = answer.held().outward(pad) - still;
        return new Times(loaded, answer.heldReversed().outward(pad) - still, still);
    }

    /** One cell, every place in it worked out once. */
    private static final class Cell {
        /** Places nearer than this are one place [m]. */
        private static final double SAME = 1e-9;

        private final LocalEffect effect;
        private final boolean alikeX;
        private final boolean alikeY;
        private final Map<Offset, LocalEffect.Here> known = new ConcurrentHashMap<>();

        Cell(LocalEffect effect, LocalEffect.Site site) {
            this.effect = effect;
            alikeX = site.left() == site.right();
            alikeY = site.front() == site.rear();
        }

        private record Offset(long x, long y) {}

        LocalEffect.Here at(double dx, double dy) {
            boolean inX = alikeX && dx < 0;
            boolean inY = alikeY && dy < 0;
            double x = inX ? -dx : dx;
            double y = inY ? -dy : dy;
            return known.computeIfAbsent(
                            new Offset(Math.round(x / SAME), Math.round(y / SAME)),
                            offset -> effect.at(offset.x() * SAME, offset.y() * SAME))
                    .image(inX, inY);
        }
    }
}
