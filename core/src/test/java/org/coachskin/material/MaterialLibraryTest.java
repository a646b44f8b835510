package org.coachskin.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
    void theDensityLawMeetsTheModuliOfOneMakersPvc() {
        Foam light = TABLES.foam(Foam.Kind.PVC, 60).orElseThrow();
        for (double density : new double[] {48, 60, 100, 130}) {
            Foam row = TABLES.foam(Foam.Kind.PVC, density).orElseThrow();
            Foam moved = FoamLaw.atDensity(light, density);
            assertEquals(row.g(), moved.g(), 0.08 * row.g(), "G at " + density);
            assertEquals(
                    row.eThrough(), moved.eThrough(), 0.08 * row.eThrough(), "E at " + density);
        }
    }

    @Test
    void foamMoreThanAThirdBeyondTheTableIsNotGuessed() {
        assertTrue(TABLES.foam(Foam.Kind.POLYURETHANE, 22).isPresent());
        assertFalse(TABLES.foam(Foam.Kind.POLYURETHANE, 21).isPresent());
        assertTrue(TABLES.foam(Foam.Kind.PVC, 173).isPresent());
        assertFalse(TABLES.foam(Foam.Kind.PVC, 174).isPresent());
        assertFalse(TABLES.foam(Foam.Kind.OTHER, 64).isPresent());
    }
}
