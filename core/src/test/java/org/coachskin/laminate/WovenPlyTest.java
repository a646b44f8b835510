package org.coachskin.laminate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.coachskin.material.Cloth;
import org.coachskin.material.Fibre;
import org.coachskin.material.MaterialLibrary;
import org.coachskin.material.Resin;
import org.coachskin.material.Strength;
import org.coachskin.material.Weave;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WovenPlyTest {

    private static final MaterialLibrary TABLES = MaterialLibrary.standard();
    private static final Resin EPOXY = TABLES.resin("epoxy").orElseThrow();

    @ParameterizedTest
    @ValueSource(doubles = {0.35, 0.5, 0.63})
    void thicknessTimesDensityIsClothPlusResin(double share) {
        Cloth cloth = cloth(Weave.TWILL, 4, 0.5);
        Ply ply = WovenPly.of(cloth, EPOXY, share, 0.03);
        assertEquals(0.3 / share, ply.thickness() * ply.density(), 1e-12);
        Ply sound = WovenPly.of(cloth, EPOXY, share, 0);
        assertEquals(ply.thickness() * 0.97, sound.thickness(), 1e-12);
    }

    @Test
    void theMoreATowUndulatesTheSofterTheCloth() {
        double straight = ply(Weave.STITCHED, 1, 0.5).e1();
        double satin = ply(Weave.SATIN, 8, 0.5).e1();
        double twill = ply(Weave.TWILL, 4, 0.5).e1();
        double plain = ply(Weave.PLAIN, 2, 0.5).e1();
        assertTrue(straight > satin && satin > twill && twill > plain);
        assertTrue(plain > 0.85 * straight);
    }

    @Test
    void moreGlassIsStifferAndStronger() {
        Cloth cloth = cloth(Weave.PLAIN, 2, 0.5);
        Ply lean = WovenPly.of(cloth, EPOXY, 0.55, 0);
        Ply rich = WovenPly.of(cloth, EPOXY, 0.45, 0);
        assertTrue(lean.e1() > rich.e1() && lean.g12() > rich.g12());
        assertTrue(lean.strength().tension1().value() > rich.strength().tension1().value());
        assertTrue(lean.thickness() < rich.thickness());
    }

    @Test
    void exchangingWarpAndWeftTurnsThePly() {
        Ply a = ply(Weave.PLAIN, 2, 0.6);
        Ply b = ply(Weave.PLAIN, 2, 0.4);
        assertEquals(a.e1(), b.e2(), 1e-6 * a.e1());
        assertEquals(a.e2(), b.e1(), 1e-6 * a.e2());
        assertEquals(a.nu12() * a.e2() / a.e1(), b.nu12(), 1e-12);
        assertEquals(a.g12(), b.g12(), 1);
        assertEquals(a.g13(), b.g23(), 1);
        assertEquals(a.alpha1(), b.alpha2(), 1e-15);
        assertTrue(a.e1() > a.e2() && a.alpha1() < a.alpha2());
    }

    @Test
    void matIsTheSameInEveryDirection() {
        Ply mat =
                WovenPly.of(
                        TABLES.cloth("mat glass 458 g/m^2").orElseThrow(),
                        TABLES.resin("polyester").orElseThrow(),
                        0.3,
                        0.02);
        Sym3 along = mat.stiffness(0);
        Sym3 turned = mat.stiffness(0.4);
        assertEquals(along.m11(), turned.m11(), 1e-9 * along.m11());
        assertEquals(along.m12(), turned.m12(), 1e-9 * along.m11());
        assertEquals(0, turned.m16(), 1e-9 * along.m11());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.2, 0.35, 0.5, 0.65})
    void aTowGrowsAsRosenAndHashinPrint(double vf) {
        Fibre glass = TABLES.fibre("glass").orElseThrow();
        TowExpansion ours = TowExpansion.of(glass, EPOXY, vf, EPOXY.e());

        // Isotropic fibre, in engineering constants, with the full E1 and nu12 of the cylinders.
        double vm = 1 - vf;
        double nf = glass.nu12();
        double nm = EPOXY.nu();
        double kf = glass.e1() / (2 * (1 + nf) * (1 - 2 * nf));
        double km = EPOXY.e() / (2 * (1 + nm) * (1 - 2 * nm));
        double gm = EPOXY.g();
        double k = km + vf / (1 / (kf - km) + vm / (km + gm));
        double soft = vm / kf + vf / km + 1 / gm;
        double e1 = vf * glass.e1() + vm * EPOXY.e() + 4 * vf * vm * (nf - nm) * (nf - nm) / soft;
        double nu = vf * nf + vm * nm + vf * vm * (nf - nm) * (1 / km - 1 / kf) / soft;
        double bulkF = 3 * (1 - 2 * nf) / glass.e1();
        double bulkM = 3 * (1 - 2 * nm) / EPOXY.e();
        double step = (glass.alpha1() - EPOXY.expansion()) / (bulkF - bulkM);
        double mean = vf * glass.alpha1() + vm * EPOXY.expansion();
        double bulk = vf * bulkF + vm * bulkM;
        double along = mean + step * (3 * (1 - 2 * nu) / e1 - bulk);
        double across = mean + step * (1.5 / k - 3 * (1 - 2 * nu) * nu / e1 - bulk);
        assertEquals(along, ours.along(), 1e-9 * along);
        assertEquals(across, ours.across(), 1e-9 * across);
        // Schapery's bound lies above.
        double energy = (1 + nf) * glass.alpha1() * vf + (1 + nm) * EPOXY.expansion() * vm;
        assertTrue(across < energy - along * (vf * nf + vm * nm));
    }

    @Test
    void aTowOfTheResinItselfGrowsAsTheResin() {
        Fibre glass = TABLES.fibre("glass").orElseThrow();
        Fibre same =
                new Fibre(
                        "resin",
                        EPOXY.e(),
                        EPOXY.e(),
                        EPOXY.g(),
                        EPOXY.nu(),
                        EPOXY.nu(),
                        EPOXY.density(),
                        EPOXY.expansion(),
                        EPOXY.expansion(),
                        glass.tension(),
                        glass.source());
        TowExpansion tow = TowExpansion.of(same, EPOXY, 0.4, EPOXY.e());
        assertEquals(EPOXY.expansion(), tow.along(), 1e-12);
        assertEquals(EPOXY.expansion(), tow.across(), 1e-12);
    }

    @Test
    void theMoreATowUndulatesTheMoreTheClothGrows() {
        double straight = ply(Weave.STITCHED, 1, 0.5).alpha1();
        double twill = ply(Weave.TWILL, 4, 0.5).alpha1();
        double plain = ply(Weave.PLAIN, 2, 0.5).alpha1();
        assertTrue(straight < twill && twill < plain && plain < 1.1 * straight);
    }

    @Test
    void strengthsAreTheRulesMinima() {
        // ISO 12215-5:2008, table C.4 a, at half glass by weight.
        PlyStrength strength = ply(Weave.TWILL, 4, 0.5).strength();
        assertEquals(197e6, strength.tension1().value(), 1);
        assertEquals(147e6, strength.compression2().value(), 1);
        assertEquals(78e6, strength.shear12().value(), 1);
        assertEquals(Strength.Level.MINIMUM, strength.tension2().level());
    }

    private static Ply ply(Weave weave, int floatLength, double warpShare) {
        return WovenPly.of(cloth(weave, floatLength, warpShare), EPOXY, 0.5, 0.02);
    }

    private static Cloth cloth(Weave weave, int floatLength, double warpShare) {
        Cloth twill = TABLES.cloth("twill glass 300 g/m^2").orElseThrow();
        return new Cloth(
                "cloth",
                weave,
                twill.fibre(),
                0.3,
                warpShare,
                floatLength,
                twill.widths(),
                0.03,
                twill.source());
    }
}
