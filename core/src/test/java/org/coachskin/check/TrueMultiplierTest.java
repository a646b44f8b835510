package org.coachskin.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.coachskin.TestSchedules;
import org.coachskin.failure.Mode;
import org.coachskin.laminate.Patch;
import org.coachskin.panel.Crown;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Support;
import org.junit.jupiter.api.Test;

/** A reserve is how much the load may grow, with what stands left as it is, in every mode. */
class TrueMultiplierTest {

    private static final PanelCheck CHECK = new PanelCheck();

    private static Job roof(
            int outside, double foam, int inside, double heat, double times, boolean reverses) {
        List<Load> standing = List.of(new Load.Heat(heat, heat / 4));
        Load knee = new Load.Press(400 * times, new Patch.Disc(0.07), 0.4, 0.3);
        Load snow = new Load.Pressure(800 * times);
        List<LoadCase> loads =
                List.of(
                        new LoadCase(
                                "knee",
                                List.of(knee),
                                standing,
                                LoadCase.Kind.PERSON,
                                reverses,
                                false),
                        new LoadCase(
                                "snow",
                                List.of(snow),
                                standing,
                                LoadCase.Kind.SPREAD,
                                reverses,
                                true));
        return Job.of(
                "roof",
                0.9,
                0.6,
                Crown.ofRise(0.03, 0.9, 0.02, 0.6),
                new Support.WholeRim(),
                TestSchedules.sandwich(outside, foam, inside),
                loads,
                Limits.STANDARD);
    }

    private static Margin of(Job job, Mode mode) {
        return CHECK.margins(job).stream().filter(m -> m.mode() == mode).findFirst().orElseThrow();
    }

    @Property(tries = 4, seed = "51")
    void theLoadTimesItsReserveHasTheReserveOne(
            @ForAll @IntRange(min = 1, max = 3) int outside,
            @ForAll @IntRange(min = 6, max = 25) int foam,
            @ForAll @IntRange(min = 1, max = 2) int inside,
            @ForAll @DoubleRange(min = -20, max = 30) double heat) {
        for (Margin margin : CHECK.margins(roof(outside, foam * 1e-3, inside, heat, 1, true))) {
            double reserve = margin.reserve();
            if (reserve > 1e-3 && reserve < 1e4) {
                Margin there =
                        of(roof(outside, foam * 1e-3, inside, heat, reserve, true), margin.mode());
                assertEquals(1, there.reserve(), 1e-6, margin.mode().words());
            }
        }
    }

    @Test
    void everyModeThatALoadCanReachIsAmongThem() {
        Set<Mode> met = EnumSet.of(Mode.FELT_STIFFNESS);
        for (Margin margin : CHECK.margins(roof(1, 0.012, 1, 20, 1, true))) {
            assertTrue(margin.reserve() > 1e-3, margin.mode().words());
            met.add(margin.mode());
        }
        // A felt stiffness is a stiffness: no load moves it. The rest is held by the property.
        Set<Mode> left = EnumSet.complementOf(EnumSet.copyOf(met));
        left.removeAll(EnumSet.of(Mode.PLY_SHEARED, Mode.PLY_PULLED, Mode.PLY_CRUSHED));
        // Only fittings have these; a seal that lets go is not proportional to its load.
        left.removeAll(EnumSet.of(Mode.PUNCHING, Mode.SEAL_GAP));
        // Only a foam strip has this: see StripEdgesTest.
        left.remove(Mode.KINK);
        assertEquals(Set.of(), left);
    }

    @Test
    void whatStandsMovesTheModesThatBreakAndIsNotMultiplied() {
        Mode mode = Mode.PLY_CRUSHED;
        double cool = of(roof(2, 0.012, 1, 0, 1, false), mode).multiplier();
        double warm = of(roof(2, 0.012, 1, 30, 1, false), mode).multiplier();
        assertTrue(Math.abs(cool - warm) > 1e-3 * cool, cool + " " + warm);
        double half = of(roof(2, 0.012, 1, 30, 0.5, false), mode).multiplier();
        assertEquals(2 * warm, half, 1e-6 * half);
    }
}
