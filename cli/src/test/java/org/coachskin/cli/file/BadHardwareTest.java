package org.coachskin.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.coachskin.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a person can get wrong in outline, openings, zones and what holds a panel. */
class BadHardwareTest extends LidFiles {

    private static final String GOOD = SANDWICH + PALM;

    private static final String VENT =
            "openings: [{name: vent, shape: 120 mm x 60 mm, centre: {from left: 450 mm, from front: 480 mm}}]\n";

    private static void only(List<Problem> found, String what, String fix) {
        only(found, "line 9", what, fix);
    }

    /** What stands under {@code held}. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "{front edg: hinges}|No edge is called \"front edg\"|front edge: ...",
                "{front edge: hinge}|called \"hinge\"|front edge: hinges",
                "{front edge: }|not said what holds|front edge: hinges",
                "{front edge: {a: b}}|wants one value|front edge: ...",
                "{front edge: [carried, free]}|cannot be both \"carried\" and \"free\"|at length",
                "{all edges: rubber seal}|a rubber seal only pushes|rear edge: latch",
                "{all edges: free}|Nothing holds the panel.|front edge: hinges",
                "{all edges: carried, front edge: free, rear edge: free, left edge: free, right edge: free}|Nothing holds|hinges",
                "[]|Nothing holds|hinges",
                "[hinges]|wants keys of its own|{hinge: front edge",
                "[{at: middle}]|not said what holds|{hinge: front edge",
                "[{hinge: front edge, latch: rear edge, at: middle}]|Two things|{hinge: front edge",
                "[{hinge: all edges, at: middle}]|sits at one edge|hinge: front edge",
                "[{hinge: front edge}]|not said where on the front edge|150 mm from left",
                "[{hinge: left edge, at: 150 mm}]|the end it starts from|150 mm from front",
                "[{hinge: left edge, at: 150 mm from left}]|runs from front to rear|150 mm from front",
                "[{hinge: left edge, at: 150 from front}]|no unit|at: 150 mm",
                "[{hinge: front edge, at: 10 mm from left}]|hang 10 mm over the left edge|at: 20 mm from left",
                "[{hinge: front edge, at: 1 m from left}]|hang 120 mm over the right edge|at: 20 mm from right",
                "[{hinge: front edge, at: middle, pad: 40}]|no unit|40 mm",
                "[{hinge: front edge, at: middle, pad: 1 m x 40 mm}]|would hang|larger than the panel",
                "[{hinge: front edge, at: middle, pads: 40 mm}]|no key \"pads\"|pad",
                "[{rest: middle}]|wants a place|{from left:",
                "[{prop: {from left: 890 mm, from front: 300 mm}}]|hang 10 mm over the right edge|from left: 880 mm",
                "[{prop: {from left: 400 mm}}]|\"from front\" is missing|from front",
                "[{carried: left edge, from: 100 mm, to: 700 mm}]|600 mm long and ends before 700 mm|to: 600 mm",
                "[{carried: left edge, from: 700 mm}]|ends before 700 mm|from: 0 mm",
                "[{carried: left edge, from: 300 mm, to: 100 mm}]|ends before it begins|from: 100 mm, to: 300 mm",
                "[{carried: all edges, from: 300 mm}]|of one edge only|carried: left edge",
                "[{carried: left edge}, {rubber seal: all edges, solid at: 5 mm}]|solid at 5 mm, before its working squeeze of 6 mm|solid at: 9 mm",
                "[{carried: left edge}, {rubber seal: all edges, force: 50 N}]|a force; a force per length is wanted|N/m",
                "[{carried: left edge}, {rubber seal: all edges, squeezed: 6}]|no unit|6 mm",
            })
    void aSlipInWhatHoldsThePanelIsNamed(String held, String what, String fix) {
        only(problems(GOOD + "held: " + held + "\n"), what, fix);
    }

    /** One more key of the panel. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "corner radius: 80|no unit|80 mm",
                "corner radius: 400 mm|does not fit sides of 900 mm and 600 mm|corner radius: 300 mm   or less",
                "outline:|is a list of corners|from left: 0 mm",
                "outline: []|three corners|from left: 0 mm",
                "outline: {from left: 0 mm, from front: 0 mm}|is a list of corners|- {from left: 0 mm",
                "outline: [{from left: 0 mm, from front: 0 mm}, {from left: 800 mm, from front: 0 mm}, {from left: 0 mm, from front: 600 mm}]|from 0 mm to 800 mm across|width: 800 mm",
                "outline: [{from left: 0 mm, from front: 0 mm}, {from left: 900 mm, from front: 600 mm}, {from left: 900 mm, from front: 0 mm}, {from left: 0 mm, from front: 600 mm}]|cross one another|in the order",
                "openings: [vent]|keys of its own|circle 80 mm",
                "openings: [{shape: circle 80, centre: {from left: 450 mm, from front: 400 mm}}]|no unit|shape: circle 80 mm",
                "openings: [{shape: polygon, corners: {from left: 450 mm, from front: 400 mm}}]|is a list of corners|- {from left: 0 mm",
                "openings: [{shape: ring 80 mm, centre: {from left: 450 mm, from front: 400 mm}}]|No shape is called \"ring 80 mm\"|circle 80 mm",
                "openings: [{shape: 80 mm, centre: {from left: 450 mm, from front: 400 mm}}]|two sides|120 mm x 60 mm",
                "openings: [{shape: circle 80 mm}]|\"centre\" is missing|from left:",
                "openings: [{centre: {from left: 450 mm, from front: 400 mm}}]|shape of the opening is missing|slot",
                "openings: [{shape: circle 80 mm, corner radius: 5 mm, centre: {from left: 450 mm, from front: 400 mm}}]|no corners|corner radius   out",
                "openings: [{shape: 120 mm x 60 mm, corner radius: 40 mm, centre: {from left: 450 mm, from front: 400 mm}}]|does not fit sides of 120 mm and 60 mm|30 mm   or less",
                "openings: [{name: vent, shape: circle 80 mm, centre: {from left: 880 mm, from front: 400 mm}}]|hang 20 mm over the right edge|from left: 860 mm   or less",
                "openings: [{name: vent, shape: circle 80 mm, centre: {from left: 450 mm, from front: 40 mm}}]|touches or crosses the rim|inward",
                "openings: [{name: vent, shape: circle 80 mm, centre: {from left: 2 m, from front: 400 mm}}]|lies off the panel|900 mm by 600 mm",
                "openings: [{shape: polygon}]|corners of the opening are missing|corner by corner",
                "openings: [{name: a, shape: circle 80 mm, centre: {from left: 450 mm, from front: 400 mm}}, {name: b, shape: slot 80 mm x 20 mm, centre: {from left: 520 mm, from front: 400 mm}}]|\"a\" and \"b\" touch or overlap|Move them apart",
                "openings: [{name: a, shape: circle 80 mm, centre: {from left: 450 mm, from front: 400 mm}}, {name: b, shape: circle 80 mm, centre: {from left: 532 mm, from front: 400 mm}}]|\"a\" and \"b\" leave less than 3 mm|Move them apart",
                "openings: [{name: vent, shape: circle 80 mm, centre: {from left: 450 mm, from front: 558 mm}}]|leaves less than 3 mm of panel at the rim|inward",
                "openings: [{name: a, shape: circle 200 mm, centre: {from left: 450 mm, from front: 300 mm}}, {name: b, shape: circle 80 mm, centre: {from left: 450 mm, from front: 300 mm}}]|\"a\" and \"b\" touch or overlap|Move them apart",
                "openings: [{name: cut, shape: slot 900 mm x 20 mm, centre: {from left: 450 mm, from front: 400 mm}}]|touches or crosses the rim|outline",
                "openings: [{name: cut, shape: slot 950 mm x 20 mm, centre: {from left: 450 mm, from front: 400 mm}}]|would hang 25 mm over the left edge|larger than the panel",
                "openings: [{name: cut, shape: polygon, corners: [{from left: 300 mm, from front: 300 mm}, {from left: 500 mm, from front: 400 mm}, {from left: 500 mm, from front: 300 mm}, {from left: 300 mm, from front: 400 mm}]}]|cross one another|in the order",
                "openings: [{name: a, shape: circle 80 mm, centre: {from left: 450 mm, from front: 400 mm}}, {name: a, shape: circle 80 mm, centre: {from left: 650 mm, from front: 400 mm}}]|called \"a\" already|another name",
                "zones: [lip]|keys of its own|insert: plywood 9 mm",
                "zones: [{width: 50 mm, inside: [twill glass 300 g/m^2]}]|not said where|patch: 200 mm",
                "zones: [{at: rear edge, width: 50 mm}]|not said what is laid|inside: [",
                "zones: [{at: rear edge, inside: [twill glass 300 g/m^2]}]|\"width\" is missing|width",
                "zones: [{at: rear edge, width: 50, inside: [twill glass 300 g/m^2]}]|no unit|50 mm",
                "zones: [{at: rear edge, width: 700 mm, inside: [twill glass 300 g/m^2]}]|measures 600 mm from the rear edge|less than 600 mm",
                "zones: [{at: rear edge, width: 50 mm, inside: [twil glass 300 g/m^2]}]|No cloth|twill glass",
                "zones: [{at: rear edge, width: 50 mm, inside: [twill glass 300 g/m^2], foam strip: 9 mm}]|Two things are done|over it",
                "zones: [{at: rear edge, width: 50 mm, inside: [3 x twill glass 300 g/m^2], step: 30 mm}]|ply 3 has no width left|step: 16 mm   or less",
                "zones: [{at: rear edge, width: 50 mm, inside: [twill glass 300 g/m^2], step: 5}]|no unit|5 mm",
                "zones: [{at: rear edge, width: 50 mm, insert: plywod 9 mm}]|No insert is called \"plywod\"|insert: plywood 9 mm",
                "zones: [{at: rear edge, width: 50 mm, insert: plywood}]|thickness of the insert|plywood 9 mm",
                "zones: [{at: rear edge, width: 50 mm, insert: plywood 9}]|no unit|9 mm",
                "zones: [{at: rear edge, width: 50 mm, foam strip: 15 mm, bevel: 10 mm}]|more than 45 degrees|bevel: 15 mm   or more",
                "zones: [{at: rear edge, width: 50 mm, foam strip: 15 mm, bevel: 45}]|no unit|45 mm",
                "zones: [{patch: 200 mm x 100 mm, centre: {from left: 770 mm, from front: 300 mm}, foam strip: 15 mm, bevel: 45 mm}]|slopes over 45 mm; from the strip to the rim there are 30 mm|bevel: 30 mm   or less",
                "zones: [{patch: 200 mm x 100 mm, centre: {from left: 790 mm, from front: 300 mm}, foam strip: 15 mm, bevel: 45 mm}]|from the strip to the rim there are 10 mm|end 15 mm or more before the rim, or go on to the rim",
                "zones: [{at: rear edge, width: 50 mm, insert: plywood 9 mm, bevel: 30 mm}]|Only a foam strip|bevel   out",
                "zones: [{round: vent, width: 50 mm, foam strip: 15 mm}]|No opening is called \"vent\"|under   openings",
                "zones: [{patch: 200 mm x 100 mm, inside: [twill glass 300 g/m^2]}]|\"centre\" is missing|from left",
                "zones: [{patch: 200 mm x 100 mm, centre: {from left: 50 mm, from front: 300 mm}, insert: plywood 9 mm}]|hang 50 mm over the left edge|from left: 100 mm   or more",
                "lip: {at: all edges}|\"width\" is missing|width",
                "lip: {width: 300 mm}|lip is 300 mm wide|less than 300 mm",
                "lip: {width: 310 mm, at: rear edge}|measures 600 mm|less than 300 mm",
                "lip: {width: 30 mm, flush: middle}|flush with the outside or|flush: outside",
                "lip: {width: 30 mm, plies: 2 x twill glass 300 g/m^2}|no key \"plies\"|more plies",
            })
    void aSlipInWhatThePanelIsLikeIsNamed(String line, String what, String fix) {
        only(problems(GOOD + line + "\nheld: all edges\n"), what, fix);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "zones: [{round: vnt, width: 50 mm, foam strip: 15 mm}]|No opening is called \"vnt\"|round: vent",
                "zones: [{round: vent, width: 100 mm, foam strip: 15 mm}]|rim of the panel there are 90 mm|width: 90 mm   or less",
            })
    void aSlipInWhatGoesRoundAnOpeningIsNamed(String line, String what, String fix) {
        only(problems(GOOD + line + "\n" + VENT + "held: all edges\n"), what, fix);
    }

    /** The vent begins 90 mm, the lip 30 mm off the rear edge. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "patch: 200 mm x 100 mm, centre: {from left: 450 mm, from front: 365 mm}|the vent there are 35 mm|bevel: 35 mm   or less",
                "patch: 100 mm x 100 mm, centre: {from left: 200 mm, from front: 500 mm}|the lip there are 20 mm|bevel: 20 mm   or less",
                "round: vent, width: 20 mm|the lip there are 40 mm|bevel: 40 mm   or less",
            })
    void aBevelWithoutRoomIsNamed(String where, String what, String fix) {
        only(
                problems(
                        GOOD
                                + "zones: [{"
                                + where
                                + ", foam strip: 15 mm, bevel: 45 mm}]\n"
                                + VENT
                                + "lip: {width: 30 mm}\nheld: all edges\n"),
                what,
                fix);
    }

    @Test
    void hardwareOverAnOpeningIsNamed() {
        only(
                problems(GOOD + "held: [{rest: {from left: 400 mm, from front: 460 mm}}]\n" + VENT),
                "partly over the opening \"vent\"",
                "pad:");
    }

    @Test
    void aLoadOverAnOpeningIsNamed() {
        Problem problem =
                problems(
                                GOOD.replace(
                                                "200 mm, from front: 200 mm",
                                                "450 mm, from front: 430 mm")
                                        + VENT
                                        + "held: all edges\n")
                        .get(0);

        assertEquals("line 8", problem.place());
        assertTrue(problem.what().contains("palm would press partly over the opening \"vent\""));
    }

    @Test
    void theUsualLoadsPressInTheMiddleAlsoWhereThereIsNoPanel() {
        List<Problem> found =
                problems(
                        GOOD.replaceFirst("loads: .*\n", "")
                                + VENT.replace("480 mm", "300 mm")
                                + "held: all edges\n");

        assertEquals(List.of("line 8", "line 8"), found.stream().map(Problem::place).toList());
    }

    @Test
    void aPadInARoundCornerIsOffThePanel() {
        only(
                problems(
                        GOOD
                                + "held: [{hinge: front edge, at: 20 mm from left}]\ncorner radius: 80 mm\n"),
                "partly off the panel",
                "pad:");
    }

    @Test
    void foamCannotBeAddedWhereThereIsNone() {
        List<Problem> found =
                problems(
                        GOOD.replaceFirst("foam: .*\n", "")
                                + "lip: {width: 30 mm}\n"
                                + "zones: [{at: rear edge, width: 50 mm, insert: plywood 9 mm}]\n"
                                + "held: all edges\n");

        assertEquals(
                List.of(
                        "The panel has no foam: it is all lip.",
                        "The panel has no foam, so nothing can lie beside it or in its place."),
                found.stream().map(Problem::what).toList());
    }

    @Test
    void everythingIsFoundAtOnceAndInTheOrderOfTheFile() {
        List<Problem> found =
                problems(
                        GOOD.replace("outside: [twill", "outside: [twil")
                                + """
                                corner radius: 80
                                openings:
                                  - {name: vent, shape: circle 80, centre: {from left: 450 mm, from front: 480 mm}}
                                  - {name: hole, shape: circle 80 mm, centre: {from left: 890 mm, from front: 480 mm}}
                                zones:
                                  - {round: vnt, width: 50 mm, step: 5}
                                  - {at: rear edg, width: 50 mm, insert: plywood 9 mm}
                                lip: {width: 30}
                                held:
                                  - {hinge: front edge, at: 5 mm from left}
                                  - {rubber seal: all edges, squeezed: 10 mm, solid at: 9 mm}
                                """);

        assertEquals(
                List.of(6, 9, 11, 12, 14, 15, 16, 18, 19),
                found.stream()
                        .map(problem -> Integer.parseInt(problem.place().substring(5)))
                        .distinct()
                        .toList(),
                found.toString());
    }
}
