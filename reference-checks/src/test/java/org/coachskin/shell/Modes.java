package org.coachskin.shell;

import java.util.List;
import java.util.stream.DoubleStream;
import org.coachskin.panel.Panel;

/** The lowest frequencies of a panel in first-order theory; the library prints but the first. */
public final class Modes {

    private Modes() {}

    /** Returns the lowest {@code count} natural frequencies [Hz], by elements of {@code order}. */
    public static List<Double> of(Panel panel, int order, int count) {
        Grid grid = Drawn.grid(Drawn.mesh(panel, List.of()), order);
        double[] hertz = new ShellPanel(panel, grid, order, true).frequencies(count);
        return DoubleStream.of(hertz).boxed().toList();
    }
}
