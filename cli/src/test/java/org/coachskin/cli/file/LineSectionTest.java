package org.coachskin.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.coachskin.check.PanelCheck;
import org.coachskin.check.Verdict;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What presses along a line, as a file says it. */
class LineSectionTest extends LidFiles {

    private static final String LID = SANDWICH + "held: all edges\n";

    private static final String ROUND = "corner radius: 80 mm\n";

    private static final String VENT =
            "openings: [{name: vent, shape: circle 80 mm, centre: {from left: 450 mm, from front: 480 mm}}]\n";

    private static final String TRIANGLE =
            "outline: [{from left: 0 mm, from front: 0 mm}, {from left: 900 mm, from front: 0 mm}, {from left: 0 mm, from front: 600 mm}]\n";

    private static String pressed(String head, String words) {
        return head + "loads: {strap: " + words + "}\n";
    }

    private LoadCase load(String head, String words) throws IOException {
        return read(pressed(head, words)).asDrawn().loads().get(0);
    }

    @Test
    void aLineRunsAlongAnEdgeOrBetweenTwoPlaces() throws IOException {
        LoadCase strap =
                load(
                        LID,
                        "{line: [{from left: 100 mm, from front: 200 mm}, {from left: 0.8 m, from front: 50 cm}], force: 200 N per m, stays: yes}");
        assertEquals(List.of(new Load.Line(200, 0.1, 0.2, 0.8, 0.5)), strap.loads());
        assertTrue(strap.stays());
        assertEquals(LoadCase.Kind.TOUCH, strap.kind());
        LoadCase leaning = load(LID, "{line: rear edge, force: 0.3 N/mm, people: yes}");
        assertEquals(List.of(new Load.Line(300, 0, 0.6, 0.9, 0.6)), leaning.loads());
        assertEquals(LoadCase.Kind.PERSON, leaning.kind());
        assertEquals(
                List.of(new Load.Line(300, 0.9, 0.08, 0.9, 0.52)),
                load(LID + ROUND, "{line: right edge, force: 300 N/m}").loads());
    }

    /** The panel would be one for the series. */
    @Test
    void itIsJudgedOnAnyPanelAndTheAnswerSaysWhatItLeavesOut() throws IOException {
        String line =
                "{line: [{from left: 200 mm, from front: 300 mm}, {from left: 700 mm, from front: 300 mm}], force: 400 N per m}";
        Verdict verdict = PanelCheck.brief().check(read(pressed(LID, line)).asDrawn());
        assertTrue(
                verdict.cautions().stream()
                        .anyMatch(caution -> caution.contains("along a line (strap)")),
                verdict.cautions().toString());
        assertTrue(verdict.movements().get(0).total() > 1e-3, verdict.movements().toString());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "{line: rear edge}|\"force\" is missing|force:",
                "{line: rear edge, force: 200 N}|a force; a force per length is wanted|N/m",
                "{line: rear edg, force: 200 N/m}|No edge is called \"rear edg\"|line: rear edge",
                "{line: all edges, force: 200 N/m}|runs along one edge|line: rear edge",
                "{line: rear edge, force: 200 N/m, patch: 20 mm disc}|no \"patch\"|patch   out",
                "{line: rear edge, force: 200 N/m, at: middle}|no \"at\"|at   out",
                "{line: [{from left: 100 mm, from front: 200 mm}], force: 200 N/m}|has two ends|line: rear edge",
                "{line: [{from left: 100 mm}, {from left: 200 mm, from front: 200 mm}], force: 200 N/m}|\"from front\" is missing|from front",
                "{line: [{from left: 100 mm, from front: 200 mm}, {from left: 100 mm, from front: 200 mm}], force: 200 N/m}|begins where it ends|line: rear edge",
                "{line: [{from left: 100 mm, from front: 200 mm}, {from left: 1 m, from front: 200 mm}], force: 200 N/m}|partly off the panel|900 mm by 600 mm",
                "{line: [{from left: 100 mm, from front: 480 mm}, {from left: 800 mm, from front: 480 mm}], force: 200 N/m}|partly over the opening \"vent\"|Move the ends",
            })
    void aSlipIsNamed(String words, String what, String fix) {
        only(problems(pressed(LID + VENT, words)), "line 10", what, fix);
    }

    @Test
    void anOutlineOfItsOwnWantsBothEnds() {
        only(
                problems(pressed(LID + TRIANGLE, "{line: rear edge, force: 200 N/m}")),
                "line 10",
                "outline is no rectangle",
                "Write   line: [{from left");
    }
}
