package org.coachskin.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.coachskin.InputException;
import org.coachskin.Problem;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Height;
import org.coachskin.panel.TurnedEdge;
import org.coachskin.panel.TurnedEdge.Along;
import org.coachskin.panel.TurnedEdge.Round;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Skins turned round raw edges of the foam, as a file says them. */
class TurnedSectionTest {

    private static final String DOOR =
            """
            name: door
            width: 900 mm
            length: 600 mm
            foam: {kind: polyurethane, density: 64 kg/m^3, thickness: 12 mm}
            resin: epoxy
            outside: [twill glass 300 g/m^2]
            inside: [twill glass 300 g/m^2]
            held: all edges
            openings: [{name: window, shape: 120 mm x 60 mm, centre: {from left: 450 mm, from front: 480 mm}}]
            loads: {palm: {at: {from left: 200 mm, from front: 200 mm}}}
            """;

    @TempDir Path folder;

    private PanelFile read(String text) throws IOException {
        return PanelFile.read(Files.writeString(folder.resolve("door.yaml"), text));
    }

    private List<TurnedEdge> turned(String words) throws IOException {
        return read(DOOR + "turned: " + words + "\n").asDrawn().panel().turned();
    }

    @Test
    void edgesAndOpeningsAreTurnedAsTheFileSays() throws IOException {
        assertEquals(List.of(), read(DOOR).asDrawn().panel().turned());
        assertEquals(
                List.of(new Round("window", Height.OUTSIDE), new Round("window", Height.INSIDE)),
                turned("{window: [outside, inside]}"));
        assertEquals(
                List.of(
                        new Along(Edge.FRONT, Height.OUTSIDE),
                        new Along(Edge.LEFT, Height.INSIDE),
                        new Along(Edge.RIGHT, Height.INSIDE),
                        new Round("window", Height.INSIDE)),
                turned("{front edge: outside, rear edge: raw, all edges: inside, window: inside}"));
    }

    @Test
    void aSingleEdgeHasTheSayOverAllEdges() throws IOException {
        for (String words :
                List.of(
                        "{all edges: inside, rear edge: outside}",
                        "{rear edge: outside, all edges: inside}")) {
            assertTrue(turned(words).contains(new Along(Edge.REAR, Height.OUTSIDE)), words);
            assertEquals(4, turned(words).size(), words);
        }
    }

    @Test
    void whatTheLipTakesAwayIsNotTurned() throws IOException {
        PanelFile file =
                read(DOOR + "lip: {width: 20 mm, at: rear edge}\nturned: {all edges: inside}\n");
        List<TurnedEdge> turned = file.asDrawn().panel().turned();
        assertEquals(3, turned.size());
        assertTrue(!turned.contains(new Along(Edge.REAR, Height.INSIDE)));
        assertTrue(file.assumptions().stream().anyMatch(a -> a.key().equals("turned")));
    }

    @Test
    void aVariantTurnsOtherEdgesOrNone() throws IOException {
        PanelFile file =
                read(
                        DOOR
                                + "turned: {window: inside}\n"
                                + "variants: {raw: {turned: {window: raw}}, uncut: {openings: []}}\n");
        assertEquals(1, file.asDrawn().panel().turned().size());
        for (String variant : List.of("raw", "uncut")) {
            assertEquals(
                    List.of(),
                    Objects.requireNonNull(file.jobs().get(variant)).panel().turned(),
                    variant);
        }
    }

    @Test
    void theLayingListKnowsThemInWords() throws IOException {
        Path file =
                Files.writeString(
                        folder.resolve("laid.yaml"),
                        DOOR + "turned: {all edges: [outside, inside]}\n");
        assertEquals(
                List.of(
                        new PanelFile.Turned("all edges", Height.OUTSIDE),
                        new PanelFile.Turned("all edges", Height.INSIDE)),
                PanelFile.readLaid(file).turned());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "turned: inside|wants keys of its own|turned:",
                "turned: {windw: inside}|No edge and no opening is called \"windw\"|window: inside",
                "turned: {front edg: inside}|No edge and no opening is called|front edge: inside",
                "turned: {window: }|not said which skin|window: inside",
                "turned: {window: in side}|No skin is called \"in side\"|window: [outside, inside]",
                "turned: {window: [inside, raw]}|is not raw|or one of: outside, inside, raw",
                "turned: {window: {skin: inside}}|wants one value|window: ...",
            })
    void aSlipIsNamed(String key, String what, String fix) throws IOException {
        only(DOOR + key + "\n", "line 11", what, fix);
    }

    private void only(String text, String line, String what, String fix) {
        List<Problem> found = assertThrows(InputException.class, () -> read(text), text).problems();
        assertEquals(1, found.size(), found.toString());
        assertEquals(line, found.get(0).place());
        assertTrue(found.get(0).what().contains(what), found.toString());
        assertTrue(found.get(0).fix().contains(fix), found.toString());
    }

    @Test
    void whatCannotBeTurnedIsNamed() {
        String foam = "foam: {kind: polyurethane, density: 64 kg/m^3, thickness: 12 mm}\n";
        only(
                DOOR.replace(foam, "").replace("inside: [twill glass 300 g/m^2]", "inside: none")
                        + "turned: {window: outside}\n",
                "line 10",
                "no foam, so no edge of it is raw",
                "Take   turned   out");
        only(
                DOOR.replace("inside: [twill glass 300 g/m^2]", "inside: none")
                        + "turned: {window: inside}\n",
                "line 11",
                "No ply lies on the inside",
                "outside");
        only(
                DOOR + "turned: {rear edge: inside}\nlip: {width: 20 mm, at: rear edge}\n",
                "line 11",
                "takes the foam away from the rear edge",
                "out of   lip");
        only(
                DOOR + "turned: {all edges: inside}\nlip: {width: 20 mm}\n",
                "line 11",
                "takes the foam away from the edges",
                "out of   lip");
    }
}
