package org.coachskin.laminate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.coachskin.material.Cloth;
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
