package org.coachskin.check;

import java.util.Optional;
import org.coachskin.analysis.Analysis;
import org.coachskin.panel.Panel;
import org.coachskin.series.SeriesAnalysis;
import org.coachskin.shell.ShellAnalysis;

/** Who answers for which panel: the series where it applies, where it is exact; else the shell. */
final class Solvers {

    private final SeriesAnalysis series = new SeriesAnalysis();
    private final SeriesAnalysis firstOrderSeries = SeriesAnalysis.firstOrder();
    private final ShellAnalysis shell;
    private final ShellAnalysis coarse = new ShellAnalysis(ShellAnalysis.ORDER - 1, false);
    private final ShellAnalysis firstOrder = new ShellAnalysis(ShellAnalysis.ORDER - 1, true);
    private final ShellAnalysis sweeping = new ShellAnalysis(ShellAnalysis.ORDER - 2, false);
    private final boolean brief;

    /**
     * @param brief whether elements one order coarser than usual will do, and nothing that only an
     *     engineer asks for is wanted of them
     */
    Solvers(boolean brief) {
        this.brief = brief;
        shell = brief ? coarse : new ShellAnalysis();
    }

    Analysis of(Panel panel) {
        return isSeries(panel) ? series : shell;
    }

    private boolean isSeries(Panel panel) {
        return panel.isPlain() && panel.rimCarried() && series.answers(panel);
    }

    /** Returns a coarser solver that tells how far the elements are off, where that is asked. */
    Optional<Analysis> coarser(Panel panel) {
        return brief || isSeries(panel) ? Optional.empty() : Optional.of(coarse);
    }

    /** Returns who looks for the softest place: a few hundredths do not matter there. */
    Analysis sweeping(Panel panel) {
        return isSeries(panel) ? series : sweeping;
    }

    /** Returns the solver in first-order theory, where that is asked. */
    Optional<Analysis> firstOrder(Panel panel) {
        if (isSeries(panel)) {
            return Optional.of(firstOrderSeries);
        }
        return brief ? Optional.empty() : Optional.of(firstOrder);
    }

    /** Returns the lowest natural frequency [Hz]; NaN where that is not asked. */
    double frequency(Panel panel) {
        if (isSeries(panel)) {
            return series.frequency(panel);
        }
        return brief ? Double.NaN : coarse.frequency(panel);
    }
}
