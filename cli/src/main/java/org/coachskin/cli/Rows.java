package org.coachskin.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.coachskin.check.Margin;
import org.coachskin.check.Spread;
import org.coachskin.failure.Mode;
import org.jspecify.annotations.Nullable;

/** What a mode at its place is called on the page. */
final class Rows {

    private Rows() {}

    /**
     * Returns what happens and where, for example {@code outside skin crushed, under the thumb}.
     */
    static String words(Margin margin) {
        String place = margin.place().words();
        // Where no part of the panel is named the place is the whole of it.
        boolean part = margin.mode().question() != Mode.Question.STIFF;
        int comma = part ? place.indexOf(',') : -1;
        String subject = comma < 0 ? "" : place.substring(0, comma);
        String rest = comma < 0 ? ", " + place : place.substring(comma);
        Mode mode = margin.mode();
        String what =
                switch (mode) {
                    case PLY_PULLED, PLY_CRUSHED, PLY_SHEARED -> subject + " " + mode.words();
                    case BOND -> subject + " pulled off";
                    case WRINKLING -> subject + " wrinkling";
                    case SAG -> mode.words() + " under " + called(margin.loadCase());
                    default -> mode.words();
                };
        String words = what + rest;
        String load =
                margin.reversed() ? margin.loadCase() + " the other way round" : margin.loadCase();
        return words.contains(load) ? words : words + " (" + load + ")";
    }

    /** Returns the load with its article. */
    static String called(String load) {
        return (load.equals("own weight") ? "its " : "the ") + load;
    }

    /** Returns the load with its other article. */
    static String oneOf(String load) {
        return ("aeiou".indexOf(load.charAt(0)) < 0 ? "a " : "an ") + load;
    }

    /** Returns whether every word of {@code wanted} stands in the name of the row. */
    static boolean matches(Margin margin, String wanted) {
        String words = lower(words(margin) + " " + margin.mode().theory());
        return Arrays.stream(lower(wanted).split("[ ,]+", -1)).allMatch(words::contains);
    }

    private static String lower(String words) {
        return words.strip().toLowerCase(Locale.ROOT);
    }

    /** Returns how often the load fits, or the felt stiffness. */
    static String failsAt(Margin margin, Figures figures) {
        if (margin.mode() == Mode.FELT_STIFFNESS) {
            return figures.stiffness(margin.applied(), margin.allowable())
                    + " "
                    + figures.stiffnessName();
        }
        if (margin.mode() == Mode.SEAL_GAP) {
            return figures.movement(margin.applied());
        }
        return Figures.times(margin.multiplier()) + " x";
    }

    /** Returns what is wanted, in the same terms. */
    static String wanted(Margin margin, Figures figures) {
        if (margin.mode() == Mode.SEAL_GAP) {
            return figures.movement(margin.allowable());
        }
        return margin.mode() == Mode.FELT_STIFFNESS
                ? figures.stiffness(margin.allowable())
                : Figures.fixed(margin.factor(), 1) + " x";
    }

    /** Returns between which reserves eight panels in ten lie. */
    static String range(@Nullable Spread reserve) {
        // So large a reserve is rounding of a force that is not there.
        return reserve == null || reserve.nominal() > 99
                ? "-"
                : Figures.reserve(reserve.low()) + " to " + Figures.reserve(reserve.high());
    }

    /** Says which of these figures the elements are not within a hundredth of, and why. */
    static Optional<String> unsettled(List<Margin> shown) {
        String slow =
                shown.stream()
                        .filter(margin -> !margin.isSettled())
                        .map(margin -> words(margin) + ", " + Figures.percent(margin.meshError()))
                        .collect(Collectors.joining("; "));
        return slow.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "The elements are within 1 % but for "
                                + slow
                                + ". Right beside corners, fittings and patches stress settles slowly.");
    }
}
