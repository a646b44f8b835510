package org.coachskin.reinforce;

import java.util.List;
import java.util.Locale;
import org.coachskin.laminate.Schedule;

/** Sizes and plies as a maker says them. */
final class Words {

    private static final List<String> NUMBERS =
            List.of("one", "two", "three", "four", "five", "six");

    private Words() {}

    /** Returns a length, with a decimal only where it has one. */
    static String millimetres(double metres) {
        double mm = 1000 * metres;
        return (Math.abs(mm - Math.rint(mm)) < 0.05
                        ? String.format(Locale.ROOT, "%.0f", mm)
                        : String.format(Locale.ROOT, "%.1f", mm))
                + " mm";
    }

    /** Returns two lengths. */
    static String sizes(double one, double other) {
        return millimetres(one) + " x " + millimetres(other);
    }

    /** Returns a ply in short: {@code 300 g}. */
    static String cloth(Schedule.Item ply) {
        return ply instanceof Schedule.Wet wet
                ? Math.round(1000 * wet.cloth().arealMass()) + " g"
                : ((Schedule.Given) ply).ply().name();
    }

    /** Returns plies in words: {@code three 300 g plies}; a figure beside another misleads. */
    static String counted(int count, Schedule.Item ply) {
        return NUMBERS.get(count - 1)
                + " "
                + cloth(ply)
                + (count == 1 ? " ply" : " plies")
                + turned(ply);
    }

    /** Returns how a ply is turned: {@code " at 45 degrees"}; empty for one along the sides. */
    static String turned(Schedule.Item ply) {
        double degrees = StrictMath.toDegrees(ply.angle());
        return Math.abs(degrees) < 0.5
                ? ""
                : " at " + String.format(Locale.ROOT, "%.0f", degrees) + " degrees";
    }

    /** Returns how many plies lie over something. */
    static String over(List<Schedule.Item> over) {
        return over.isEmpty()
                ? "bare"
                : over.size() + (over.size() == 1 ? " ply over it" : " plies over it");
    }
}
