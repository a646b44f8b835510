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

    private Eigenshapes() {}

    /** Returns the lowest natural frequencies, upwards. */
    static List<Vibration> vibrations(ShellPanel shell, int count) {
        SymmetricMatrix stiff = shell.atRest();
        SymmetricMatrix mass = new SymmetricMatrix(stiff.pattern());
        shell.model.addMass(mass);
        Eigenpairs lowest = Eigenpairs.lowest(stiff, mass, shell.plan().factor(stiff), count);
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
