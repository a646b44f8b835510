package org.coachskin.panel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.coachskin.laminate.Patch;
import org.junit.jupiter.api.Test;

class EverydayLoadsTest {

    @Test
    void windIsTheSuctionOfRoadSpeedAndGustTogether() {
        LoadCase wind = EverydayLoads.wind(90 / 3.6);

        double air = 140 / 3.6;
        double suction = -1.225 * air * air / 2;
        assertEquals(
                suction,
                ((Load.Pressure) wind.loads().get(0)).pressure(),
                1e-12 * Math.abs(suction));
        assertTrue(wind.reverses());
        assertFalse(wind.stays());
    }

    @Test
    void theThumbAndThePalmAreThoseThatLimitsAreMadeFor() {
        EverydayLoads.Named thumb = EverydayLoads.named("thumb").orElseThrow();
        EverydayLoads.Named palm = EverydayLoads.named("Palm").orElseThrow();

        assertEquals(100, thumb.force());
        assertEquals(new Patch.Disc(0.020), thumb.patch());
        assertEquals(250, palm.force());
        assertEquals(new Patch.Rectangle(0.100, 0.080), palm.patch());
        assertEquals(LoadCase.Kind.FELT, palm.kind());
    }

    @Test
    void whoeverStandsKneelsOrSitsCountsAsAPerson() {
        for (String name : new String[] {"knee", "seated", "foot", "heel"}) {
            assertEquals(
                    LoadCase.Kind.PERSON, EverydayLoads.named(name).orElseThrow().kind(), name);
        }
    }

    @Test
    void namesDoNotDependOnTheLocale() {
        Locale before = Locale.getDefault();
        Locale.setDefault(Locale.forLanguageTag("tr"));
        try {
            assertTrue(EverydayLoads.named("HIP").isPresent());
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void snowAndOwnWeightStayAndLuggageMay() {
        assertTrue(EverydayLoads.snow(1000).stays());
        assertTrue(EverydayLoads.ownWeight().stays());
        LoadCase luggage = EverydayLoads.luggage(25, new Patch.Disc(0.3), 0.4, 0.3, false);
        assertFalse(luggage.stays());
        assertEquals(25 * 9.81, ((Load.Press) luggage.loads().get(0)).force(), 1e-9);
    }
}
