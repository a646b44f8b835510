package org.coachskin.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.coachskin.Source;
import org.coachskin.check.Job;
import org.coachskin.failure.Factors;
import org.coachskin.laminate.Patch;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.Foam;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.junit.jupiter.api.Test;

/** What a good panel file is read as. */
class PanelFileTest extends LidFiles {

    private static final String LID =
            """
            name: lid
            width: 900 mm
            length: 2 ft
            foam: {kind: PVC, density: 80 kg/m^3, thickness: 1/2 in}
            resin: epoxy
            outside: [2 x twill glass 300 g/m^2, plain glass 6 oz]
            inside: [{cloth: twill glass 300 gsm, angle: 45 deg}]
            held: all edges
            """;

    /** One rounding each of a product and a quotient. */
    private static final double ROUNDING = 1e-12;

    private static List<String> names(List<Schedule.Item> skin) {
        return skin.stream()
                .map(
                        item ->
                                item instanceof Schedule.Wet wet
                                        ? wet.cloth().name()
                                        : ((Schedule.Given) item).ply().name())
                .toList();
    }

    private static Load.Press press(LoadCase load) {
        return (Load.Press) load.loads().get(0);
    }

    @Test
    void sizesAndPliesComeInSiAndInTheOrderOfLaying() throws IOException {
        PanelFile file = read(LID);
        Job job = file.asDrawn();

        assertEquals(0.9, job.panel().width(), ROUNDING);
        assertEquals(0.6096, job.panel().length(), ROUNDING);
        Schedule.Board board = Optional.ofNullable(job.schedule().board()).orElseThrow();
        assertEquals(0.0127, board.thickness(), ROUNDING);
        assertEquals(
                List.of("twill glass 300 g/m^2", "twill glass 300 g/m^2", "plain glass 203 g/m^2"),
                names(job.schedule().outside()));
        assertEquals(Math.PI / 4, job.schedule().inside().get(0).angle(), ROUNDING);
    }

    @Test
    void whatIsLaidNeedsNeitherSizeNorSupportNorLoads() throws IOException {
        String laid = LID.replaceAll("(width|length|held): .*\n", "");
        Path file = Files.writeString(folder.resolve("laid.yaml"), laid);

        assertEquals(read(LID).asDrawn().schedule(), PanelFile.readLaid(file).schedule());
    }

    @Test
    void whatIsLeftOutIsFilledInAndSaid() throws IOException {
        PanelFile file = read(LID);

        assertEquals(
                List.of("palm", "thumb"),
                file.asDrawn().loads().stream().map(LoadCase::name).sorted().toList());
        List<String> keys =
                file.assumptions().stream().map(PanelFile.Assumption::key).distinct().toList();
        assertTrue(
                keys.containsAll(
                        List.of("crown", "method", "seal coat", "loads", "limits", "cloth")),
                keys.toString());
        assertTrue(
                file.assumptions().stream()
                        .anyMatch(a -> a.words().contains("plain glass 203 g/m^2")));
    }

    @Test
    void ouncesOfMatAreToTheSquareFootAndOfClothToTheSquareYard() throws IOException {
        PanelFile file =
                read(
                        LID.replaceFirst(
                                "outside: .*",
                                "outside: [mat glass 1.5 oz, mat glass 3/4 oz/ft^2, plain glass 10 oz, stitched glass 0/90 17 oz]"));

        assertEquals(
                List.of(
                        "mat glass 458 g/m^2",
                        "mat glass 229 g/m^2",
                        "plain glass 339 g/m^2",
                        "stitched glass 0/90 576 g/m^2"),
                names(file.asDrawn().schedule().outside()));
    }

    @Test
    void variantsSayOnlyWhatDiffersAlsoInsideTheFoam() throws IOException {
        PanelFile file =
                read(
                        LID
                                + """
                                variants:
                                  thick: {foam: {thickness: 18 mm}}
                                  heavy: {inside add: twill glass 300 g/m^2}
                                  bare inside: {inside: none}
                                """);

        assertEquals(
                List.of("as drawn", "thick", "heavy", "bare inside"),
                List.copyOf(file.jobs().keySet()));
        Schedule.Board board =
                Optional.ofNullable(job(file, "thick").schedule().board()).orElseThrow();
        assertEquals(0.018, board.thickness(), ROUNDING);
        assertEquals(80, board.foam().density());
        assertEquals(2, job(file, "heavy").schedule().inside().size());
        assertEquals(List.of(), job(file, "bare inside").schedule().inside());
        assertEquals(1, file.asDrawn().schedule().inside().size());
    }

    private static Job job(PanelFile file, String name) {
        return Optional.ofNullable(file.jobs().get(name)).orElseThrow();
    }

    @Test
    void loadsComeWithTheirPlaceAndSettings() throws IOException {
        List<LoadCase> loads =
                read(LID
                                + """
                                        loads:
                                          palm: {at: right edge}
                                          knee: {at: {from left: 300 mm, from front: 200 mm}}
                                          wind: 110 km/h
                                          snow: 1 kPa
                                          luggage: {mass: 25 kg, spread over: 400 mm x 300 mm, stays: 3 months}
                                          box: {force: 40 kgf, patch: 50 mm disc, stays: no}
                                          own weight:
                                        """)
                        .asDrawn()
                        .loads();

        assertEquals(
                List.of("palm", "knee", "wind", "snow", "luggage", "box", "own weight"),
                loads.stream().map(LoadCase::name).toList());
        assertEquals(0.85, press(loads.get(0)).x(), ROUNDING);
        assertEquals(0.2, press(loads.get(1)).y(), ROUNDING);
        assertTrue(loads.get(2).reverses());
        assertEquals(
                List.of(false, false, false, true, true, false, true),
                loads.stream().map(LoadCase::stays).toList());
        assertEquals(new Patch.Disc(0.05), press(loads.get(5)).patch());
        assertEquals(40 * 9.80665, press(loads.get(5)).force(), ROUNDING * 400);
    }

    @Test
    void heatStandsBesideEveryLoad() throws IOException {
        List<LoadCase> loads =
                read(LID + "loads: {palm: , heat: {outside: 60 K, inside: 25 K}}\n")
                        .asDrawn()
                        .loads();

        assertEquals(1, loads.size());
        assertEquals(List.of(new Load.Heat(60, 25)), loads.get(0).standing());
    }

    @Test
    void aRiseAndARadiusSayTheSameCrown() throws IOException {
        double rise = read(LID + "crown: {across: 45 mm}\n").asDrawn().panel().crown().across();
        double radius =
                read(LID + "crown: {radius across: 2.2725 m}\n").asDrawn().panel().crown().across();

        assertEquals(1 / 2.2725, rise, ROUNDING);
        assertEquals(radius, rise, ROUNDING);
    }

    @Test
    void materialsOfOnesOwnComeFromThePanelFileAndFromAFileOfTheirOwn() throws IOException {
        Files.writeString(
                folder.resolve("own.yaml"),
                """
                my fibres:
                  flax: {E1: 60 GPa, E2: 8 GPa, G12: 3 GPa, density: 1450 kg/m^3, tension: 700 MPa}
                my cloths:
                  house twill: {mass: 310 g/m^2, weave: twill, fibre: flax}
                  overridden: {mass: 100 g/m^2}
                my foams:
                  cork: {density: 120 kg/m^3, E through the thickness: 20 MPa, G: 6 MPa,
                         shear strength: 0.9 MPa, crush strength: 0.5 MPa, tensile strength: 0.6 MPa}
                """);
        PanelFile file =
                read(
                        LID.replaceFirst("foam: .*", "foam: {kind: cork, thickness: 10 mm}")
                                        .replaceFirst("outside: .*", "outside: [house twill, door]")
                                        .replaceFirst("inside: .*", "inside: [overridden]")
                                + """
                                materials: own.yaml
                                my cloths: {overridden: {mass: 250 g/m^2}}
                                my plies:
                                  door: {E1: 18 GPa, nu12: 0.13, G12: 3 GPa, thickness: 0.4 mm, density: 1700 kg/m^3,
                                         tension 1: 250 MPa, compression 1: 200 MPa, shear 12: 50 MPa}
                                """);

        Schedule schedule = file.asDrawn().schedule();
        assertEquals(List.of("house twill", "door"), names(schedule.outside()));
        Foam foam = Optional.ofNullable(schedule.board()).orElseThrow().foam();
        assertEquals(Foam.Kind.OTHER, foam.kind());
        assertEquals(20e6, foam.eInPlane());
        assertEquals(0.25, ((Schedule.Wet) schedule.inside().get(0)).cloth().arealMass(), ROUNDING);
    }

    @Test
    void limitsAndFactorsAreTakenFromTheFile() throws IOException {
        Job job =
                read(LID
                                + """
                                        limits:
                                          felt stiffness: 200 lbf/in
                                          sag: span/150
                                          marks allowed: yes
                                          factors: {laminate: 2.8, wrinkling: 2.0}
                                        """)
                        .asDrawn();

        assertEquals(200 * 4.4482216152605 / 0.0254, job.limits().feltStiffness(), 1e-6);
        assertEquals(1.0 / 150, job.limits().spanShare(), ROUNDING);
        assertTrue(job.limits().marksAllowed());
        Factors factors = job.limits().factors();
        assertEquals(2.8, factors.on(Factors.On.LAMINATE_MINIMUM).value());
        assertEquals(2.0, factors.on(Factors.On.WRINKLING).value());
        assertEquals(Source.YOURS, factors.on(Factors.On.WRINKLING).source());
        // What is not given stays as the table has it, source and all.
        assertEquals(Factors.STANDARD.on(Factors.On.CORE_SHEAR), factors.on(Factors.On.CORE_SHEAR));
        assertFalse(read(LID).asDrawn().limits().marksAllowed());
    }

    @Test
    void theSoftestPlaceIsLookedForFromAnyThatIsOnThePanel() throws IOException {
        LoadCase palm =
                read(LID
                                + "loads: {palm: {at: softest place}}\n"
                                + "openings: [{name: vent, shape: 200 mm x 150 mm, "
                                + "centre: {from left: 450 mm, from front: 300 mm}}]\n")
                        .asDrawn()
                        .loads()
                        .get(0);
        assertTrue(palm.softest());
        Load.Press press = press(palm);
        assertTrue(
                Math.abs(press.x() - 0.45) >= 0.149 || Math.abs(press.y() - 0.3) >= 0.114,
                press.toString());
    }
}
