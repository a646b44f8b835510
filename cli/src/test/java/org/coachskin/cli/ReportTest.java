package org.coachskin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The report as a file: what stands in it, whatever the panel file holds. */
class ReportTest {

    private static final String LID = "../examples/panels/luggage-lid.yaml";

    private static final String SMALL =
            """
            name: %s
            width: 400 mm
            length: 300 mm
            foam: {kind: polyurethane, density: 64 kg/m^3, thickness: 10 mm}
            resin: epoxy
            outside: [plain glass 160 g/m^2]
            inside: [plain glass 160 g/m^2]
            held: all edges
            loads: [palm]
            """;

    private static final Map<String, String> PAGES = new HashMap<>();

    @TempDir Path folder;

    /** The report on an example, worked out once. */
    private String known(String panelFile) throws IOException {
        String page = PAGES.get(panelFile);
        if (page == null) {
            page = report(panelFile);
            PAGES.put(panelFile, page);
        }
        return page;
    }

    private String report(String panelFile) throws IOException {
        return reported("check", panelFile);
    }

    /** The report of a whole command. */
    private String reported(String... words) throws IOException {
        Path to = folder.resolve("report.html");
        List<String> command = new ArrayList<>(List.of(words));
        command.addAll(List.of("--report", to.toString()));
        assertEquals("", Main.run(command.toArray(String[]::new)).err());
        return Files.readString(to);
    }

    private static List<String> ids(String page) {
        Matcher id = Pattern.compile(" id=\"([^\"]*)\"").matcher(page);
        return id.results().map(found -> found.group(1)).toList();
    }

    private String reportOn(String name) throws IOException {
        Path file = folder.resolve("panel.yaml");
        Files.writeString(file, String.format(SMALL, name));
        return report(file.toString());
    }

    @Test
    void theAnswerIsPrintedAsEver() {
        Outcome plain = Main.run("check", LID);
        Outcome with = Main.run("check", LID, "--report", folder.resolve("lid.html").toString());

        assertEquals(plain, with);
        assertTrue(Files.exists(folder.resolve("lid.html")));
    }

    @Test
    void theSameFileGivesTheSamePage() throws IOException {
        assertEquals(known(LID), report(LID));
    }

    @Test
    void itNeedsNothingElse() throws IOException {
        String page = known(LID);

        assertFalse(page.contains("<script"));
        assertFalse(Pattern.compile("\\s(src|href|on\\w+)=").matcher(page).find());
        assertFalse(page.contains("@import"));
        Matcher urls = Pattern.compile("url\\(([^)]*)\\)").matcher(page);
        while (urls.find()) {
            assertTrue(urls.group(1).startsWith("#"), urls.group());
        }
        String hosts = page.replace("http://www.w3.org/2000/svg", "");
        assertFalse(Pattern.compile("https?://|//[a-z]+\\.").matcher(hosts).find());
        assertTrue(page.length() < 200_000, page.length() + " letters");
    }

    @Test
    void whoeverListensHearsEveryDrawing() throws IOException {
        String page = known(LID);
        Matcher drawings =
                Pattern.compile(
                                "<svg class=\"(?:free|fixed)\"[^>]* role=\"img\" aria-labelledby=\"(\\S+) (\\S+)\"")
                        .matcher(page);
        int count = 0;
        while (drawings.find()) {
            count++;
            for (int i = 1; i <= 2; i++) {
                String id = Pattern.quote(drawings.group(i));
                assertTrue(Pattern.compile(" id=\"" + id + "\">[^<]{10,}<").matcher(page).find());
            }
        }
        assertTrue(count >= 6, count + " drawings");
        Matcher levels = Pattern.compile("<h([1-6])").matcher(page);
        int before = 0;
        while (levels.find()) {
            int level = Integer.parseInt(levels.group(1));
            assertTrue(level <= before + 1, "h" + level + " after h" + before);
            before = level;
        }
        assertTrue(page.contains("<html lang=\"en\">"));
    }

    @Test
    void everyIdStandsOnce() throws IOException {
        String page = report("../examples/panels/luggage-lid-hinged-too-light.yaml");
        List<String> ids = ids(page);
        assertEquals(List.copyOf(new LinkedHashSet<>(ids)), ids);
        Matcher used = Pattern.compile("url\\(#([^)]*)\\)").matcher(page);
        Set<String> missing = new HashSet<>();
        while (used.find()) {
            if (!ids.contains(used.group(1))) {
                missing.add(used.group(1));
            }
        }
        assertEquals(Set.of(), missing);
    }

    @Test
    void hostileNamesComeOutAsText() throws IOException {
        for (String name :
                List.of(
                        "'<script>alert(1)</script>'",
                        "'\"><img src=x onerror=alert(1)>'",
                        "\"it's 5\\\" & more\"",
                        "'</title><style>*{display:none}</style>'",
                        "\"\\u202Eneddih\\u2066\"",
                        "'\uD83D\uDE97 \uD83D\uDEE0\uFE0F'")) {
            String page = reportOn(name);

            assertFalse(page.contains("<script"), name);
            assertFalse(page.contains("<img"), name);
            assertEquals(1, page.split("<style", -1).length - 1, name);
        }
        assertTrue(
                reportOn("'<script>alert(1)</script>'")
                        .contains("&lt;script&gt;alert(1)&lt;/script&gt;"));
        assertTrue(reportOn("\"\\u202Eneddih\"").contains("\u202Eneddih"));
        assertTrue(reportOn("'\uD83D\uDE97'").contains("\uD83D\uDE97"));
    }

    @Test
    void aVeryLongNameStandsWhole() throws IOException {
        String name = "a lid ".repeat(1700).strip();

        assertTrue(reportOn(name).contains(name.substring(1)));
    }

    @Test
    void namesOfOpeningsAndLoadsAreTextToo() throws IOException {
        Path file = folder.resolve("door.yaml");
        Files.writeString(
                file,
                String.format(SMALL, "door").replace("loads: [palm]", "")
                        + """
                        openings:
                          - {name: '<script>vent', shape: circle 60 mm, centre: {from left: 100 mm, from front: 100 mm}}
                        loads:
                          '<b onclick=x>hand': {force: 200 N, patch: 100 mm x 100 mm, at: {from left: 250 mm, from front: 150 mm}}
                        """);
        String page = report(file.toString());

        assertTrue(page.contains("&lt;script&gt;vent"));
        assertTrue(page.contains("&lt;b onclick=x&gt;hand"));
        assertFalse(page.contains("<b "));
        assertFalse(page.contains("<script"));
    }

    @Test
    void theFileStandsInItWhole() throws IOException {
        String page = known(LID);
        String text = Files.readString(Path.of(LID));
        String escaped = text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");

        assertTrue(page.contains(escaped.strip()));
    }

    @Test
    void variantsStandSideBySide() throws IOException {
        Path to = folder.resolve("variants.html");
        Outcome outcome =
                Main.run("compare", "../examples/panels/last-ply.yaml", "--report", to.toString());
        String page = Files.readString(to);

        assertEquals(Main.run("compare", "../examples/panels/last-ply.yaml"), outcome);
        for (String name : List.of("as drawn", "light last ply", "heavy last ply")) {
            assertTrue(page.contains(name), name);
        }
        assertEquals(3, page.split("role=\"img\"", -1).length - 1);
        assertTrue(page.contains("What one more would do to"));
        assertTrue(page.contains("Most for its weight: 5 mm more foam."));
        Matcher figures = Pattern.compile("5 mm more foam +([\\d.]+) +(\\+\\d+ %)").matcher(page);
        assertTrue(figures.find());
        // The bar and the table say what the command says.
        String stiffness = figures.group(1);
        assertTrue(
                Pattern.compile(
                                "5 mm more foam</th>.*?<td class=\"figure\">"
                                        + Pattern.quote(stiffness)
                                        + "</td>")
                        .matcher(page)
                        .find());
        assertTrue(
                Pattern.compile(
                                "5 mm more foam</td>\\s*<td dir=\"auto\">"
                                        + Pattern.quote(stiffness)
                                        + " +"
                                        + Pattern.quote(figures.group(2))
                                        + "</td>")
                        .matcher(page)
                        .find());
        assertFalse(page.contains("<script"));
    }

    @Test
    void whatGoesAroundAnOpeningIsDrawnAndListed() throws IOException {
        Path file = folder.resolve("hatch.yaml");
        Files.writeString(
                file,
                String.format(SMALL, "hatch").replace("loads: [palm]", "")
                        + """
                        loads: {palm: {at: {from left: 290 mm, from front: 150 mm}}}
                        limits: {felt stiffness: 95 N/mm}
                        openings:
                          - {name: vent, shape: 120 mm x 80 mm, corner radius: 20 mm, centre: {from left: 130 mm, from front: 150 mm}}
                        """);
        String page = reported("reinforce", file.toString(), "vent");

        assertTrue(page.contains("What goes around the vent"), page);
        assertTrue(page.contains("with it"), page);
        assertTrue(page.contains("At the bench, in this order"));
        assertTrue(page.contains("Laying list"));
        assertTrue(page.contains("vent cut out") || page.contains("Foam strip"), page);
        assertTrue(page.contains("trim at"));
        assertEquals(List.copyOf(new LinkedHashSet<>(ids(page))), ids(page));
    }

    @Test
    void aBareSheetIsNotToldOfFoamAndSkins() throws IOException {
        String bare = known("../examples/panels/bare-panel.yaml");
        assertTrue(bare.contains("stop: less glass or less resin than planned."));
        assertTrue(bare.contains("Its layers bear pull and push"));
        assertFalse(bare.contains("softer foam"));
        assertFalse(bare.contains("the foam the shear"));
        assertFalse(bare.contains("shear in the foam"));
        String lid = known(LID);
        assertTrue(lid.contains("stop: less glass or softer foam than planned."));
        assertTrue(lid.contains(", the foam the shear."));
    }

    @Test
    void tenInAHundredOffIsTheScatterOfTenInAHundred() throws IOException {
        String page = known(LID);
        Matcher row =
                Pattern.compile(
                                "foam density</td>\\s*<td dir=\"auto\">[^<]*</td>\\s*"
                                        + "<td dir=\"auto\">\u00b1 (\\d+) %</td>\\s*<td dir=\"auto\">(\\d+) %</td>")
                        .matcher(page);
        assertTrue(row.find());
        Matcher bar =
                Pattern.compile("foam density</th>.*?<td class=\"more\">(\\d+) %</td>")
                        .matcher(page);
        assertTrue(bar.find());
        double scatter = Double.parseDouble(row.group(1));
        double moves = Double.parseDouble(bar.group(1));

        // Both are printed to one in a hundred.
        assertEquals(moves * 10 / scatter, Double.parseDouble(row.group(2)), 10 / scatter);
    }

    @Test
    void americanUnitsReachTheDrawings() throws IOException {
        String page = reported("check", LID, "--units", "us");

        assertTrue(page.contains("sizes in in"));
        assertTrue(page.contains("lbf/in"));
        assertTrue(page.contains("psi</text>"));
        assertFalse(page.contains("MPa</text>"));
    }

    @Test
    void whatCannotBeWrittenIsRefusedBeforeAnythingIsWorkedOut() throws IOException {
        Path panel = folder.resolve("lid.yaml");
        Files.copy(Path.of(LID), panel);
        Path link = folder.resolve("link.html");
        Files.createSymbolicLink(link, panel);
        Path other = folder.resolve("other.yaml");
        Files.writeString(other, "cloths");
        String before = Files.readString(panel);

        refused("no folder", panel, folder.resolve("nowhere").resolve("lid.html").toString());
        refused("is a folder", panel, folder.toString());
        refused("over the panel file", panel, panel.toString());
        refused("over the panel file", panel, folder + "/./lid.yaml");
        refused("over the panel file", panel, link.toString());
        refused("may be a panel", panel, other.toString());
        refused("no name", panel, "");
        refused("no ordinary file", panel, "/dev/null");
        assertEquals(before, Files.readString(panel));
        Outcome both = Main.run("check", LID, "--why", "felt", "--report", folder + "/lid.html");
        assertEquals(Outcome.INPUT, both.status());
        assertTrue(both.err().contains("not both"), both.err());
    }

    private void refused(String words, Path panel, String report) {
        Outcome outcome = Main.run("check", panel.toString(), "--report", report);

        assertEquals(Outcome.INPUT, outcome.status());
        assertEquals("", outcome.out());
        assertTrue(outcome.err().replaceAll("\\s+", " ").contains(words), outcome.err());
    }

    @Test
    void theSystemsRefusalIsPassedOn() {
        // Nobody, not even root, makes a file there.
        assumeTrue(Files.isDirectory(Path.of("/proc/self")));
        Outcome outcome = Main.run("check", LID, "--report", "/proc/self/lid.html");

        assertEquals(Outcome.INPUT, outcome.status());
        assertTrue(outcome.err().contains("/proc/self/lid.html"), outcome.err());
    }

    @Test
    void noRoomLeavesWhatWasThere() throws IOException, InterruptedException {
        Path sh = Path.of("/bin/sh");
        assumeTrue(Files.isExecutable(sh));
        Path to = folder.resolve("lid.html");
        Files.writeString(to, "the report before");
        // A file may not grow beyond 16 blocks of 512 bytes here: writing stops in the middle.
        Process run =
                new ProcessBuilder(
                                sh.toString(),
                                "-c",
                                "ulimit -f 16; exec \"$0\" -XX:-UsePerfData -cp \"$1\" org.coachskin.cli.Main check \"$2\" --report \"$3\"",
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                System.getProperty("java.class.path"),
                                LID,
                                to.toString())
                        .redirectErrorStream(true)
                        .start();
        String said = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

        assertEquals(Outcome.INPUT, run.waitFor(), said);
        assertTrue(said.contains("cannot be written"), said);
        assertEquals("the report before", Files.readString(to));
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(List.of(to), left.toList());
        }
    }
}
