package org.coachskin.check;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.coachskin.failure.Factor;
import org.coachskin.failure.Mode;
import org.coachskin.panel.LoadCase;

/** The worst place of each mode under one load case. */
final class Worst {

    /**
     * A place must be worse than one before it by more than this, relative; so two places that are
     * each other's image are not told apart by rounding, and the first in order is named.
     */
    private static final double SAME = 1e-9;

    private final LoadCase load;
    private final List<Factor> stays;
    private final Map<Mode, Margin> worst = new EnumMap<>(Mode.class);

    /**
     * @param stays extra factor on what breaks under this load, where it stays
     */
    Worst(LoadCase load, List<Factor> stays) {
        this.load = load;
        this.stays = List.copyOf(stays);
    }

    /** Returns whether {@code margin} is worse than {@code before}, rounding apart. */
    static boolean isWorse(Margin margin, Margin before) {
        return margin.reserve() < before.reserve() * (1 - SAME);
    }

    List<Margin> margins() {
        return List.copyOf(worst.values());
    }

    void keep(
            Mode mode,
            int sign,
            Place place,
            double applied,
            double allowable,
            double multiplier,
            List<Factor> factors,
            double methodError) {
        keep(mode, sign, place, applied, allowable, multiplier, factors, methodError, "");
    }

    void keep(
            Mode mode,
            int sign,
            Place place,
            double applied,
            double allowable,
            double multiplier,
            List<Factor> factors,
            double methodError,
            String remark) {
        List<Factor> wanted = new ArrayList<>(factors);
        if (mode.question() == Mode.Question.STRONG) {
            wanted.addAll(stays);
        }
        Margin margin =
                new Margin(
                        mode,
                        load.name(),
                        sign < 0,
                        place,
                        applied,
                        allowable,
                        multiplier,
                        wanted,
                        methodError,
                        0,
                        remark);
        worst.merge(mode, margin, (before, now) -> isWorse(now, before) ? now : before);
    }
}
