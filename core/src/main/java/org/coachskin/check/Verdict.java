package org.coachskin.check;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.coachskin.analysis.Held;
import org.coachskin.failure.Mode;
import org.coachskin.panel.Opening;

/**
 * The answer to "will it hold?".
 *
 * @param job what was judged
 * @param stiff stiff enough? for every load with a limit on movement
 * @param strong strong enough? for every mode that breaks or crushes for good
 * @param unmarked does it stay unmarked?
 * @param margins every mode, the smallest reserve first
 * @param movements where the movement comes from, one entry a load case, in the order of the job
 * @param felt scatter of the felt stiffness [N/m]; empty where no load asks for it
 * @param frequency lowest natural frequency [Hz]
 * @param liftOffSpeed road speed at which the air lifts the panel when unlatched, hinged at the
 *     rear [m/s]
 * @param mass of the panel [kg]
 * @param atRest what fittings do before each load case comes, in the order of the job
 * @param held what fittings do under each load case
 * @param cautions sentences that have to stand beside the answer
 * @param numericalErrors of movements, forces of fittings and the frequency; empty for a series
 * @param method theory and solver in words
 */
public record Verdict(
        Job job,
        Answer stiff,
        Answer strong,
        Answer unmarked,
        List<Margin> margins,
        List<Movement> movements,
        Optional<Spread> felt,
        double frequency,
        double liftOffSpeed,
        double mass,
        List<Held> atRest,
        List<Held> held,
        List<String> cautions,
        List<NumericalError> numericalErrors,
        String method) {

    /** Sorts and copies the margins. */
    public Verdict {
        margins = margins.stream().sorted(Comparator.comparingDouble(Margin::reserve)).toList();
        movements = List.copyOf(movements);
        atRest = List.copyOf(atRest);
        held = List.copyOf(held);
        cautions = List.copyOf(cautions);
        numericalErrors = List.copyOf(numericalErrors);
    }

    /** Returns where the movement under a load case comes from. */
    public Movement movementUnder(String loadCase) {
        return movements.stream()
                .filter(movement -> movement.loadCase().equals(loadCase))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no load is called " + loadCase));
    }

    /**
     * Returns the opening by whose rim a margin was read, as mean over some millimetres or a little
     * away from it; empty for every other margin.
     */
    public Optional<Opening> openingBeside(Margin margin) {
        boolean ofSkins =
                margin.mode().isOfPlies()
                        || margin.mode() == Mode.WRINKLING
                        || margin.mode() == Mode.CRIMPING
                        || margin.mode() == Mode.CORE_TENSION
                        || margin.mode() == Mode.BOND;
        return ofSkins
                ? OpeningRims.near(job.panel(), margin.place().x(), margin.place().y())
                : Optional.empty();
    }

    /** Returns the margin that decides. */
    public Margin governing() {
        return margins.get(0);
    }

    /** Returns the margin that decides among modes of one question, if any load asks for it. */
    public Optional<Margin> governing(Mode.Question question) {
        return margins.stream().filter(margin -> margin.mode().question() == question).findFirst();
    }

    /** Returns whether every limit holds as drawn; marks count unless the job allows them. */
    public boolean holds() {
        return margins.stream()
                .allMatch(
                        margin ->
                                margin.holds()
                                        || (job.limits().marksAllowed()
                                                && margin.mode().question()
                                                        == Mode.Question.UNMARKED));
    }
}
