package org.coachskin.sparse;

import java.util.Arrays;

/**
 * Finds a light set of groups whose removal splits a piece in two of about equal weight: starts
 * from the first half of an order and improves by moving one group at a time out of the separator,
 * also uphill for a while, keeping the best met.
 */
final class Separator {

    private static final int LOW = 0;
    private static final int HIGH = 1;
    private static final int BETWEEN = 2;
    private static final int PASSES = 8;
    private static final int UPHILL = 40;

    /** A side may weigh so much of the whole piece. */
    private static final double HEAVY = 0.6;

    private final Graph graph;
    private final int[] piece;
    private final int[] side;
    private final int[] bestSide;
    private final int[] locked;
    private int lock;
    private final int[] weight = new int[3];
    private double total;
    private double best = Double.POSITIVE_INFINITY;

    /** Groups between, in no order, and where each stands there. */
    private final int[] between;

    private final int[] slot;
    private int count;

    /** What moved in this pass: group, and the side it left, one after the other. */
    private int[] log = new int[256];

    private int logged;

    Separator(Graph graph, int[] piece) {
        this.graph = graph;
        this.piece = piece;
        side = new int[graph.size];
        bestSide = new int[graph.size];
        locked = new int[graph.size];
        between = new int[graph.size];
        slot = new int[graph.size];
    }

    /** Tries the first half by weight of {@code groups}, all of one piece. */
    void attempt(int[] groups) {
        total = 0;
        Arrays.fill(weight, 0);
        count = 0;
        for (int g : groups) {
            total += graph.weight(g);
        }
        double low = 0;
        for (int g : groups) {
            side[g] = low + 0.5 * graph.weight(g) < 0.5 * total ? LOW : HIGH;
            low += graph.weight(g);
            weight[side[g]] += graph.weight(g);
        }
        int own = piece[groups[0]];
        for (int g : groups) {
            if (side[g] == HIGH && touches(g, LOW, own)) {
                put(g, BETWEEN);
            }
        }
        for (int pass = 0; pass < PASSES; pass++) {
            if (!improve(own)) {
                break;
            }
        }
        double cost = cost();
        if (cost < best) {
            best = cost;
            for (int g : groups) {
                bestSide[g] = side[g];
            }
        }
    }

    /** Returns the best split met since the last call: low, high, between. */
    int[][] take(int[] groups) {
        int[][] parts = new int[3][groups.length];
        int[] n = new int[3];
        for (int g : groups) {
            int s = bestSide[g];
            parts[s][n[s]++] = g;
        }
        best = Double.POSITIVE_INFINITY;
        return new int[][] {
            Arrays.copyOf(parts[0], n[0]),
            Arrays.copyOf(parts[1], n[1]),
            Arrays.copyOf(parts[2], n[2])
        };
    }

    private boolean touches(int g, int which, int own) {
        for (int at = graph.start[g]; at < graph.start[g + 1]; at++) {
            int other = graph.near[at];
            if (piece[other] == own && side[other] == which) {
                return true;
            }
        }
        return false;
    }

    /** Weight between, dearer the more the sides differ. */
    private double cost() {
        if (weight[LOW] == 0 || weight[HIGH] == 0) {
            return Double.MAX_VALUE;
        }
        double apart = Math.abs(weight[LOW] - weight[HIGH]) / total;
        return weight[BETWEEN] * (1 + apart * apart) + 1e-3 * apart;
    }

    private void put(int g, int to) {
        int from = side[g];
        weight[from] -= graph.weight(g);
        weight[to] += graph.weight(g);
        side[g] = to;
        if (from == BETWEEN) {
            int last = between[--count];
            between[slot[g]] = last;
            slot[last] = slot[g];
        }
        if (to == BETWEEN) {
            slot[g] = count;
            between[count++] = g;
        }
    }

    private void log(int g, int from) {
        if (logged + 2 > log.length) {
            log = Arrays.copyOf(log, 2 * log.length);
        }
        log[logged++] = g;
        log[logged++] = from;
    }

    private boolean improve(int own) {
        double before = cost();
        double least = before;
        int keep = 0;
        int uphill = 0;
        logged = 0;
        lock++;
        while (uphill < UPHILL && move(own)) {
            double now = cost();
            if (now < least) {
                least = now;
                keep = logged;
                uphill = 0;
            } else {
                uphill++;
            }
        }
        while (logged > keep) {
            logged -= 2;
            put(log[logged], log[logged + 1]);
        }
        return least < before;
    }

    /** Makes the best move that is left: the one after which least lies between. */
    private boolean move(int own) {
        int bestGroup = -1;
        int bestTo = LOW;
        double bestGain = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < count; i++) {
            int g = between[i];
            if (locked[g] == lock) {
                continue;
            }
            int toLow = graph.weight(g);
            int toHigh = toLow;
            for (int at = graph.start[g]; at < graph.start[g + 1]; at++) {
                int other = graph.near[at];
                if (piece[other] == own) {
                    if (side[other] == HIGH) {
                        toLow -= graph.weight(other);
                    } else if (side[other] == LOW) {
                        toHigh -= graph.weight(other);
                    }
                }
            }
            double tilt = (weight[HIGH] - weight[LOW]) / (4 * total);
            double low = allowed(g, LOW) ? toLow + tilt : Double.NEGATIVE_INFINITY;
            double high = allowed(g, HIGH) ? toHigh - tilt : Double.NEGATIVE_INFINITY;
            double gain = Math.max(low, high);
            if (gain > bestGain || (gain == bestGain && bestGroup >= 0 && g < bestGroup)) {
                bestGain = gain;
                bestGroup = g;
                bestTo = low >= high ? LOW : HIGH;
            }
        }
        if (bestGroup < 0 || bestGain == Double.NEGATIVE_INFINITY) {
            return false;
        }
        int from = bestTo == LOW ? HIGH : LOW;
        log(bestGroup, BETWEEN);
        put(bestGroup, bestTo);
        locked[bestGroup] = lock;
        for (int at = graph.start[bestGroup]; at < graph.start[bestGroup + 1]; at++) {
            int other = graph.near[at];
            if (piece[other] == own && side[other] == from) {
                log(other, from);
                put(other, BETWEEN);
            }
        }
        return true;
    }

    private boolean allowed(int g, int to) {
        return weight[to] + graph.weight(g) <= HEAVY * total;
    }
}
