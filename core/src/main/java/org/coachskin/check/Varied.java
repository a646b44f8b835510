package org.coachskin.check;

import java.util.List;
import java.util.function.UnaryOperator;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Ply;
import org.coachskin.material.Foam;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Zone;

/** A stack in which one thing is more or less and everything else the same. */
final class Varied {

    private Varied() {}

    /** Returns the panel with every one of its stacks changed. */
    static Panel panel(Panel panel, UnaryOperator<Laminate> change) {
        return panel.withLaminate(change.apply(panel.laminate()))
                .withZones(
                        panel.zones().stream()
                                .map(
                                        zone ->
                                                new Zone(
                                                        zone.name(),
                                                        zone.region(),
                                                        change.apply(zone.laminate()),
                                                        zone.depth()))
                                .toList());
    }

    /** Returns the stack with the shear modulus of its foam times {@code factor}. */
    static Laminate foamShear(Laminate laminate, double factor) {
        return foam(laminate, f -> foam(f, f.g() * factor, 1));
    }

    /** Returns the stack with every strength of plies and foam times {@code factor}. */
    static Laminate strengths(Laminate laminate, double factor) {
        List<Layer> layers =
                foam(laminate, f -> foam(f, f.g(), factor)).layers().stream()
                        .map(
                                layer ->
                                        layer instanceof Layer.Laid laid
                                                ? new Layer.Laid(
                                                        stronger(laid.ply(), factor), laid.angle())
                                                : layer)
                        .toList();
        return new Laminate(layers);
    }

    private static Ply stronger(Ply ply, double factor) {
        return ply.withStrength(ply.strength().times(factor));
    }

    private static Laminate foam(Laminate laminate, UnaryOperator<Foam> change) {
        List<Layer> layers =
                laminate.layers().stream()
                        .map(
                                layer ->
                                        layer instanceof Layer.Core core
                                                ? new Layer.Core(
                                                        change.apply(core.foam()), core.thickness())
                                                : layer)
                        .toList();
        return new Laminate(layers);
    }

    private static Foam foam(Foam f, double g, double strength) {
        return new Foam(
                f.name(),
                f.kind(),
                f.density(),
                f.eInPlane(),
                f.eThrough(),
                g,
                f.nu(),
                f.shear().times(strength),
                f.crush().times(strength),
                f.tension().times(strength),
                f.expansion(),
                f.densitySpread(),
                f.modulusSpread(),
                f.source());
    }
}
