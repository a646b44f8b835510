package org.coachskin.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.coachskin.failure.FaceWrinkling;
import org.coachskin.failure.Factor;
import org.coachskin.failure.Mode;
import org.coachskin.laminate.Triple;

/**
 * Wrinkling of every skin at every place, judged where a skin is pushed most: the search for the
 * worst wave is dear, so of many places only those with the largest compression are looked at, skin
 * by skin and stack by stack, and of these only those worked out that may turn out the worst.
 */
final class Wrinkles {

    static final int MOST = 60;

    /** So many are enough where a place is read again of which it is known that it is the worst. */
    static final int AGAIN = 3;

    private final List<Factor> wanted;
    private final int most;
    private final Map<FaceWrinkling, List<Pushed>> pushed = new LinkedHashMap<>();

    /**
     * @param wanted factors of safety
     * @param most how many places of a skin are worked out
     */
    Wrinkles(List<Factor> wanted, int most) {
        this.wanted = wanted;
        this.most = most;
    }

    /**
     * Forces per width [N/m].
     *
     * @param skin under the load
     * @param other of the skin on the other face
     * @param still of the skin, all the time
     * @param otherStill of the other skin, all the time
     */
    record Forces(Triple skin, Triple other, Triple still, Triple otherStill) {
        /** Largest compression of the skin. */
        double compression() {
            Triple n = skin.plus(still, 1);
            double half = (n.x() + n.y()) / 2;
            return Math.hypot((n.x() - n.y()) / 2, n.xy()) - half;
        }
    }

    private record Pushed(
            String skin, Stations.Station at, int sign, Forces forces, double compression) {}

    /** Notes the forces in a skin at a place. */
    void add(FaceWrinkling skin, String words, Stations.Station at, int sign, Forces forces) {
        pushed.computeIfAbsent(skin, k -> new ArrayList<>())
                .add(new Pushed(words, at, sign, forces, forces.compression()));
    }

    /** Judges what has been noted. */
    void judge(Worst worst) {
        double least = Double.POSITIVE_INFINITY;
        for (Map.Entry<FaceWrinkling, List<Pushed>> entry : pushed.entrySet()) {
            FaceWrinkling skin = entry.getKey();
            double critical = skin.critical(0, -1);
            for (Reached one : reached(skin, most(entry.getValue()), least)) {
                least = Math.min(least, one.multiplier());
                Pushed p = one.pushed();
                worst.keep(
                        Mode.WRINKLING,
                        p.sign(),
                        new Place(p.skin() + p.at().words(), p.at().x(), p.at().y(), 0),
                        critical / one.multiplier(),
                        critical,
                        one.multiplier(),
                        wanted,
                        MethodError.WRINKLING,
                        p.at().remark());
            }
        }
    }

    private record Reached(int at, Pushed pushed, double multiplier) {}

    /** Works out those that may come below {@code least}, in their order. */
    private static List<Reached> reached(FaceWrinkling skin, List<Pushed> places, double least) {
        double[] bounds = places.stream().mapToDouble(p -> bound(skin, p.forces())).toArray();
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < bounds.length; i++) {
            order.add(i);
        }
        order.sort(Comparator.comparingDouble(i -> bounds[i]));
        List<Reached> found = new ArrayList<>();
        double lowest = least;
        for (int i : order) {
            if (bounds[i] >= lowest && !found.isEmpty()) {
                break;
            }
            Forces f = places.get(i).forces();
            double multiplier = skin.reserve(f.skin(), f.other(), f.still(), f.otherStill());
            found.add(new Reached(i, places.get(i), multiplier));
            lowest = Math.min(lowest, multiplier);
        }
        found.sort(Comparator.comparingInt(Reached::at));
        return found;
    }

    private static double bound(FaceWrinkling skin, Forces f) {
        return skin.leastReserve(f.skin(), f.other(), f.still(), f.otherStill());
    }

    private List<Pushed> most(List<Pushed> places) {
        if (places.size() <= most) {
            return places;
        }
        return places.stream()
                .sorted(Comparator.comparingDouble(Pushed::compression).reversed())
                .limit(most)
                .toList();
    }
}
