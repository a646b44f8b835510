package org.coachskin.panel;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.coachskin.Source;
import org.coachskin.Table;
import org.coachskin.laminate.Patch;

/** Who and what presses on a panel, by the names a maker uses. */
public final class EverydayLoads {

    private static final double GRAVITY = 9.81;

    private static final Table WIND = Table.read(EverydayLoads.class, "wind.csv");

    private static final List<Named> KNOWN =
            known(Table.read(EverydayLoads.class, "everyday-loads.csv"));

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

    private static List<Named> known(Table table) {
        return IntStream.range(0, table.size()).mapToObj(row -> named(table, row)).toList();
    }

    private static Named named(Table table, int row) {
        double x = table.number(row, "x");
        return new Named(
                table.text(row, "name"),
                table.number(row, "force"),
                table.text(row, "patch").equals("disc")
                        ? new Patch.Disc(x)
                        : new Patch.Rectangle(x, table.number(row, "y")),
                LoadCase.Kind.valueOf(table.text(row, "kind").toUpperCase(Locale.ROOT)),
                table.text(row, "remark"),
                table.source(row));
    }

    /**
     * How the air pulls on a panel whose front edge leads.
     *
     * @param density of the air [kg/m^3]
     * @param gust against the road speed [m/s]
     * @param suction net of inside and outside, in dynamic pressures [-]
     * @param frontSuction the same on the strip behind the front edge [-]
     * @param front depth of that strip, as a share of the length [-]
     * @param remark what stands behind the figures
     * @param source where they come from
     */
    public record Wind(
            double density,
            double gust,
            double suction,
            double frontSuction,
            double front,
            String remark,
            Source source) {}

    /** Returns the figures behind {@link #wind}. */
    public static Wind windFigures() {
        return new Wind(
                WIND.number(0, "air"),
                WIND.number(0, "gust"),
                WIND.number(0, "suction"),
                WIND.number(0, "suction in front"),
                WIND.number(0, "front"),
                WIND.text(0, "remark"),
                WIND.source(0));
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
     * Returns suction by road speed and a gust on a panel whose front edge leads: over the whole
     * panel, and more of it on a strip behind that edge; judged both ways.
     *
     * @param speed road speed [m/s]
     * @param length of the panel, front to rear [m]
     */
    public static LoadCase wind(double speed, double length) {
        Wind wind = windFigures();
        double air = speed + wind.gust();
        double dynamic = wind.density() * air * air / 2;
        double more = dynamic * (wind.frontSuction() - wind.suction());
        return new LoadCase(
                "wind",
                List.of(
                        new Load.Pressure(-dynamic * wind.suction()),
                        new Load.StripPressure(-more, 0, wind.front() * length)),
                List.of(),
                LoadCase.Kind.SPREAD,
                true,
                false);
    }

    /**
     * Returns the road speed at which {@link #wind} without its gust turns an unlatched lid about
     * hinges at its rear edge, flat and even in weight [m/s].
     *
     * @param mass of the panel per area [kg/m^2]
     */
    public static double liftOffSpeed(double mass) {
        Wind wind = windFigures();
        double more = wind.frontSuction() - wind.suction();
        // Moments about the rear edge, per dynamic pressure, width and length squared.
        double lift = wind.suction() / 2 + more * wind.front() * (1 - wind.front() / 2);
        return Math.sqrt(mass * GRAVITY / (lift * wind.density()));
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
                List.of(new Load.OwnWeight(GRAVITY)),
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
                List.of(new Load.Press(mass * GRAVITY, patch, x, y)),
                List.of(),
                LoadCase.Kind.SPREAD,
                false,
                stays);
    }
}
