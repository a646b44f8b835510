package org.coachskin.check;

import java.util.Map;
import java.util.Optional;
import org.coachskin.analysis.Shares;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Ply;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.Foam;

/**
 * What a whole panel weighs, by kind: zones and their bevels, openings, skins turned round edges
 * and skins that close the foam at a lip counted, filler, paint and fittings not.
 *
 * @param glass dry cloth [kg]
 * @param resin resin in the cloth [kg]
 * @param sealCoat resin on the cut foam [kg]
 * @param foam of the panel's own kind and density [kg]
 * @param inserts other foam and solid inserts of zones [kg]
 * @param given plies given outright, glass and resin together [kg]
 */
public record Weights(
        double glass, double resin, double sealCoat, double foam, double inserts, double given) {

    /** Returns the sum [kg]. */
    public double total() {
        return glass + resin + sealCoat + foam + inserts + given;
    }

    /** Returns how much of a job's panel lies in which zone, as its weight is counted. */
    public static Shares shares(Job job) {
        return new Solvers(true, false).of(job).shares(job.panel());
    }

    /** Returns the weights of a job's panel. */
    public static Weights of(Job job) {
        Map<Ply, Double> cloth = job.cloth();
        Optional<Foam> own = Optional.ofNullable(job.schedule().board()).map(Schedule.Board::foam);
        double glass = 0;
        double resin = 0;
        double coat = 0;
        double foam = 0;
        double inserts = 0;
        double given = 0;
        Map<Layer, Double> areas = shares(job).areas(job.panel());
        for (Map.Entry<Layer, Double> entry : areas.entrySet()) {
            Layer layer = entry.getKey();
            double mass = entry.getValue() * layer.thickness() * layer.density();
            if (layer instanceof Layer.Core core) {
                boolean itsOwn = own.filter(core.foam()::equals).isPresent();
                foam += itsOwn ? mass : 0;
                inserts += itsOwn ? 0 : mass;
            } else if (layer instanceof Layer.Laid laid) {
                Double dry = cloth.get(laid.ply());
                glass += dry == null ? 0 : entry.getValue() * dry;
                resin += dry == null ? 0 : mass - entry.getValue() * dry;
                given += dry == null ? mass : 0;
            } else {
                coat += mass;
            }
        }
        return new Weights(glass, resin, coat, foam, inserts, given);
    }
}
