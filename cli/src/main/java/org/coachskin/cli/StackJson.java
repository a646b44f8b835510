package org.coachskin.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Ply;
import org.coachskin.laminate.PlyStrength;
import org.coachskin.laminate.Sym3;
import org.coachskin.material.Foam;
import org.coachskin.material.Strength;

/** A stack and what it is made of, as JSON. */
final class StackJson {

    private StackJson() {}

    /** Returns the layers, inside to outside. */
    static List<Object> layers(Laminate laminate) {
        List<Object> layers = new ArrayList<>();
        for (Layer layer : laminate.layers()) {
            Map<String, Object> json = new LinkedHashMap<>();
            if (layer instanceof Layer.Laid laid) {
                json.put("layer", "ply");
                json.put("angle", laid.angle());
                json.putAll(ply(laid.ply()));
            } else if (layer instanceof Layer.SealCoat coat) {
                json.put("layer", "seal coat");
                json.putAll(ply(coat.resin()));
            } else if (layer instanceof Layer.Core core) {
                json.put("layer", "foam");
                json.put("thickness", core.thickness());
                json.putAll(foam(core.foam()));
            }
            layers.add(json);
        }
        return layers;
    }

    static Map<String, Object> foam(Foam foam) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("name", foam.name());
        row.put("source", Json.source(foam.source()));
        row.put("density", foam.density());
        row.put("densitySpread", foam.densitySpread());
        row.put("eInPlane", foam.eInPlane());
        row.put("eThrough", foam.eThrough());
        row.put("g", foam.g());
        row.put("modulusSpread", foam.modulusSpread());
        row.put("nu", foam.nu());
        row.put("shear", strength(foam.shear()));
        row.put("crush", strength(foam.crush()));
        row.put("tension", strength(foam.tension()));
        row.put("expansion", foam.expansion());
        return row;
    }

    private static Map<String, Object> ply(Ply ply) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("name", ply.name());
        row.put("source", Json.source(ply.source()));
        row.put("thickness", ply.thickness());
        row.put("density", ply.density());
        row.put("e1", ply.e1());
        row.put("e2", ply.e2());
        row.put("nu12", ply.nu12());
        row.put("g12", ply.g12());
        row.put("g13", ply.g13());
        row.put("g23", ply.g23());
        row.put("alpha1", ply.alpha1());
        row.put("alpha2", ply.alpha2());
        PlyStrength strength = ply.strength();
        row.put("tension1", strength(strength.tension1()));
        row.put("compression1", strength(strength.compression1()));
        row.put("tension2", strength(strength.tension2()));
        row.put("compression2", strength(strength.compression2()));
        row.put("shear12", strength(strength.shear12()));
        return row;
    }

    private static Map<String, Object> strength(Strength strength) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("value", strength.value());
        row.put("level", strength.level().name().toLowerCase(Locale.ROOT));
        row.put("event", strength.event().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        row.put("source", Json.source(strength.source()));
        return row;
    }

    /** Returns the matrix by rows. */
    static List<Object> matrix(Sym3 m) {
        return List.of(
                List.of(m.m11(), m.m12(), m.m16()),
                List.of(m.m12(), m.m22(), m.m26()),
                List.of(m.m16(), m.m26(), m.m66()));
    }
}
