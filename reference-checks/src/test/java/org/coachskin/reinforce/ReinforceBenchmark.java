package org.coachskin.reinforce;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.coachskin.check.Job;
import org.coachskin.check.Margin;
import org.coachskin.check.PanelCheck;
import org.coachskin.check.Verdict;
import org.coachskin.cli.file.PanelFile;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/**
 * The trailer door's window: all its offers told from those that are solved, those that are solved
 * among them; one offer judged by coarser elements, one in full; the whole search.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class ReinforceBenchmark {

    private final PanelFile file =
            PanelFile.read(Path.of("..", "examples", "panels", "trailer-door.yaml"));
    private final Job job = file.asDrawn();
    private final Target window = Target.named(job, "window").orElseThrow();
    private final Verdict bare = PanelCheck.brief().check(job);
    private final Offers offers = new Offers(file.library(), job, job, window, Rules.ANY);
    private final List<Measure> measures = offers.all(bare);
    private final Measure one =
            measures.stream()
                    .filter(measure -> measure.build() instanceof Build.Strip && measure.turned())
                    .findFirst()
                    .orElseThrow();

    /** Returns the felt stiffness of all {@link #count} offers. */
    @Benchmark
    public List<Double> allForecast() {
        Learning learning = Learning.of(bare, window, offers).orElseThrow();
        List<Double> felt = new ArrayList<>();
        for (Measure measure : measures) {
            felt.add(learning.felt(measure, Laying.on(job, window, measure).panel()));
        }
        return felt;
    }

    /** Returns the margins of one offer by coarser elements, on a mesh of its own. */
    @Benchmark
    public List<Margin> oneBrief() {
        return PanelCheck.brief().margins(Laying.on(job, window, one));
    }

    /** Returns the verdict on one offer. */
    @Benchmark
    public Verdict oneInFull() {
        return new PanelCheck().check(Laying.on(job, window, one));
    }

    /** Returns the answer. */
    @Benchmark
    public Reinforcement search() {
        return new Reinforcing(file.library()).of(job, window, Rules.ANY, Watch.NOBODY);
    }

    int count() {
        return measures.size();
    }
}
