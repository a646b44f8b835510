package org.coachskin.reference;

import java.util.List;
import org.coachskin.Source;
import org.coachskin.laminate.LayUp;
import org.coachskin.laminate.WovenPly;
import org.coachskin.material.Cloth;
import org.coachskin.material.Fibre;
import org.coachskin.material.MaterialLibrary;
import org.coachskin.material.Resin;
import org.coachskin.material.Weave;

class HandLayUpTest extends MaterialTable {

    private static final MaterialLibrary TABLES = MaterialLibrary.standard();
    private static final double INCH = 0.0254;

    HandLayUpTest() {
        super("hand-lay-up");
        put("rule: mat 0.30", perMass(0.30));
        put("rule: woven roving 0.48", perMass(0.48));
        put("rule: cloth 0.50", perMass(0.50));
        put("maker: 4 oz cloth", laid("plain glass 136 g/m^2") / INCH);
        put("maker: 6 oz cloth", laid("plain glass 203 g/m^2") / INCH);
        put("maker: 10 oz cloth", laid("plain glass 339 g/m^2") / INCH);
        richer("maker: 4 oz cloth", 0.136, 0.45, "0.45");
        richer("maker: 10 oz cloth", 0.339, 0.53, "0.53");
        put("yachts: woven roving", perHundredGrams("woven roving glass 610 g/m^2", 0.50));
        put("yachts: mat", perHundredGrams("mat glass 458 g/m^2", LayUp.USUAL.matShare()));
        put("boats: glass in mat", LayUp.USUAL.matShare());
        put("boats: glass in woven roving", LayUp.KNOWN.get(1).glassShare());
    }

    /** Thickness of 1 kg/m^2 of glass in the rule's resin, without voids [mm]. */
    private static double perMass(double share) {
        Fibre glass = fibre(72e9, 72e9, 30e9, 0.22, 0.22, 2560, 5e-6);
        Cloth cloth = new Cloth("glass", Weave.PLAIN, glass, 1, 0.5, 2, List.of(), 0, Source.YOURS);
        return WovenPly.of(cloth, resin(3e9, 0.35, 1200, 60e-6), share, 0).thickness() * 1e3;
    }

    /** Mass balance by hand at another share: glass of 2.56, epoxy of 1.15, 2 % of voids. */
    private void richer(String quantity, double mass, double share, String printed) {
        differs(
                quantity,
                (mass / 2560 + mass * (1 / share - 1) / 1150) / 0.98 / INCH,
                "mass balance at a glass share of "
                        + printed
                        + " by weight gives the print: the maker lays this cloth with another share than our 0.50.");
    }

    /** Thickness of a cloth of our table as we count it where nothing is said [m]. */
    private static double laid(String name) {
        LayUp usual = LayUp.USUAL;
        return WovenPly.of(cloth(name), resin("epoxy"), usual.glassShare(), usual.voids())
                .thickness();
    }

    private static double perHundredGrams(String name, double share) {
        Cloth cloth = cloth(name);
        double thickness =
                WovenPly.of(cloth, resin("polyester"), share, LayUp.USUAL.voids()).thickness();
        return thickness * 1e3 * 0.1 / cloth.arealMass();
    }

    private static Cloth cloth(String name) {
        return TABLES.cloth(name).orElseThrow();
    }

    private static Resin resin(String name) {
        return TABLES.resin(name).orElseThrow();
    }

    @Override
    String title() {
        return "Thickness and glass share of layers laid by hand: mass balance";
    }

    @Override
    String remark() {
        return "Ours holds 0.50 of glass by weight and 2 % of voids for every cloth where nothing is said; the maker prints no glass share.";
    }
}
