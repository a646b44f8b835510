package org.coachskin.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

class MaterialLibraryTest {

    private static final MaterialLibrary TABLES = MaterialLibrary.standard();

    @Test
    void everyRowHasASource() {
        TABLES.cloths()
                .forEach(cloth -> assertFalse(cloth.source().work().isBlank(), cloth.name()));
        TABLES.resins()
                .forEach(resin -> assertFalse(resin.source().work().isBlank(), resin.name()));
        TABLES.foams().forEach(foam -> assertFalse(foam.source().work().isBlank(), foam.name()));
        Inserts.all()
                .forEach(insert -> assertFalse(insert.source().work().isBlank(), insert.name()));
    }

    @Test
    void clothIsFoundWhateverItsCaseAndSpacing() {
        assertTrue(TABLES.cloth("Twill  glass 300 G/m^2").isPresent());
        assertEquals("twill glass 300 g/m^2", TABLES.nearestCloth("twil glass 300 g/m^2"));
    }

    @Test
    void everyInsertBearsMoreThanTheHeaviestFoam() {
        Foam heaviest = TABLES.foam(Foam.Kind.POLYURETHANE, 320).orElseThrow();
        for (Foam insert : Inserts.all()) {
            assertTrue(insert.g() > heaviest.g(), insert.name());
            assertTrue(insert.eThrough() > heaviest.eThrough(), insert.name());
            assertTrue(insert.crush().value() >= heaviest.crush().value(), insert.name());
        }
        assertTrue(Inserts.named(" PLYWOOD ").isPresent());
        assertTrue(Inserts.named("cork").isEmpty());
    }

    @Test
    void theDensityLawMeetsTheUrethaneTable() {
        Foam middle = TABLES.foam(Foam.Kind.POLYURETHANE, 64).orElseThrow();
        for (Foam row : TABLES.foams()) {
            if (row.kind() == Foam.Kind.POLYURETHANE) {
                Foam moved = FoamLaw.atDensity(middle, row.density());
                assertEquals(
                        row.eThrough(),
                        moved.eThrough(),
                        0.15 * row.eThrough(),
                        "E at " + row.density());
                assertEquals(row.g(), moved.g(), 0.15 * row.g(), "G at " + row.density());
                assertEquals(
                        row.crush().value(),
                        moved.crush().value(),
                        0.15 * row.crush().value(),
                        "crush at " + row.density());
                assertEquals(
                        row.shear().value(),
                        moved.shear().value(),
                        0.15 * row.shear().value(),
                        "shear at " + row.density());
            }
        }
    }

    @Test
    void aRowOfTheTableComesBackAsItStands() {
        Foam foam = TABLES.foam(Foam.Kind.POLYURETHANE, 96).orElseThrow();
        assertEquals(22e6, foam.eThrough(), 1);
        assertEquals(8e6, foam.g(), 1);
    }

    @Test
    void denserFoamIsStifferAndStronger() {
        Foam before = TABLES.foam(Foam.Kind.POLYURETHANE, 25).orElseThrow();
        for (double density = 26; density < 350; density += 1) {
            Foam foam = TABLES.foam(Foam.Kind.POLYURETHANE, density).orElseThrow();
            assertTrue(foam.eThrough() > before.eThrough(), "E at " + density);
            assertTrue(foam.g() > before.g(), "G at " + density);
            assertTrue(foam.crush().value() > before.crush().value(), "crush at " + density);
            before = foam;
        }
    }

    @Test
    void theDensityLawFitsOneMakersPvc() {
        FoamLaw.Powers powers = FoamLaw.powers(Foam.Kind.PVC);
        fits("E", powers.moduli(), Foam::eThrough);
        fits("G", powers.moduli(), Foam::g);
        fits("shear", powers.shear(), foam -> foam.shear().value());
        fits("crush", powers.crush(), foam -> foam.crush().value());
        fits("tension", powers.tension(), foam -> foam.tension().value());
    }

    /** Every row of the sheet lies within 12 % of the line through the middle of all. */
    private static void fits(String what, double power, ToDoubleFunction<Foam> property) {
        List<Foam> sheet =
                TABLES.foams(Foam.Kind.PVC).stream().filter(foam -> foam.density() != 80).toList();
        assertEquals(6, sheet.size());
        double middle =
                sheet.stream()
                        .mapToDouble(
                                foam ->
                                        Math.log(property.applyAsDouble(foam))
                                                - power * Math.log(foam.density()))
                        .average()
                        .orElseThrow();
        for (Foam row : sheet) {
            double line = Math.exp(middle + power * Math.log(row.density()));
            double value = property.applyAsDouble(row);
            assertEquals(value, line, 0.12 * value, what + " at " + row.density());
        }
        Foam moved = FoamLaw.atDensity(sheet.get(0), 96);
        double ratio = property.applyAsDouble(moved) / property.applyAsDouble(sheet.get(0));
        assertEquals(Math.pow(2, power), ratio, 1e-12, what);
    }

    @Test
    void foamMoreThanAThirdBeyondTheTableIsNotGuessed() {
        assertTrue(TABLES.foam(Foam.Kind.POLYURETHANE, 22).isPresent());
        assertFalse(TABLES.foam(Foam.Kind.POLYURETHANE, 21).isPresent());
        assertTrue(TABLES.foam(Foam.Kind.PVC, 333).isPresent());
        assertFalse(TABLES.foam(Foam.Kind.PVC, 334).isPresent());
        assertFalse(TABLES.foam(Foam.Kind.OTHER, 64).isPresent());
    }
}
