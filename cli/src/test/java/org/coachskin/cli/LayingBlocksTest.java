package org.coachskin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.coachskin.bench.LayingList;
import org.coachskin.check.Job;
import org.coachskin.check.PanelCheck;
import org.coachskin.check.Weights;
import org.coachskin.cli.report.Block;
import org.coachskin.cli.report.Mark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The laying list of the bench sheet. */
class LayingBlocksTest {

    private static final String NOT_BROKEN = "\u00a0";

    @TempDir Path folder;

    private static Job job(String panel) {
        return Panels.read("../examples/panels/" + panel + ".yaml").asDrawn();
    }

    private static List<List<String>> rows(Job job, Figures figures) {
        Block.Rows rows = (Block.Rows) new LayingBlocks(job, figures).list();
        return rows.rows();
    }

    private static double grams(String cell) {
        return cell.isEmpty() ? 0 : Double.parseDouble(cell.replace(" g", ""));
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "roof-hatch",
                "trailer-side-door",
                "luggage-lid-hinged",
                "luggage-lid",
                "trailer-roof",
                "bare-panel",
                "outside-only"
            })
    void whatIsLaidAddsUpToWhatTheVerdictWeighs(String panel) {
        Job job = job(panel);
        Weights weights = Weights.of(job);
        double laid = new PanelCheck().mass(job) - weights.foam() - weights.inserts();
        assertEquals(laid, LayingList.of(job).weight().total(), 1e-5 * laid);

        List<List<String>> rows = rows(job, Figures.METRIC);
        List<String> sum = rows.get(rows.size() - 1);
        assertEquals("sum", sum.get(0));
        // Both figures are to 5 g.
        assertEquals(1000 * laid, grams(sum.get(4)) + grams(sum.get(5)), 5);
        for (int column : new int[] {4, 5}) {
            double all = 0;
            for (List<String> row : rows.subList(0, rows.size() - 1)) {
                all += grams(row.get(column));
            }
            assertEquals(grams(sum.get(column)), all, 2.5 * rows.size());
        }
        Block.Rows stages = (Block.Rows) new LayingBlocks(job, Figures.METRIC).stages();
        double mixed = stages.rows().stream().mapToDouble(row -> grams(row.get(1))).sum();
        assertEquals(grams(sum.get(5)), mixed, 7.5);
    }

    @Test
    void theDoorIsLaidPieceByPiece() {
        List<List<String>> rows = rows(job("trailer-side-door"), Figures.METRIC);
        List<String> cuts =
                rows.stream().map(row -> row.get(1) + " " + cut(row)).map(String::strip).toList();

        assertEquals(
                List.of(
                        "",
                        "650 \u00d7 1100 mm",
                        "",
                        "1 700 \u00d7 1150 mm",
                        "2 700 \u00d7 1150 mm",
                        "",
                        "a 2 of 90 \u00d7 500 mm, 2 of 90 \u00d7 420 mm",
                        "b 60 \u00d7 1100 mm",
                        "",
                        "3 700 \u00d7 1150 mm",
                        "a 520 \u00d7 420 mm, window cut out",
                        "leave 45 mm on",
                        ""),
                cuts);
        assertEquals("Let it cure, turn it over.", rows.get(5).get(2));
        assertEquals(
                "Foam strip 10 mm thick, 50 mm round window: bevel the 40 mm beyond that down to "
                        + "nothing, glue on.",
                rows.get(6).get(2));
        assertEquals(
                "Take the foam out 60 mm along left edge, glue in plywood 15 mm thick.",
                rows.get(7).get(2));
        assertEquals("twill glass 300 g/m\u00b2, 50 mm round window", rows.get(10).get(2));
        assertEquals(
                "Turn the inside skin round the raw foam of the window and 20 mm onto the outside skin.",
                rows.get(11).get(2));
    }

    @Test
    void whereAnotherZoneDecidesTheListSaysSo() throws IOException {
        Path wider = folder.resolve("door.yaml");
        Files.writeString(
                wider,
                Files.readString(Path.of("../examples/panels/trailer-side-door.yaml"))
                        .replace("left edge, width: 60 mm", "left edge, width: 70 mm"));
        List<List<String>> rows = rows(Panels.read(wider.toString()).asDrawn(), Figures.METRIC);

        assertEquals(
                "Foam strip 10 mm thick, 50 mm round window: bevel the 40 mm beyond that down to "
                        + "nothing, glue on, but not in b.",
                rows.get(6).get(2));
        assertEquals(
                "twill glass 300 g/m\u00b2, 50 mm round window, but not in b", rows.get(10).get(2));
    }

    private static String cut(List<String> row) {
        return row.get(3).replace(NOT_BROKEN, " ");
    }

    @Test
    void theLipComesAfterTheOutsideSkin() {
        List<List<String>> rows = rows(job("roof-hatch"), Figures.METRIC);
        List<String> what = rows.stream().map(row -> row.get(2)).toList();
        int turned = what.indexOf("Let it cure, turn it over.");

        assertEquals(
                "Take the foam out 30 mm along all edges, down to the skin.", what.get(turned + 1));
        assertEquals(
                "twill glass 300 g/m\u00b2, 30 mm along all edges, between the skins",
                what.get(turned + 3));
        assertEquals("2 of 30 \u00d7 500 mm, 2 of 30 \u00d7 440 mm", cut(rows.get(turned + 3)));
        assertEquals("3", rows.get(turned + 5).get(1));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "circle 100 mm"
                        + "| a ring 30 mm wide, 160 mm across, in four pieces or more"
                        + "| round, 140 mm across, hole cut out",
                "polygon, corners: [{from left: 150 mm, from front: 100 mm},"
                        + " {from left: 250 mm, from front: 100 mm},"
                        + " {from left: 250 mm, from front: 180 mm}]"
                        + "| a ring 30 mm wide, 160 x 140 mm over all, in four pieces or more"
                        + "| a ring 20 mm wide, from a piece 140 x 120 mm"
            })
    void roundAnOpeningThatIsNoRectangleARingIsCut(String shape, String foam, String cloth)
            throws IOException {
        Path file = folder.resolve("hole.yaml");
        String centre =
                shape.startsWith("circle")
                        ? ", centre: {from left: 200 mm, from front: 150 mm}"
                        : "";
        Files.writeString(
                file,
                """
                width: 400 mm
                length: 300 mm
                foam: {kind: polyurethane, density: 64 kg/m^3, thickness: 10 mm}
                resin: epoxy
                outside: [2 x plain glass 160 g/m^2]
                inside: [plain glass 160 g/m^2]
                openings: [{name: hole, shape: %s%s}]
                zones:
                  - {round: hole, width: 20 mm, inside: [plain glass 160 g/m^2]}
                  - {round: hole, width: 20 mm, foam strip: 5 mm, bevel: 10 mm, over it: [plain glass 160 g/m^2]}
                held: all edges
                loads: {palm: {at: {from left: 60 mm, from front: 150 mm}}}
                """
                        .formatted(shape, centre));
        List<String> cuts =
                rows(Panels.read(file.toString()).asDrawn(), Figures.METRIC).stream()
                        .map(row -> cut(row).replace('\u00d7', 'x'))
                        .filter(cut -> cut.contains("ring") || cut.contains("hole"))
                        .toList();
        assertEquals(List.of(foam, cloth), cuts);
    }

    @Test
    void sizesAreNotBrokenBetweenLines() {
        for (List<String> row : rows(job("trailer-side-door"), Figures.METRIC)) {
            assertTrue(row.get(3).matches("[^\u00d7]*|.*\\d\u00a0\u00d7\u00a0\\d+\u00a0mm.*"));
        }
    }

    @Test
    void thereAreBoxesForTheTimesAndNoHoursOfOurs() {
        LayingBlocks laying = new LayingBlocks(job("luggage-lid-hinged"), Figures.METRIC);
        Block.Rows stages = (Block.Rows) laying.stages();

        assertEquals(List.of("side", "resin", "mixed at", "laid by", "trim at"), stages.head());
        assertEquals(
                List.of(
                        List.of("outside", "480 g", "", "", ""),
                        List.of("inside", "335 g", "", "", "")),
                stages.rows());
        assertTrue(stages.sentence().contains("data sheet"));
    }

    @Test
    void americanUnitsAreOuncesAndInches() {
        List<List<String>> rows = rows(job("luggage-lid-hinged"), Figures.US);

        assertEquals("37.4 \u00d7 25.6 in", cut(rows.get(3)));
        assertEquals("5.7 oz", rows.get(3).get(4));
    }

    @ParameterizedTest
    @CsvSource({
        "outside, Lay 1 and 2 outside, turn over, lay 3 inside;, 213",
        "inside, Lay 1 inside, turn over, lay 2 and 3 outside;, 321"
    })
    void theCutNumbersPliesAsTheListDoes(
            String flush, String first, String then, String order, String numbers)
            throws IOException {
        Path file = folder.resolve("lip.yaml");
        Files.writeString(
                file,
                """
                width: 400 mm
                length: 300 mm
                foam: {kind: polyurethane, density: 64 kg/m^3, thickness: 10 mm}
                resin: epoxy
                outside: [2 x plain glass 160 g/m^2]
                inside: [plain glass 160 g/m^2]
                lip: {width: 30 mm, flush: %s}
                held: all edges
                loads: [palm]
                """
                        .formatted(flush));
        Job job = Panels.read(file.toString()).asDrawn();
        BuildSheet build = new BuildSheet(PanelCheck.brief().check(job), Figures.METRIC);
        Block.Figure cut = (Block.Figure) build.cut();

        assertTrue(
                cut.sentence().startsWith(String.join(", ", first, then, order)), cut.sentence());
        String shown =
                cut.drawing().marks().stream()
                        .filter(Mark.Text.class::isInstance)
                        .map(mark -> ((Mark.Text) mark).words())
                        .filter(words -> words.contains("plain glass"))
                        .map(words -> words.substring(0, 1))
                        .collect(Collectors.joining());
        assertEquals(numbers, shown);
        List<List<String>> rows = rows(job, Figures.METRIC);
        List<String> what = rows.stream().map(row -> row.get(2)).toList();
        int turned = what.indexOf("Let it cure, turn it over.");
        int plies = 0;
        for (List<String> row : rows.subList(0, turned)) {
            plies += row.get(1).isEmpty() ? 0 : 1;
        }
        assertEquals(flush.equals("inside") ? 1 : 2, plies);
    }
}
