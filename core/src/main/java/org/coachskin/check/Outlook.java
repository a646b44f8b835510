package org.coachskin.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coachskin.laminate.Laminate;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Region;
import org.coachskin.shell.ShellAnalysis;
import org.coachskin.shell.ShellFamily;

/**
 * What the felt stiffness of many panels should come to that differ in the stacks of some parts:
 * told from a few that are solved, in a hundredth of the time ({@link ShellFamily}).
 */
public final class Outlook {

    private final LoadCase load;
    private final Load.Press press;
    private final ShellFamily family;
    private final Map<Laminate, Double> sinking = new HashMap<>();

    private Outlook(LoadCase load, Load.Press press, ShellFamily family) {
        this.load = load;
        this.press = press;
        this.family = family;
    }

    /**
     * Solves some panels, to tell of others.
     *
     * @param bare the job without any of what is on offer; its loads stand where they press
     * @param regions every part on offer, the widest first
     * @param solved panels to solve
     * @return empty where no load asks for the felt stiffness
     */
    public static Optional<Outlook> of(Job bare, List<Region> regions, List<Panel> solved) {
        for (LoadCase load : bare.loads()) {
            if (load.kind() == LoadCase.Kind.FELT
                    && !load.loads().isEmpty()
                    && load.loads().get(0) instanceof Load.Press press) {
                ShellFamily family =
                        new ShellFamily(
                                bare.panel(), regions, load, ShellAnalysis.ORDER - 2, solved);
                return Optional.of(new Outlook(load, press, family));
            }
        }
        return Optional.empty();
    }

    /** Returns the felt stiffness a panel should have [N/m]. */
    public double felt(Panel panel) {
        double sinks;
        synchronized (sinking) {
            sinks =
                    sinking.computeIfAbsent(
                            panel.laminateAt(press.x(), press.y()),
                            stack -> Patches.local(panel, press).sinking());
        }
        return press.force() / (family.settled(panel, press.x(), press.y()) + sinks);
    }

    /** Returns the name of the load that it is felt under. */
    public String load() {
        return load.name();
    }
}
