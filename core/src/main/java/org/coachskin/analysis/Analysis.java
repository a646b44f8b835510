package org.coachskin.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.coachskin.laminate.Layer;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Panel;

/** A solver: what a panel does under load. Implementations are safe to share between threads. */
public interface Analysis {

    /**
     * Returns what {@code panel} does under several load cases, one response a case.
     *
     * @param cases loads that act together, case by case; a case may be empty
     * @throws org.coachskin.NoAnswerException when the panel or a load is outside what this solver
     *     can do
     */
    List<Response> cases(Panel panel, List<List<Load>> cases);

    /** Returns what {@code panel} does under {@code loads} acting together. */
    default Response statics(Panel panel, List<Load> loads) {
        return cases(panel, List.of(loads)).get(0);
    }

    /**
     * Returns what {@code panel} does under load cases with what stands all the time. Here for a
     * solver whose answer is proportional to the load.
     *
     * @throws org.coachskin.NoAnswerException when the panel or a load is outside what this solver
     *     can do
     */
    default List<CaseResponse> loadCases(Panel panel, List<LoadCase> cases) {
        List<List<Load>> together = new ArrayList<>();
        cases.forEach(load -> together.add(load.loads()));
        cases.forEach(load -> together.add(load.standing()));
        List<Response> responses = cases(panel, together);
        List<CaseResponse> out = new ArrayList<>();
        for (int i = 0; i < cases.size(); i++) {
            Response loaded = responses.get(i);
            out.add(
                    new CaseResponse(
                            responses.get(i + cases.size()),
                            loaded,
                            new Reversed(loaded),
                            Held.NONE,
                            Held.NONE,
                            Held.NONE));
        }
        return out;
    }

    /**
     * Returns how far the panel goes in under a press that is moved to some places, at the middle
     * of its patch and counted from where it is under what stands [m]. Dear here; a solver that
     * factors the panel works out many places for little more than one.
     *
     * @param press force and patch; its own place does not matter
     * @param standing what stands all the time
     * @param places of the middle of the patch, all of which lies on the panel
     * @throws org.coachskin.NoAnswerException when the panel or the press is outside what this
     *     solver can do
     */
    default List<Double> swept(
            Panel panel, Load.Press press, List<Load> standing, List<Response.Spot> places) {
        List<List<Load>> cases = new ArrayList<>();
        for (Response.Spot at : places) {
            cases.add(List.of(new Load.Press(press.force(), press.patch(), at.x(), at.y())));
        }
        List<Response> responses = cases(panel, cases);
        List<Double> out = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            out.add(responses.get(i).deflection(places.get(i).x(), places.get(i).y()));
        }
        return out;
    }

    /**
     * Returns how much of the panel lies in which of its zones. Here for a solver of panels without
     * zones and without skins turned round edges.
     */
    default Shares shares(Panel panel) {
        return Shares.plain(panel);
    }

    /**
     * Returns how much of each layer there is in the panel, zones and their bevels, openings and
     * skins turned round edges counted [m^2]; layers that are equal in everything are one. The foam
     * of a bevel is so much more of the layer it is a piece of.
     */
    default Map<Layer, Double> areas(Panel panel) {
        return shares(panel).areas(panel);
    }

    /**
     * Returns the mass of the panel, zones and their bevels, openings, skins turned round edges and
     * skins that close the foam at a lip counted [kg].
     */
    default double mass(Panel panel) {
        double sum = 0;
        for (Map.Entry<Layer, Double> entry : areas(panel).entrySet()) {
            Layer layer = entry.getKey();
            sum += entry.getValue() * layer.thickness() * layer.density();
        }
        return sum;
    }

    /**
     * Returns the lowest natural frequency [Hz].
     *
     * @throws org.coachskin.NoAnswerException when the panel is outside what this solver can do
     */
    double frequency(Panel panel);
}
