package org.coachskin.panel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.coachskin.laminate.Patch;
import org.junit.jupiter.api.Test;

class EverydayLoadsTest {

    @Test
    void windIsTheSuctionOfRoadSpeedAndGustTogetherTwiceThatBehindTheFrontEdge() {
        LoadCase wind = EverydayLoads.wind(90 / 3.6, 0.6);

        double air = 140 / 3.6;
        double suction = -1.225 * air * air / 2;
        Load.Pressure everywhere = (Load.Pressure) wind.loads().get(0);
        Load.StripPressure front = (Load.StripPressure) wind.loads().get(1);
        assertEquals(suction, everywhere.pressure(), 1e-12 * Math.abs(suction));
        assertEquals(2 * suction, everywhere.pressure() + front.pressure(), 1e-9);
        assertEquals(0, front.from());
        assertEquals(0.09, front.to(), 1e-12);
        assertTrue(wind.reverses());
        assertFalse(wind.stays());
    }

    @Test
    void theAirLiftsALidWhenItsMomentAboutTheRearEdgeBeatsThatOfTheWeight() {
        double length = 0.7;
        double mass = 4;
        double speed = EverydayLoads.liftOffSpeed(mass);

        // Without the gust; moments by many narrow strips.
        LoadCase wind = EverydayLoads.wind(speed - 50 / 3.6, length);
        double everywhere = ((Load.Pressure) wind.loads().get(0)).pressure();
        Load.StripPressure front = (Load.StripPressure) wind.loads().get(1);
        int strips = 100_000;
        double moment = 0;
        for (int i = 0; i < strips; i++) {
            double y = (i + 0.5) / strips * length;
            double pressure = everywhere + (y < front.to() ? front.pressure() : 0) + mass * 9.81;
            moment += pressure * (length - y) * length / strips;
        }
        assertEquals(0, moment, 1e-4 * mass * 9.81 * length * length);
        double uniform = Math.sqrt(2 * mass * 9.81 / 1.225);
        assertTrue(speed < uniform && speed > 0.85 * uniform);
    }

    @Test
    void everyFigureSaysWhereItComesFrom() {
        EverydayLoads.known().forEach(load -> assertFalse(load.source().work().isEmpty()));
        assertFalse(EverydayLoads.windFigures().source().work().isEmpty());
        assertEquals(8, EverydayLoads.known().size());
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
