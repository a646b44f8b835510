package org.coachskin.reference;

import java.util.List;
import org.coachskin.Source;
import org.coachskin.laminate.Ply;
import org.coachskin.laminate.WovenPly;
import org.coachskin.material.Cloth;
import org.coachskin.material.Fibre;
import org.coachskin.material.Resin;
import org.coachskin.material.Weave;

/** A published table about materials; our values are worked out when it is made. */
abstract class MaterialTable extends WorkedOutTable {

    MaterialTable(String work) {
        super("Material", "material/" + work + ".csv");
    }

    /** Returns an isotropic fibre or, with other constants, the general one. */
    static Fibre fibre(
            double e1, double e2, double g12, double nu12, double nu23, double rho, double alpha) {
        return new Fibre(
                "fibre",
                e1,
                e2,
                g12,
                nu12,
                nu23,
                rho,
                alpha,
                alpha,
                FailureTable.strength(1),
                Source.YOURS);
    }

    static Resin resin(double e, double nu, double density, double expansion) {
        return new Resin(
                "resin",
                Resin.Kind.EPOXY,
                e,
                nu,
                density,
                FailureTable.strength(1),
                0.03,
                expansion,
                340,
                0,
                0,
                Source.YOURS);
    }

    /** Returns a ply all of whose tows run straight along 1. */
    static Ply unidirectional(Fibre fibre, Resin resin, double share, double voids) {
        Cloth cloth =
                new Cloth(
                        "straight tows",
                        Weave.STITCHED,
                        fibre,
                        0.3,
                        1,
                        1,
                        List.of(),
                        0,
                        Source.YOURS);
        return WovenPly.of(cloth, resin, share, voids);
    }

    /** Returns the volume share of the fibre in a ply of {@link #unidirectional}. */
    static double volumeShare(Ply ply, Fibre fibre) {
        return 0.3 / fibre.density() / ply.thickness();
    }

    /** Returns the share by weight of a volume share without voids. */
    static double share(double volume, Fibre fibre, Resin resin) {
        return volume
                * fibre.density()
                / (volume * fibre.density() + (1 - volume) * resin.density());
    }
}
