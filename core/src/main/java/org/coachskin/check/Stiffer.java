package org.coachskin.check;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.material.Foam;

/** A stack whose foam shears less and is otherwise the same. */
final class Stiffer {

    private Stiffer() {}

    static Laminate foam(Laminate laminate, double factor) {
        List<Layer> layers = new ArrayList<>();
        for (Layer layer : laminate.layers()) {
            if (layer instanceof Layer.Core core) {
                Foam f = core.foam();
                Foam less =
                        new Foam(
                                f.name(),
                                f.kind(),
                                f.density(),
                                f.eInPlane(),
                                f.eThrough(),
                                f.g() * factor,
                                f.nu(),
                                f.shear(),
                                f.crush(),
                                f.tension(),
                                f.expansion(),
                                f.densitySpread(),
                                f.modulusSpread(),
                                f.source());
                layers.add(new Layer.Core(less, core.thickness()));
            } else {
                layers.add(layer);
            }
        }
        return new Laminate(layers);
    }
}
