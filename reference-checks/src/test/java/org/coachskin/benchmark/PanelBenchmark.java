package org.coachskin.benchmark;

import java.util.Collections;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.coachskin.analysis.Response;
import org.coachskin.check.Job;
import org.coachskin.check.Limits;
import org.coachskin.check.PanelCheck;
import org.coachskin.check.Verdict;
import org.coachskin.design.Cures;
import org.coachskin.laminate.LayUp;
import org.coachskin.laminate.Schedule;
import org.coachskin.local.LocalEffect;
import org.coachskin.material.Foam;
import org.coachskin.material.MaterialLibrary;
import org.coachskin.panel.Crown;
import org.coachskin.panel.EverydayLoads;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Support;
import org.coachskin.series.SeriesAnalysis;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/**
 * How many panels a second: the luggage lid of the examples under palm and thumb, in a warm JVM.
 * Nothing is kept from one call to the next.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
public class PanelBenchmark {

    private static final MaterialLibrary TABLES = MaterialLibrary.standard();

    private final Job job;
    private final Load.Press thumb;
    private final Cures cures = new Cures(TABLES);

    /** Lays the lid. */
    public PanelBenchmark() {
        Schedule schedule =
                new Schedule(
                        plies(2),
                        plies(1),
                        new Schedule.Board(
                                TABLES.foam(Foam.Kind.POLYURETHANE, 64).orElseThrow(),
                                0.012,
                                Schedule.Board.USUAL_SPREAD),
                        TABLES.resin("epoxy").orElseThrow(),
                        LayUp.USUAL,
                        Schedule.SealCoatMass.USUAL,
                        false);
        job =
                Job.of(
                        "luggage lid",
                        0.9,
                        0.6,
                        Crown.FLAT,
                        new Support.WholeRim(),
                        schedule,
                        List.of(load("palm"), load("thumb")),
                        Limits.STANDARD);
        thumb = (Load.Press) job.loads().get(1).loads().get(0);
    }

    private static List<Schedule.Item> plies(int count) {
        return Collections.nCopies(
                count, new Schedule.Wet(TABLES.cloth("twill glass 300 g/m^2").orElseThrow(), 0));
    }

    private static LoadCase load(String name) {
        return EverydayLoads.named(name).orElseThrow().at(0.45, 0.3);
    }

    /** Returns the deflection under the thumb; all of the section is worked out at three places. */
    @Benchmark
    public double series() {
        Response response = new SeriesAnalysis().statics(job.panel(), List.of(thumb));
        double edge = 0.45 + Math.sqrt(thumb.patch().area()) / 2;
        return response.deflection(0.45, 0.3)
                + response.state(0.45, 0.3).membrane().x()
                + response.state(edge, 0.3).membrane().x()
                + response.state(0.1, 0.1).membrane().x();
    }

    /** Returns the dent of the thumb; strains are worked out in its middle and at its edge. */
    @Benchmark
    public double local() {
        LocalEffect local = LocalEffect.of(job.panel().laminate(), thumb.patch(), thumb.force());
        double half = job.panel().laminate().thickness() / 2;
        double edge = Math.sqrt(thumb.patch().area()) / 2;
        return local.dent()
                + local.at(0, 0).strain(half).x()
                + local.at(edge, 0).strain(half).x()
                + local.at(0, edge).strain(half).y();
    }

    /** Returns the verdict alone. */
    @Benchmark
    public Verdict verdict() {
        return new PanelCheck().check(job);
    }

    /** Returns how many changes hold: the verdict and all that {@code check} tries beside it. */
    @Benchmark
    public int check() {
        return cures.toLeaveOut(new PanelCheck().check(job)).size();
    }
}
