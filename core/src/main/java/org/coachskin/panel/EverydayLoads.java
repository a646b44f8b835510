package org.coachskin.panel;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.coachskin.Source;
import org.coachskin.Standing;
import org.coachskin.laminate.Patch;

/** Who and what presses on a panel, by the names a maker uses. */
public final class EverydayLoads {

    private static final double AIR = 1.225;

    /** Gust against the road speed [m/s] [common practice, no source]. */
    private static final double GUST = 50 / 3.6;

    private static final Source TRADE =
            new Source("usual in the trade", "", Standing.COMMON_PRACTICE);

    private static final List<Named> KNOWN =
            List.of(
                    new Named(
                            "thumb",
                            100,
                            new Patch.Disc(0.020),
                            LoadCase.Kind.TOUCH,
                            "a firm poke; pushes of one hand were measured at 107 to 136 N (Human Factors 50, 2008, p. 227, table 2)",
                            TRADE),
                    new Named(
                            "palm",
                            250,
                            new Patch.Rectangle(0.100, 0.080),
                            LoadCase.Kind.FELT,
                            "closing or polishing; 200 N is mild, 400 N a hard lean on a straight arm",
                            TRADE),
                    new Named(
                            "elbow",
                            200,
                            new Patch.Disc(0.030),
                            LoadCase.Kind.TOUCH,
                            "leaning on an elbow",
                            TRADE),
                    new Named(
                            "hip",
                            500,
                            new Patch.Rectangle(0.250, 0.100),
                            LoadCase.Kind.TOUCH,
                            "leaning with the hip",
                            TRADE),
                    new Named(
                            "knee",
                            500,
                            new Patch.Disc(0.070),
                            LoadCase.Kind.PERSON,
                            "half of a person on one knee",
                            TRADE),
                    new Named(
                            "seated",
                            1500,
                            new Patch.Rectangle(0.300, 0.250),
                            LoadCase.Kind.PERSON,
                            "1000 N, times 1.5 for sitting down hard",
                            TRADE),
                    new Named(
                            "foot",
                            1300,
                            new Patch.Rectangle(0.100, 0.250),
                            LoadCase.Kind.PERSON,
                            "1000 N, times 1.3, on a flat shoe; 1.0 kN is the load of EN 1991-1-1 for roof maintenance",
                            new Source(
                                    "EN 1991-1-1, concentrated load on roofs",
                                    "",
                                    Standing.FROM_MEMORY)),
                    new Named(
                            "heel",
                            1000,
                            new Patch.Rectangle(0.050, 0.050),
                            LoadCase.Kind.PERSON,
                            "all on a heel or a toe",
                            new Source(
                                    "EN 1991-1-1, concentrated load on roofs",
                                    "",
                                    Standing.FROM_MEMORY)));

    private EverydayLoads() {}

    /**
     * A load with a name.
     *
     * @param name what it is called
     * @param force [N]
     * @param patch what it presses on
     * @param kind what sort of load it is
     * @param remark what stands behind the figure
     * @param source where the figure comes from
     */
    public record Named(
            String name,
            double force,
            Patch patch,
            LoadCase.Kind kind,
            String remark,
            Source source) {

        /** Returns the load case of this load with its patch centred at a place [m]. */
        public LoadCase at(double x, double y) {
            return LoadCase.of(name, kind, new Load.Press(force, patch, x, y));
        }
    }

    /** Returns the loads that press on a patch. */
    public static List<Named> known() {
        return KNOWN;
    }

    /** Returns the load of that name. */
    public static Optional<Named> named(String name) {
        String wanted = name.toLowerCase(Locale.ROOT);
        return KNOWN.stream().filter(load -> load.name().equals(wanted)).findFirst();
    }

    /**
     * Returns suction by road speed: once the dynamic pressure of road speed and a gust of 50 km/h
     * [common practice, no source]; judged both ways.
     *
     * @param speed road speed [m/s]
     */
    public static LoadCase wind(double speed) {
        double air = speed + GUST;
        double pressure = AIR * air * air / 2;
        return new LoadCase(
                "wind",
                List.of(new Load.Pressure(-pressure)),
                List.of(),
                LoadCase.Kind.SPREAD,
                true,
                false);
    }

    /**
     * Returns snow that lies for weeks.
     *
     * @param pressure [Pa]; 500 to 1500 is usual
     */
    public static LoadCase snow(double pressure) {
        return new LoadCase(
                "snow",
                List.of(new Load.Pressure(pressure)),
                List.of(),
                LoadCase.Kind.SPREAD,
                false,
                true);
    }

    /** Returns the weight of a panel that lies flat. */
    public static LoadCase ownWeight() {
        return new LoadCase(
                "own weight",
                List.of(new Load.OwnWeight(9.81)),
                List.of(),
                LoadCase.Kind.SPREAD,
                false,
                true);
    }

    /**
     * Returns luggage spread over a patch.
     *
     * @param mass [kg]
     * @param stays whether it lies there for weeks
     */
    public static LoadCase luggage(double mass, Patch patch, double x, double y, boolean stays) {
        return new LoadCase(
                "luggage",
                List.of(new Load.Press(mass * 9.81, patch, x, y)),
                List.of(),
                LoadCase.Kind.SPREAD,
                false,
                stays);
    }
}
