package org.coachskin.shell;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.NoAnswerException;
import org.coachskin.Problem;
import org.coachskin.sparse.Eigenpairs;
import org.coachskin.sparse.Factor;
import org.coachskin.sparse.SymmetricMatrix;

/** How a panel at rest vibrates and buckles. */
final class Eigenshapes {

    /** Residual at which a frequency alone has settled: it is off by about the square of it. */
    private static final double SETTLED = 1e-4;

    /** And at which a shape has. */
    private static final double FINE = 1e-10;

    private Eigenshapes() {}

    /** Returns the lowest natural frequency [Hz]. */
    static double frequency(ShellPanel shell) {
        return vibrations(shell, 1, SETTLED).get(0).frequency();
    }

    /** Returns the lowest natural frequencies, upwards. */
    static List<Vibration> vibrations(ShellPanel shell, int count) {
        return vibrations(shell, count, FINE);
    }

    private static List<Vibration> vibrations(ShellPanel shell, int count, double good) {
        SymmetricMatrix stiff = shell.stiffness();
        Eigenpairs lowest = Eigenpairs.lowest(stiff, shell.mass(), shell.inverse(), count, good);
        List<Vibration> out = new ArrayList<>();
        for (int i = 0; i < lowest.count(); i++) {
            double hertz = Math.sqrt(lowest.value(i)) / (2 * Math.PI);
            out.add(new Vibration(hertz, new ModeShape(shell, lowest.vector(i))));
        }
        return out;
    }

    /**
     * Returns the lowest factors on a load under which the panel buckles, upwards: (K + K<sub>g
     * standing</sub> + factor K<sub>g loaded</sub>) x = 0.
     */
    static List<Buckling> buckling(
            ShellPanel shell, ShellResponse standing, ShellResponse loaded, int count) {
        Prestress prestress = new Prestress(shell.model);
        SymmetricMatrix stiff = shell.atRest();
        prestress.add(1, standing, stiff);
        SymmetricMatrix taken = new SymmetricMatrix(stiff.pattern());
        if (!prestress.add(-1, loaded, taken)) {
            return List.of();
        }
        Factor factor = shell.plan().factor(stiff);
        if (factor.negativePivots() > 0) {
            throw new NoAnswerException(
                    new Problem(
                            "",
                            "",
                            shell.panel.name() + " buckles under what stands on it alone.",
                            ""));
        }
        Eigenpairs lowest = Eigenpairs.lowest(stiff, taken, factor, count);
        List<Buckling> out = new ArrayList<>();
        for (int i = 0; i < lowest.count(); i++) {
            out.add(new Buckling(lowest.value(i), new ModeShape(shell, lowest.vector(i))));
        }
        return out;
    }
}
