package org.coachskin.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.coachskin.InputException;
import org.coachskin.NoAnswerException;
import org.coachskin.Problem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a person can get wrong in a panel file, and what is said about it. */
class BadFileTest extends LidFiles {

    private static final String GOOD = SANDWICH + "held: all edges\nloads: [palm, thumb]\n";

    private final Locale before = Locale.getDefault();

    /** A Turkish i has no dot where an English I becomes small. */
    @BeforeEach
    void elsewhere() {
        Locale.setDefault(Locale.forLanguageTag("tr"));
    }

    @AfterEach
    void back() {
        Locale.setDefault(before);
    }

    private static List<Problem> problems(Path path) {
        return assertThrows(InputException.class, () -> PanelFile.read(path)).problems();
    }

    /** In the good file, {@code was} becomes {@code is}. */
    @ParameterizedTest(name = "{1}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "name: lid|nmae: lid|1|no key \"nmae\"|Write   name:",
                "900 mm|900|2|has no unit|width: 900 mm",
                "64 kg/m^3|64 g/m^2|4|a mass per area; a density is wanted|kg/m^3",
                "900 mm|900 furlong|2|no unit that is known|mm",
                "900 mm|-900 mm|2|above zero|between 50 mm and 6000 mm",
                "12 mm|0 mm|4|above zero|between 1 mm and 150 mm",
                "900 mm|.nan|2|not a number|12 mm",
                "900 mm|.inf|2|not a number|12 mm",
                "900 mm|1e999 mm|2|too large|12 mm",
                "12 mm|25 m|4|25 m: no panel of this kind|Is   thickness: 25 mm   meant?",
                "900 mm|0.9 mm|2|0.9 mm: no panel of this kind|Is   width: 0.9 m   meant?",
                "900 mm|900,5 mm|2|decimal comma|width: 900.5 mm",
                "12 mm|12,5 mm|4|decimal comma|thickness: 12.5 mm",
                "900 mm|1,200 mm|2|thousands|width: 1200 mm   or",
                "held: all edges|held: all edge|8|not understood|held: all edges",
                "held: all edges|held: hinges|8|not understood|front edge: hinges",
                "outside: [twill glass 300 g/m^2]|outside: []|6|skin is empty|outside: none",
                "outside: [twill glass 300 g/m^2]|outside:|6|skin is empty|outside: [twill",
                "outside: [twill|outside: [twil|6|No cloth|Write   twill glass 300 g/m^2",
                "outside: [twill|outside: [400 x twill|6|From 1 to 40 plies|2 x twill",
                "twill glass 300 g/m^2|plain glass 9 oz/yd²|6|No cloth|Write   plain glass 339 g/m^2",
                "twill glass 300 g/m^2|chopped mat 1.5 oz|6|No cloth|Write   mat glass 458 g/m^2",
                "twill glass 300 g/m^2|chopped mat 1.5 oz/ft^2|6|No cloth|Write   mat glass 458 g/m^2",
                "twill glass 300 g/m^2|mat glass 1.5 oz/yd^2|6|No cloth|is   oz/ft^2   meant?",
                "twill glass 300 g/m^2|twill glass 1.5 oz/ft^2|6|No cloth|Write   twill glass 390 g/m^2",
                "resin: epoxy|resin: epoxi|5|No resin|resin: epoxy",
                "resin: epoxy|resin: [epoxy]|5|one value|resin: ...",
                "polyurethane|polyurethan|4|No foam|kind: polyurethane",
                "foam: {kind: polyurethane, |foam: {|4|kind is missing|kind: polyurethane",
                "64 kg/m^3, thickness: 12 mm|64 kg/m^3|4|\"thickness\" is missing|thickness:",
                "[palm, thumb]|[plam]|9|No load is called \"plam\"|palm",
                "[palm, thumb]|[]|9|No load presses|[palm, thumb]",
                "[palm, thumb]|[[palm]]|9|A list stands|[palm, thumb]",
                "[palm, thumb]|[wind]|9|wants a figure|wind: 110 km/h",
                "[palm, thumb]|{own weight: {at: middle}}|9|takes nothing|own weight:",
                "[palm, thumb]|{palm: {at: centre}}|9|\"centre\" is no place|middle, softest place, left edge",
                "[palm, thumb]|{palm: {force: 25 kg}}|9|a mass; a force is wanted|kgf",
                "[palm, thumb]|{palm: {at: softest place, patch: 1 m x 80 mm}}|9|no room for the palm|smaller",
                "[palm, thumb]|{palm: {patch: 1 m x 80 mm}}|9|over the left edge|larger than the panel",
                "[palm, thumb]|{palm: {at: {from left: 880 mm}}}|9|hang 30 mm over the right edge|from left: 850 mm",
                "[palm, thumb]|{knee: {at: {from front: -10 mm}}}|9|hang 45 mm over the front edge|from front: 35 mm",
                "[palm, thumb]|{hand: {force: 90 N, patch: 20 mm}}|9|two sides or a disc|20 mm disc",
                "[palm, thumb]|{heat: {outside: 60 K}}|9|Heat alone|[palm, thumb]",
                "resin: epoxy|resin: {}|5|name is missing|resin: epoxy",
            })
    void oneSlipIsNamedWithItsLine(String was, String is, int line, String what, String fix) {
        assertTrue(GOOD.contains(was));
        List<Problem> found = problems(GOOD.replaceFirst(Pattern.quote(was), is));
        Problem first = found.get(0);
        assertEquals("line " + line, first.place());
        assertTrue(first.what().contains(what), found.toString());
        assertTrue(first.fix().contains(fix), found.toString());
    }

    /** A line added to the good file, as its tenth. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "width: 3 m|\"width\" stands already in line 2|Keep one",
                "glass share: 150 %|between 0 and 1|between 20 % and 75 %",
                "glass share: 52|between 0 and 1|glass share: 52 %",
                "glass share: -0.1|between 0 and 1|between",
                "glass share: 5 %|no panel of this kind|between 20 % and 75 %",
                "crown: {across: -20 mm}|not be below zero|between",
                "crown: {across: 500 mm}|more than a fifth|across: 180 mm",
                "crown: {radius across: 0.6 m}|more than a fifth|radius across: 653 mm",
                "crown: {across: 20 mm, radius across: 4 m}|same thing twice|one of the two",
                "crown: {acros: 20 mm}|no key \"acros\"|across",
                "criterion: Tsai Wu|No ply criterion|Tsai-Wu",
                "method: brush|No way of working|brush and",
                "limits: {felt stiffness: 40}|no unit|40 N/mm",
                "limits: {factors: {laminate: 0}}|above zero|between 1 and 20",
                "limits: {factors: {laminate: 3 mm}}|a plain number is wanted|a number",
                "limits: {sag: 3 mm}|share of the short side|span/100",
                "limits: {marks allowed: perhaps}|yes or no|marks allowed: yes",
                "variants: {a: {inside ad: x}}|no key \"inside ad\"|inside add",
                "variants: {a: {variants: {b: {}}}}|no key \"variants\"|or one of",
                "variants: {as drawn: {width: 1 m}}|without any variant|another name",
                "variants: {a: {width: 3}}|no unit|3 mm",
                "variants:|keys of its own|indented",
                "my cloths: {house: {mass: 300}}|no unit|300 g/m^2",
                "my cloths: {house: {mass: 300 g/m^2, weave: twil}}|No weave|twill",
                "my cloths: {house: {mass: 300 g/m^2, fibre: hemp}}|No fibre|my fibres",
                "my foams: {cork: {density: 120 kg/m^3}}|No foam is called|or one of",
                "my foams: {cork: {kind: PVC}}|\"density\" is missing|kg/m^3",
                "my plies: {p: {E1: 20 GPa}}|\"nu12\" is missing|nu12",
                "materials: nowhere.yaml|nowhere.yaml: There is no such file|Check the name",
                "a: &a [*a]|alias (*a)|Write the part out",
                "? [a, b]|where a key is wanted|a word before the colon",
                "name: \"\\e[31mred\"|cannot be seen|plain text",
                "\\tname: x|tab|two spaces",
                "name: \"x|cannot be read as YAML|quotes, colons",
                "---|another document|quotes",
            })
    void oneMoreLineIsNamed(String line, String what, String fix) {
        List<Problem> found = problems(GOOD + line.replace("\\t", "\t") + "\n");

        assertTrue(List.of("line 10", "line 11").contains(found.get(0).place()), found.toString());
        assertTrue(found.get(0).what().contains(what), found.toString());
        assertTrue(found.get(0).fix().contains(fix), found.toString());
    }

    @Test
    void everythingIsFoundAtOnceAndInTheOrderOfTheFile() {
        List<Problem> found =
                problems(
                        GOOD.replace("900 mm", "900")
                                .replace("12 mm", "12")
                                .replace("outside: [twill", "outside: [twil")
                                .replace("all edges", "everywhere")
                                .replace("[palm, thumb]", "[wind]")
                                .replace("resin", "risen"));

        assertEquals(
                List.of("line 1", "line 2", "line 4", "line 5", "line 6", "line 8", "line 9"),
                found.stream().map(Problem::place).toList());
        assertEquals("width: 900", found.get(1).shown());
    }

    @Test
    void oneMistakeHidesNoOther() {
        List<Problem> found =
                problems(
                        GOOD.replace("900 mm", "900")
                                        .replace("polyurethane", "polyurethan")
                                        .replace("64 kg/m^3", "64 g/m^2")
                                        .replace("[palm, thumb]", "{plam: , wind: fast}")
                                + "width: 3 m\n");

        assertEquals(
                List.of("line 2", "line 4", "line 4", "line 9", "line 9", "line 10"),
                found.stream().map(Problem::place).toList(),
                found.toString());
    }

    @Test
    void aMistakeThatEveryVariantInheritsIsToldOnce() {
        only(
                problems(
                        GOOD.replace("900 mm", "900")
                                + "variants: {a: {inside: none}, b: {outside: none}}\n"),
                "line 2",
                "no unit",
                "900 mm");
    }

    @Test
    void whatIsMissingIsNamed() {
        List<String> what = problems("name: lid\n").stream().map(Problem::what).toList();

        for (String each : List.of("\"width\"", "\"length\"", "What holds", "The resin")) {
            assertTrue(what.stream().anyMatch(w -> w.startsWith(each)), each);
        }
    }

    @Test
    void aPanelWithNothingLaidIsNamed() {
        only(
                problems(
                        GOOD.replaceFirst("outside: .*", "outside: none")
                                .replaceFirst("inside: .*", "inside: none")),
                "line 1",
                "Nothing is laid",
                "outside:");
    }

    @ParameterizedTest
    @CsvSource({"XPS, 33, polyester", "EPS, 25, vinyl ester", "XPS, 33, polyester iso"})
    void resinThatDissolvesTheFoamIsRefusedWithTheReason(
            String foam, String density, String resin) {
        only(
                problems(
                        GOOD.replace("polyurethane, density: 64", foam + ", density: " + density)
                                .replace("resin: epoxy", "resin: " + resin)),
                "line 5",
                "dissolves polystyrene",
                "resin: epoxy");
    }

    @ParameterizedTest
    @CsvSource({
        "polyurethane, 500, 32 to 320",
        "PVC, 340, 48 to 250",
        "EPS, 10, 16 to 24",
        "XPS, 50, 28 to 32",
        "polyisocyanurate, 90, 32 to 64"
    })
    void foamFarFromTheTableIsRefusedWithWhatIsKnown(String foam, String density, String known) {
        only(
                problems(GOOD.replace("polyurethane, density: 64", foam + ", density: " + density)),
                "line 4",
                "known from " + known,
                "crush strength");
    }

    @Test
    void mistakesInAFileOfMaterialsSayWhichFile() throws IOException {
        Files.writeString(folder.resolve("own.yaml"), "my resins:\n  r: {kind: epxy}\n");

        only(
                problems(GOOD + "materials: own.yaml\n"),
                "line 2 of own.yaml",
                "No resin is called \"epxy\"",
                "epoxy");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "# nothing\n", "hello\n", "- a\n- b\n"})
    void textWithoutKeysIsNoPanelFile(String text) {
        assertTrue(problems(text).get(0).what().contains("holds no keys"));
    }

    @Test
    void aByteOrderMarkAndWindowsLineEndsAreFine() throws IOException {
        PanelFile read = PanelFile.read(file("\uFEFF" + GOOD.replace("\n", "\r\n")));

        assertEquals("lid", read.name());
        only(
                problems(GOOD.replace("900 mm", "900").replace("\n", "\r\n")),
                "line 2",
                "no unit",
                "900 mm");
    }

    @Test
    void textThatIsNotUtf8IsNamed() throws IOException {
        Path file = folder.resolve("lid.yaml");
        Files.write(file, GOOD.replace("lid", "m\u00fcll").getBytes(StandardCharsets.ISO_8859_1));

        assertTrue(problems(file).get(0).what().contains("not UTF-8"));
    }

    @Test
    void aFolderAMissingFileAndAClosedOneAreTold() {
        assertTrue(problems(folder).get(0).what().contains("folder"));
        assertTrue(problems(folder.resolve("no.yaml")).get(0).what().contains("no such file"));

        Findings findings = Findings.of(folder);
        TextFile.note(new AccessDeniedException("lid.yaml"), folder, findings);
        InputException e = assertThrows(InputException.class, findings::stopIfAny);
        assertTrue(e.problems().get(0).what().contains("may not read"));
    }

    @Test
    void whatIsNestedRepeatedOrLongWithoutEndIsRefusedAtOnce() throws IOException {
        String bomb =
                IntStream.range(0, 25)
                        .mapToObj(i -> "k" + i + ": &a" + i + " [*a" + (i - 1) + ", *a" + (i - 1))
                        .collect(Collectors.joining("]\n", "k: &a-1 [x, x]\n", "]\n"));
        List<String> texts =
                List.of(
                        bomb,
                        "a: " + "[".repeat(200_000),
                        "a: " + "{a: ".repeat(200_000),
                        "- ".repeat(200_000),
                        "a: " + "[".repeat(9_000) + "]".repeat(9_000),
                        IntStream.range(0, 900)
                                .mapToObj(i -> " ".repeat(i) + "a:\n")
                                .collect(Collectors.joining()),
                        "#".repeat(1_100_000));

        for (String text : texts) {
            Path file = file(text);
            List<Problem> found =
                    assertTimeoutPreemptively(Duration.ofSeconds(5), () -> problems(file));
            assertFalse(found.isEmpty());
        }
    }

    /** What is asked properly but cannot be worked out yet has a line and no guess. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "loads: {parked in the sun: dark paint}",
                "zones: [{at: rear edge, width: 80 mm, foam strip: 15 mm, step: 10 mm}]",
                "stages: [outside only]",
                "prices: {epoxy: 14 EUR/kg}",
                "my tests: [strip.yaml]",
                "resin: {name: epoxy, cured: 24 h at 20 degC}",
                "variants: {a: {stages: [outside only]}}",
            })
    void whatCannotBeWorkedOutYetIsSaidAndNeverIgnored(String line) throws IOException {
        String key = line.substring(0, line.indexOf(':'));
        Path file = file(GOOD.replaceFirst("(?m)^" + key + ":.*\\n", "") + line + "\n");

        NoAnswerException e = assertThrows(NoAnswerException.class, () -> PanelFile.read(file));

        assertTrue(e.problem().place().startsWith("line "), e.toString());
        assertEquals(line, e.problem().shown());
        assertTrue(e.problem().what().contains("yet"), e.toString());
    }

    @Test
    void aMistakeComesBeforeAQuestionWithoutAnAnswer() {
        only(problems(GOOD.replace("900 mm", "900") + "stages: []\n"), "line 2", "no unit", "mm");
    }
}
