package org.coachskin.failure;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.coachskin.Source;
import org.coachskin.Table;
import org.coachskin.material.Strength;

/**
 * Factors of safety: how many times the load must fit before a mode happens. Those used where the
 * file gives none stand in {@code factors.csv} beside this class, each with its source, and nowhere
 * else.
 *
 * <p>Caution is counted here and only here: strengths go in as they are, means as means, and the
 * coefficients of the theories are those that are derived. Where a strength is a minimum, part of
 * the caution is in it and the factor is smaller.
 *
 * @param all one factor for each of {@link On}
 */
public record Factors(Map<On, Factor> all) {

    /** The factors used where the file gives none. */
    public static final Factors STANDARD = standard();

    /** Copies the map and checks that nothing is left out. */
    public Factors {
        all = Map.copyOf(all);
        if (all.size() != On.values().length) {
            throw new IllegalArgumentException("a factor of safety is missing: " + all.keySet());
        }
    }

    private static Factors standard() {
        Table table = Table.read(Factors.class, "factors.csv");
        Map<On, Factor> all = new EnumMap<>(On.class);
        for (On on : On.values()) {
            for (int i = 0; i < table.size(); i++) {
                if (table.text(i, "name").equals(on.row)) {
                    Factor factor =
                            new Factor(
                                    table.text(i, "words"),
                                    table.number(i, "factor"),
                                    table.source(i));
                    all.put(on, factor);
                }
            }
        }
        return new Factors(all);
    }

    /** Returns one of the factors. */
    public Factor on(On on) {
        return Objects.requireNonNull(all.get(on));
    }

    /** Returns the factor for a skin strength, by what the strength is. */
    public Factor skin(Strength strength) {
        return on(strength.level() == Strength.Level.MEAN ? On.LAMINATE_MEAN : On.LAMINATE_MINIMUM);
    }

    /**
     * Returns these factors with one given by the user.
     *
     * @throws IllegalArgumentException when it is not between 1 and 20
     */
    public Factors with(On on, double value) {
        Map<On, Factor> changed = new EnumMap<>(all);
        changed.put(on, new Factor(on(on).words(), value, Source.YOURS));
        return new Factors(changed);
    }

    /** What a factor stands on. */
    public enum On {
        /** The strength of a skin that is a mean. */
        LAMINATE_MEAN("laminate on a mean"),
        /** The strength of a skin that is a minimum. */
        LAMINATE_MINIMUM("laminate on a minimum"),
        /** The shear strength of foam. */
        CORE_SHEAR("core shear"),
        /** The shear strength of foam where people stand, kneel or sit. */
        CORE_SHEAR_PEOPLE("core shear under people"),
        /** Wrinkling of a skin bonded to mean foam, and crimping. */
        WRINKLING("wrinkling"),
        /** Crushing. */
        CRUSHING("crushing"),
        /** Bond and foam tension. */
        BOND("bond"),
        /** A load that stays for weeks: counted beside the others. */
        STAYS("stays");

        private final String row;

        On(String row) {
            this.row = row;
        }
    }
}
