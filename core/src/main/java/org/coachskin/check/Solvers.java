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

    /**
     * @param brief whether elements one order coarser than usual will do, without a look at what
     *     they are off
     */
    Solvers(boolean brief) {
        this.brief = brief;
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
        return brief && !isSeries(job) ? Double.NaN : of(job).frequency(job.panel());
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
