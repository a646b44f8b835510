package org.coachskin.series;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Objects;
import org.coachskin.NoAnswerException;
import org.coachskin.TestStacks;
import org.coachskin.analysis.Response;
import org.coachskin.harmonic.FoamSolid;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.LayerStress;
import org.coachskin.laminate.LayeredStiffness;
import org.coachskin.laminate.Patch;
import org.coachskin.laminate.SectionState;
import org.coachskin.laminate.Triple;
import org.coachskin.local.LocalEffect;
import org.coachskin.panel.Load;
import org.coachskin.panel.Panel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the full layered theory must do beside the layered one, and in equilibrium. */
class FullLayeredMechanicsTest {

    private static final FullLayeredAnalysis FULL = new FullLayeredAnalysis();

    private static Panel panel(String name) {
        return Objects.requireNonNull(SeriesPanels.all().get(name));
    }

    @ParameterizedTest
    @ValueSource(strings = {"lid", "one skin"})
    void theRimCarriesWhatIsPressedAndBlownOnThePanel(String name) {
        Panel panel = panel(name);
        List<Load> loads =
                List.of(
                        new Load.Press(250, new Patch.Rectangle(0.05, 0.08), 0.2, 0.3),
                        new Load.Pressure(1000));
        double force = 250 + 1000 * panel.area();
        double carried = SeriesMechanicsTest.carried(panel, FULL.statics(panel, loads)::forces);
        assertEquals(force, carried, 1e-6 * force);
    }

    @ParameterizedTest
    @ValueSource(strings = {"lid", "stout skins", "uneven", "crowned lid"})
    void underAnEvenPressureItIsTheLayeredTheory(String name) {
        Panel panel = panel(name);
        double x = panel.width() / 2;
        double y = panel.length() / 2;
        List<Load> loads = List.of(new Load.Pressure(1000));
        Response layered = new SeriesAnalysis().statics(panel, loads);
        FullLayeredSection full = FULL.statics(panel, loads).at(x, y);
        double deflection = layered.deflection(x, y);
        assertEquals(deflection, full.deflection(), 0.005 * deflection);
        double moment = layered.forces(x, y).m().x();
        assertEquals(moment, full.forces().m().x(), 0.01 * Math.abs(moment));
    }

    @Test
    void withFoamThatNothingDentsOrShearsItIsTheLayeredTheoryBesideAPatchToo() {
        Laminate rigid = TestStacks.sandwich(1, 0.01, 1, 240e6, 84e6);
        Panel panel = Panel.flat("rigid", 0.5, 0.4, rigid);
        List<Load> loads = List.of(new Load.Press(250, new Patch.Rectangle(0.1, 0.08), 0.25, 0.2));
        Response layered = new SeriesAnalysis().statics(panel, loads);
        FullLayeredSection full = FULL.statics(panel, loads).at(0.25, 0.2);
        double deflection = layered.deflection(0.25, 0.2);
        assertEquals(deflection, full.deflection(), 0.002 * deflection);
        assertTrue(full.dent() > 0 && full.dent() < 0.002 * deflection, full.dent() + " m");
        double half = rigid.thickness() / 2;
        SectionState state = layered.state(0.25, 0.2);
        double strain = state.strainAt(LayeredStiffness.of(rigid), half).x();
        assertEquals(strain, full.strain(half).x(), 0.01 * Math.abs(strain));
    }

    @Test
    void farFromTheRimItsDifferenceToTheLayeredTheoryIsTheLocalEffect() {
        Panel panel = SeriesPanels.lid();
        Laminate lid = panel.laminate();
        Patch patch = new Patch.Rectangle(0.03, 0.03);
        List<Load> loads = List.of(new Load.Press(250, patch, 0.45, 0.35));
        Response layered = new SeriesAnalysis().statics(panel, loads);
        FullLayeredResponse full = FULL.statics(panel, loads);
        LocalEffect local = LocalEffect.of(lid, patch, 250);
        double half = lid.thickness() / 2;
        double foamMiddle = lid.bottom(lid.innermostCore()) + 0.006;
        LayeredStiffness stiffness = LayeredStiffness.of(lid);
        for (double dx : new double[] {0, 0.012, 0.02}) {
            LocalEffect.Here here = local.at(dx, 0);
            SectionState state = layered.state(0.45 + dx, 0.35);
            FullLayeredSection at = full.at(0.45 + dx, 0.35);
            for (double z : new double[] {half, -half}) {
                // Where the whole passes through nought the effect itself is the scale.
                double whole = Math.max(Math.abs(at.strain(z).x()), Math.abs(here.strain(z).x()));
                double difference = at.strain(z).plus(state.strainAt(stiffness, z), -1).x();
                assertEquals(here.strain(z).x(), difference, 0.02 * whole, dx + " m");
            }
            double shear = at.foam(foamMiddle).xz() - 4.2e6 * state.foamShearX();
            assertEquals(
                    here.foam(0.5).x(), shear, 0.02 * Math.abs(local.at(0.015, 0).foam(0.5).x()));
        }
    }

    /** Foam gets thinner where it is stretched, in a panel more than in the cell of the effect. */
    @ParameterizedTest
    @ValueSource(doubles = {0.03, 0.1})
    void theDentIsThatOfTheLocalEffectAndWhatTheFoamIsStretchedMore(double side) {
        Panel panel = SeriesPanels.lid();
        Laminate lid = panel.laminate();
        Patch patch = new Patch.Rectangle(side, side);
        double cell = side + 16 * lid.thickness();
        Panel small = Panel.flat("cell", cell, cell, lid);
        Layer.Core core = (Layer.Core) lid.layers().get(lid.innermostCore());
        FoamSolid foam = FoamSolid.of(core.foam());
        double more = stretch(panel, patch) - stretch(small, patch);
        double thinner = foam.c13() / foam.c33() * more * core.thickness();
        List<Load> loads = List.of(new Load.Press(250, patch, 0.45, 0.35));
        double dent = FULL.statics(panel, loads).dent(0.45, 0.35);
        double local = LocalEffect.of(lid, patch, 250).dent();
        assertTrue(thinner > 0.01 * dent, thinner + " m");
        assertEquals(thinner, dent - local, 0.02 * thinner);
    }

    /** The two strains of the foam's middle together, by layered theory. */
    private static double stretch(Panel panel, Patch patch) {
        double x = panel.width() / 2;
        double y = panel.length() / 2;
        Laminate lid = panel.laminate();
        double middle = lid.bottom(lid.innermostCore()) + 0.006;
        Triple strain =
                new SeriesAnalysis()
                        .statics(panel, List.of(new Load.Press(250, patch, x, y)))
                        .state(x, y)
                        .strainAt(LayeredStiffness.of(lid), middle);
        return strain.x() + strain.y();
    }

    @Test
    void skinsAndFoamTogetherAreTheSection() {
        Panel panel = SeriesPanels.lid();
        Load palm = new Load.Press(250, new Patch.Rectangle(0.1, 0.08), 0.45, 0.35);
        FullLayeredSection at = FULL.statics(panel, List.of(palm)).at(0.5, 0.35);
        LayerStress outside = at.skins().get(2);
        double t = panel.laminate().layers().get(3).thickness();
        double n = t * (at.skins().get(1).panelInner().x() + outside.panelOuter().x());
        // Stress is linear over two equal plies.
        assertEquals(n, at.outsideSkin().n().x(), 1e-9 * Math.abs(n));
        double foam = 0;
        int parts = 1000;
        double bottom = panel.laminate().bottom(1);
        for (int i = 0; i < parts; i++) {
            foam += at.foam(bottom + 0.012 * (i + 0.5) / parts).xz() * 0.012 / parts;
        }
        double q = at.forces().qx();
        assertEquals(q, foam + at.outsideSkin().qx() + at.insideSkin().qx(), 1e-5 * Math.abs(q));
    }

    @Test
    void aWarmedPanelBowsAsInLayeredTheory() {
        Panel panel = SeriesPanels.lid();
        List<Load> sun = List.of(new Load.Heat(40, 10));
        Response layered = new SeriesAnalysis().statics(panel, sun);
        FullLayeredSection full = FULL.statics(panel, sun).at(0.45, 0.35);
        double deflection = layered.deflection(0.45, 0.35);
        assertEquals(deflection, full.deflection(), 0.005 * Math.abs(deflection));
        Triple moment = layered.forces(0.45, 0.35).m();
        assertEquals(moment.x(), full.forces().m().x(), 0.01 * Math.abs(moment.x()));
    }

    @Test
    void skinsThatTwistEachByItselfAreRefusedThoughTheStackDoesNot() {
        double[] angles = {30, -30, -30, 30};
        Layer[] layers = new Layer[9];
        for (int i = 0; i < 4; i++) {
            layers[i] = SeriesPanels.laid(TestStacks.unequal(), angles[i]);
            layers[5 + i] = SeriesPanels.laid(TestStacks.unequal(), -angles[i]);
        }
        layers[4] = SeriesPanels.foam(0.012);
        Panel panel = Panel.flat("crossed", 0.5, 0.5, SeriesPanels.laminate(layers));
        List<Load> loads = List.of(new Load.Pressure(1000));
        assertTrue(new SeriesAnalysis().statics(panel, loads).deflection(0.25, 0.25) > 0);
        assertThrows(NoAnswerException.class, () -> FULL.statics(panel, loads));
        assertThrows(NoAnswerException.class, () -> FULL.frequency(panel));
    }

    @Test
    void aHeightWithoutFoamOrOutsideTheStackIsRefused() {
        Panel panel = SeriesPanels.lid();
        double half = panel.laminate().thickness() / 2;
        FullLayeredSection at =
                FULL.statics(panel, List.of(new Load.Pressure(1000))).at(0.45, 0.35);
        assertThrows(IllegalArgumentException.class, () -> at.foam(half));
        assertThrows(IllegalArgumentException.class, () -> at.strain(1.01 * half));
        assertThrows(IllegalArgumentException.class, () -> at.deflection(Double.NaN));
    }
}
