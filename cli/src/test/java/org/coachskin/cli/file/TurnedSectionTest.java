package org.coachskin.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Objects;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Height;
import org.coachskin.panel.TurnedEdge;
import org.coachskin.panel.TurnedEdge.Along;
import org.coachskin.panel.TurnedEdge.Round;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Skins turned round raw edges of the foam, as a file says them. */
class TurnedSectionTest extends LidFiles {

    private static final String WINDOWED =
            SANDWICH
                    + """
                    held: all edges
                    openings: [{name: window, shape: 120 mm x 60 mm, centre: {from left: 450 mm, from front: 480 mm}}]
                    """
                    + PALM;

    private List<TurnedEdge> turned(String words) throws IOException {
        return read(WINDOWED + "turned: " + words + "\n").asDrawn().panel().turned();
    }

    @Test
    void edgesAndOpeningsAreTurnedAsTheFileSays() throws IOException {
        assertEquals(List.of(), read(WINDOWED).asDrawn().panel().turned());
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
                read(
                        WINDOWED
                                + "lip: {width: 20 mm, at: rear edge}\nturned: {all edges: inside}\n");
        List<TurnedEdge> turned = file.asDrawn().panel().turned();
        assertEquals(3, turned.size());
        assertTrue(!turned.contains(new Along(Edge.REAR, Height.INSIDE)));
        assertTrue(file.assumptions().stream().anyMatch(a -> a.key().equals("turned")));
    }

    @Test
    void aVariantTurnsOtherEdgesOrNone() throws IOException {
        PanelFile file =
                read(
                        WINDOWED
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
        String text = WINDOWED + "turned: {all edges: [outside, inside]}\n";
        assertEquals(
                List.of(
                        new PanelFile.Turned("all edges", Height.OUTSIDE),
                        new PanelFile.Turned("all edges", Height.INSIDE)),
                PanelFile.readLaid(file(text)).turned());
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
    void aSlipIsNamed(String key, String what, String fix) {
        only(problems(WINDOWED + key + "\n"), "line 11", what, fix);
    }

    @Test
    void whatCannotBeTurnedIsNamed() {
        String foam = "foam: {kind: polyurethane, density: 64 kg/m^3, thickness: 12 mm}\n";
        only(
                problems(
                        WINDOWED.replace(foam, "")
                                        .replace("inside: [twill glass 300 g/m^2]", "inside: none")
                                + "turned: {window: outside}\n"),
                "line 10",
                "no foam, so no edge of it is raw",
                "Take   turned   out");
        only(
                problems(
                        WINDOWED.replace("inside: [twill glass 300 g/m^2]", "inside: none")
                                + "turned: {window: inside}\n"),
                "line 11",
                "No ply lies on the inside",
                "outside");
        only(
                problems(
                        WINDOWED
                                + "turned: {rear edge: inside}\nlip: {width: 20 mm, at: rear edge}\n"),
                "line 11",
                "takes the foam away from the rear edge",
                "out of   lip");
        only(
                problems(WINDOWED + "turned: {all edges: inside}\nlip: {width: 20 mm}\n"),
                "line 11",
                "takes the foam away from the edges",
                "out of   lip");
    }
}
