package org.coachskin.check;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.coachskin.analysis.Analysis;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Panel;
import org.coachskin.series.SeriesAnalysis;
import org.coachskin.shell.ShellAnalysis;

/** Who answers for which panel: the series where it applies, where it is exact; else the shell. */
final class Solvers {

    private final SeriesAnalysis series = new SeriesAnalysis();
    private final SeriesAnalysis firstOrderSeries = SeriesAnalysis.firstOrder();
    private final ShellAnalysis shell;
    private final ShellAnalysis firstOrder;
    private final Map<Integer, ShellAnalysis> orders = new ConcurrentHashMap<>();
    private final boolean brief;
    private final boolean vibrating;

    /**
     * @param brief whether elements one order coarser than usual will do, without a look at what
     *     they are off
     * @param vibrating whether the frequency of a panel on fittings is asked
     */
    Solvers(boolean brief, boolean vibrating) {
        this.brief = brief;
        this.vibrating = vibrating;
        shell = new ShellAnalysis(brief ? ShellAnalysis.ORDER - 1 : ShellAnalysis.ORDER, false);
        firstOrder = shell.ofOrder(ShellAnalysis.ORDER - 1).inFirstOrder();
    }

    Analysis of(Job job) {
        return isSeries(job) ? series : shell;
    }

    private boolean isSeries(Job job) {
        Panel panel = job.panel();
        return panel.isPlain()
                && panel.rimCarried()
                && job.loads().stream().noneMatch(LoadCase::isAlongLine)
                && series.answers(panel);
    }

    /** Returns whether it is asked how far the answer for a panel is off. */
    boolean areAsked(Job job) {
        return !brief && !isSeries(job);
    }

    /** Returns the lowest natural frequency [Hz]; NaN where that is not asked. */
    double frequency(Job job) {
        return isSeries(job) ? series.frequency(job.panel()) : frequency(job, ShellAnalysis.ORDER);
    }

    /** Returns the lowest natural frequency by elements of one order [Hz]; NaN where not asked. */
    double frequency(Job job, int order) {
        return vibrating ? ofOrder(order).frequency(job.panel()) : Double.NaN;
    }

    /** Returns elements of one order. */
    ShellAnalysis ofOrder(int order) {
        return order == ShellAnalysis.ORDER && !brief
                ? shell
                : orders.computeIfAbsent(order, shell::ofOrder);
    }

    /** Returns who looks for the softest place: a few hundredths do not matter there. */
    Analysis sweeping(Job job) {
        return isSeries(job) ? series : ofOrder(ShellAnalysis.ORDER - 2);
    }

    /** Returns who answers in first-order theory. */
    Analysis firstOrder(Job job) {
        return isSeries(job) ? firstOrderSeries : firstOrder;
    }

    /** Returns who else answers, by a way of its own: elements where it was a series. */
    Optional<Analysis> other(Job job) {
        return isSeries(job) ? Optional.of(shell) : Optional.empty();
    }
}
