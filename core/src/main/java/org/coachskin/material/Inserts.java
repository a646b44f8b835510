package org.coachskin.material;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coachskin.Source;
import org.coachskin.Table;

/**
 * Solids that take the place of the foam under hardware, by the constants of a foam: what they bear
 * along the board, through it and in shear between its faces.
 */
public final class Inserts {

    private static final List<Foam> ALL = read();

    private Inserts() {}

    private static List<Foam> read() {
        List<Foam> inserts = new ArrayList<>();
        Table t = Table.read(Inserts.class, "inserts.csv");
        for (int i = 0; i < t.size(); i++) {
            Source source = t.source(i);
            inserts.add(
                    new Foam(
                            t.text(i, "name"),
                            Foam.Kind.OTHER,
                            t.number(i, "density"),
                            t.number(i, "E in plane"),
                            t.number(i, "E through"),
                            t.number(i, "G"),
                            t.number(i, "nu"),
                            MaterialLibrary.mean(t.number(i, "shear"), source),
                            MaterialLibrary.mean(t.number(i, "crush"), source),
                            MaterialLibrary.mean(t.number(i, "tension"), source),
                            t.number(i, "expansion"),
                            t.number(i, "density spread"),
                            t.number(i, "modulus spread"),
                            source));
        }
        return List.copyOf(inserts);
    }

    /** Returns every insert, in the order of the table. */
    public static List<Foam> all() {
        return ALL;
    }

    /** Returns the insert of that name, whatever its case and spacing. */
    public static Optional<Foam> named(String name) {
        String wanted = MaterialLibrary.key(name);
        return ALL.stream()
                .filter(insert -> MaterialLibrary.key(insert.name()).equals(wanted))
                .findFirst();
    }
}
