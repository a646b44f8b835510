package org.coachskin.check;

import java.util.List;
import org.coachskin.design.Cures;
import org.coachskin.laminate.*;
import org.coachskin.material.*;
import org.coachskin.panel.*;
import org.coachskin.prove.StripTest;
import org.junit.jupiter.api.Test;

class TrialTest {
    @Test
    void trial() {
        for (int k = 0; k < 3; k++) {
            long t = System.nanoTime();
            MaterialLibrary m = MaterialLibrary.standard();
            Schedule.Item ply = new Schedule.Wet(m.cloth("twill glass 300 g/m^2").orElseThrow(), 0);
            Schedule s =
                    new Schedule(
                            List.of(ply, ply),
                            List.of(ply),
                            new Schedule.Board(
                                    m.foam(Foam.Kind.POLYURETHANE, 64).orElseThrow(),
                                    0.012,
                                    0.7e-3),
                            m.resin("epoxy").orElseThrow(),
                            LayUp.USUAL,
                            Schedule.SealCoatMass.USUAL,
                            false);
            Job job =
                    Job.of(
                            "lid",
                            0.9,
                            0.6,
                            Crown.FLAT,
                            new Support.WholeRim(),
                            s,
                            List.of(
                                    EverydayLoads.named("palm").orElseThrow().at(0.45, 0.3),
                                    EverydayLoads.named("thumb").orElseThrow().at(0.45, 0.3),
                                    EverydayLoads.wind(110 / 3.6)),
                            Limits.STANDARD);
            Verdict v = new PanelCheck().check(job);
            long t1 = System.nanoTime();
            System.out.println(
                    "V "
                            + v.stiff()
                            + v.strong()
                            + v.unmarked()
                            + " felt "
                            + v.felt()
                            + " f "
                            + v.frequency()
                            + " lift "
                            + v.liftOffSpeed() * 3.6
                            + " ms "
                            + (t1 - t) / 1e6);
            if (k == 0) {
                v.margins().forEach(x -> System.out.println("V   " + x));
                v.movements().forEach(x -> System.out.println("V   " + x));
                Ply p = ((Layer.Laid) job.panel().laminate().layers().get(0)).ply();
                System.out.println("V   " + p);
            }
            var cures = new Cures(m).toCure(v);
            cures.forEach(
                    c ->
                            System.out.println(
                                    "V   "
                                            + c.words()
                                            + " "
                                            + c.verdict().felt().get().nominal()
                                            + " "
                                            + c.addedMass()
                                            + c.verdict().stiff()
                                            + c.verdict().strong()));
            System.out.println(
                    "V cures ms " + (System.nanoTime() - t1) / 1e6 + " " + StripTest.of(s));
        }
    }
}
