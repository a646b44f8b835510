package org.coachskin.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.coachskin.check.Margin;
import org.coachskin.check.Spread;
import org.coachskin.check.Verdict;
import org.coachskin.failure.Mode;
import org.jspecify.annotations.Nullable;

/** What a mode at its place is called on the page. */
final class Rows {

    /** What is off by less is within a hundredth as it is printed [-]. */
    private static final double SLOW = 0.015;

    /** Rows that are named as not worked out within a hundredth. */
    private static final int NAMED = 3;

    private Rows() {}

    /**
     * Returns what happens and where, for example {@code outside skin crushed, under the thumb}.
     */
    static String words(Margin margin) {
        String place = margin.place().words();
        int comma = comma(margin);
        String words = what(margin) + (comma < 0 ? ", " + place : place.substring(comma));
        String load =
                margin.reversed() ? margin.loadCase() + " the other way round" : margin.loadCase();
        return words.contains(load) ? words : words + " (" + load + ")";
    }

    /** Returns what happens, for example {@code outside skin crushed}. */
    static String what(Margin margin) {
        int comma = comma(margin);
        String subject = comma < 0 ? "" : margin.place().words().substring(0, comma);
        Mode mode = margin.mode();
        return switch (mode) {
            case PLY_PULLED, PLY_CRUSHED, PLY_SHEARED, KINK -> subject + " " + mode.words();
            case BOND -> subject + " pulled off";
            case WRINKLING -> subject + " wrinkling";
            case SAG -> mode.words() + " under " + called(margin.loadCase());
            default -> mode.words();
        };
    }

    /** Where the words of a place pass from the part to the place; below 0 where none is named. */
    private static int comma(Margin margin) {
        return margin.mode().question() == Mode.Question.STIFF
                ? -1
                : margin.place().words().indexOf(',');
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

    /** Returns the felt stiffness beside the one that is wanted, without the unit. */
    static String felt(Verdict verdict, Figures figures) {
        double wanted = verdict.job().limits().feltStiffness();
        return verdict.felt().map(s -> figures.stiffness(s.nominal(), wanted)).orElse("-");
    }

    /** Returns between which reserves eight panels in ten lie. */
    static String range(@Nullable Spread reserve) {
        // So large a reserve is rounding of a force that is not there.
        return reserve == null || reserve.nominal() > 99
                ? "-"
                : Figures.reserve(reserve.low()) + " to " + Figures.reserve(reserve.high());
    }

    private static String astray(Margin margin) {
        return margin.meshError() < 1 ? Figures.percent(margin.meshError()) : "not settled";
    }

    /**
     * Says which of these rows are not worked out within a hundredth, and why.
     *
     * @param shown by reserve, the least first
     * @param all whether to name every one of them
     */
    static Optional<String> unsettled(List<Margin> shown, boolean all) {
        // So large a reserve is rounding of a force that is not there.
        List<Margin> slow =
                shown.stream().filter(m -> m.meshError() >= SLOW && m.reserve() <= 99).toList();
        if (slow.isEmpty()) {
            return Optional.empty();
        }
        int named = all ? slow.size() : Math.min(NAMED, slow.size());
        int more = slow.size() - named;
        return Optional.of(
                "Worked out in small pieces, each row is within 1 % but for "
                        + slow.stream()
                                .limit(named)
                                .map(m -> what(m) + " (" + astray(m) + ")")
                                .collect(Collectors.joining(", "))
                        + (more == 0 ? "" : " and " + more + " more (--all)")
                        + ": beside corners, fittings and patches stress is hard to catch.");
    }
}
