package org.coachskin.series;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.harmonic.Kinematics;
import org.coachskin.harmonic.SingleSeries;
import org.coachskin.harmonic.Theory;
import org.coachskin.laminate.Triple;
import org.coachskin.panel.Load;
import org.coachskin.panel.Panel;

/** The fields of a panel in one theory, summed over its loads where they are asked for. */
final class SeriesSum {

    /** Which way a series runs. */
    enum Along {
        X,
        Y,
        /** Whichever converges faster at the place asked for. */
        EITHER
    }

    /** One load and the series that answer it. */
    record Part(PatchLoad load, PanelSeries series) {}

    private final Theory theory;
    private final Panel panel;
    private final List<Part> parts;
    private final Along along;
    private final Kinematics kinematics;
    private final int inPlane;
    private final int first;

    SeriesSum(Theory theory, Panel panel, List<Part> parts, Along along) {
        this.theory = theory;
        this.panel = panel;
        this.parts = List.copyOf(parts);
        this.along = along;
        kinematics = Kinematics.of(theory, panel.laminate());
        inPlane = kinematics.inPlane;
        first = inPlane + kinematics.deflections;
    }

    /** Returns the sum of each case; all share the waves that pressure raises. */
    static List<SeriesSum> ofCases(Theory theory, Panel panel, List<List<Load>> cases) {
        PanelSeries pressure = new PanelSeries(theory, panel, Triple.ZERO);
        List<SeriesSum> sums = new ArrayList<>();
        for (List<Load> loads : cases) {
            List<Part> parts = new ArrayList<>();
            for (Load load : loads) {
                PatchLoad patch = PatchLoad.of(panel, load);
                parts.add(
                        new Part(
                                patch,
                                patch.isBow()
                                        ? new PanelSeries(theory, panel, patch.bow())
                                        : pressure));
            }
            sums.add(new SeriesSum(theory, panel, parts, Along.EITHER));
        }
        return sums;
    }

    /** Returns the sum of another panel in the same theory. */
    SeriesSum of(Panel other, List<Load> loads) {
        return ofCases(theory, other, List.of(loads)).get(0);
    }

    Panel panel() {
        return panel;
    }

    Kinematics kinematics() {
        return kinematics;
    }

    String method() {
        return "sine series, rim carried all round, " + theory.words();
    }

    /** Returns the free bow of all loads together [1/m]. */
    Triple bow() {
        Triple bow = Triple.ZERO;
        for (Part part : parts) {
            bow = bow.plus(part.load().bow(), 1);
        }
        return bow;
    }

    /**
     * Returns, for each field of {@code WaveSystem}'s order, value, x-derivative and y-derivative;
     * the value of a rotation is its shear strain.
     */
    double[] fields(double x, double y) {
        return fields(x, y, false);
    }

    /** Returns fields of which the values of the deflections alone are good, for less work. */
    double[] deflections(double x, double y) {
        return fields(x, y, true);
    }

    private double[] fields(double x, double y, boolean deflectionAlone) {
        double[] out = new double[3 * (first + inPlane)];
        for (Part part : parts) {
            PatchLoad load = part.load();
            PanelSeries series = part.series();
            if (runsAlongX(load, x, y)) {
                add(series.alongX, load, x, y, deflectionAlone, out);
            } else {
                double[] turned = new double[out.length];
                add(series.alongY, load.turned(), y, x, deflectionAlone, turned);
                addTurned(turned, out);
            }
        }
        return out;
    }

    private static void add(
            SingleSeries series,
            PatchLoad load,
            double x,
            double y,
            boolean deflectionAlone,
            double[] out) {
        double p = load.strength();
        if (deflectionAlone) {
            series.addDeflection(p, load.x1(), load.x2(), load.y1(), load.y2(), x, y, out);
        } else {
            series.add(p, load.x1(), load.x2(), load.y1(), load.y2(), x, y, out);
        }
    }

    private boolean runsAlongX(PatchLoad load, double x, double y) {
        if (along != Along.EITHER) {
            return along == Along.X;
        }
        double fromX = Math.min(Math.abs(x - load.x1()), Math.abs(x - load.x2())) / panel.length();
        double fromY = Math.min(Math.abs(y - load.y1()), Math.abs(y - load.y2())) / panel.width();
        return fromY >= fromX;
    }

    /** Adds a field with x and y exchanged: the blocks change places, and so do the derivatives. */
    private void addTurned(double[] turned, double[] out) {
        for (int i = 0; i < first + inPlane; i++) {
            int target = i < inPlane ? first + i : i < first ? i : i - first;
            out[3 * target] += turned[3 * i];
            out[3 * target + 1] += turned[3 * i + 2];
            out[3 * target + 2] += turned[3 * i + 1];
        }
    }
}
