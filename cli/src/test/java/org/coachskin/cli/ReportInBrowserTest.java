package org.coachskin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The report in a real browser; skipped, and said to be, where there is none. */
class ReportInBrowserTest {

    private static final String EXAMPLES = "../examples/panels/";

    /** Drawings without their words, which look otherwise wherever fonts do. */
    private static final Path KEPT =
            Path.of("src/test/resources/org/coachskin/cli/report/drawings.png");

    private static final Path SHOWN = Path.of("../examples/report.png");

    /** A channel that differs by less is the same to an eye: edges are smoothed in many ways. */
    private static final int SAME = 48;

    @TempDir static Path folder;

    private static Chromium browser;
    private static Path lid;
    private static Path light;
    private static Path door;

    @BeforeAll
    static void reports() {
        Optional<Chromium> found = Chromium.in(folder);
        assumeTrue(
                found.isPresent(),
                "There is no Chromium on this machine: the report was looked at in no browser.");
        browser = found.get();
        lid = report("luggage-lid.yaml");
        light = report("luggage-lid-hinged-too-light.yaml");
        door = report("trailer-side-door.yaml");
    }

    private static Path report(String panelFile) {
        Path to = folder.resolve(panelFile.replace(".yaml", ".html"));
        Outcome outcome = Main.run("check", EXAMPLES + panelFile, "--report", to.toString());
        assertEquals("", outcome.err());
        return to;
    }

    private static Path page(String name, String html) throws IOException {
        Path to = folder.resolve(name);
        Files.writeString(to, html);
        return to;
    }

    @Test
    void theConsoleStaysEmpty() throws IOException, InterruptedException {
        for (Path report : List.of(lid, light, door)) {
            String said = browser.console(report);

            assertFalse(said.contains("CONSOLE"), said);
        }
        Path broken = page("broken.html", "<svg><path d='M0 0L'/><rect width='wide'/></svg>");
        assertTrue(browser.console(broken).contains("CONSOLE"), "a mistake would be seen");
    }

    @Test
    void hostileNamesDoNothing() throws IOException, InterruptedException {
        Path panel = folder.resolve("hostile.yaml");
        String name = "</title><script>document.title='taken'</script><img src=x onerror=alert(1)>";
        Files.writeString(
                panel,
                Files.readString(Path.of(EXAMPLES + "luggage-lid.yaml"))
                        .replaceFirst("(?m)^name: .*$", "name: \"" + name + "\""));
        Path to = folder.resolve("hostile.html");
        assertEquals("", Main.run("check", panel.toString(), "--report", to.toString()).err());
        String dom = browser.dom(to);

        assertFalse(dom.contains("<script"));
        assertFalse(dom.contains("<img"));
        assertTrue(dom.contains("<title>&lt;/title&gt;&lt;script&gt;document.title='taken'"));
    }

    @Test
    void theReadmeShowsASheet() throws IOException {
        assertTrue(Files.readString(Path.of("../README.md")).contains("](examples/report.png)"));
        assertTrue(ImageIO.read(SHOWN.toFile()).getWidth() == 900);
    }

    @Test
    void theDrawingsLookAsTheyDid() throws IOException, InterruptedException {
        Path drawn = browser.screenshot(drawings(light), 800, 1700);
        if (Boolean.getBoolean("coachskin.renew")) {
            Files.copy(drawn, KEPT, StandardCopyOption.REPLACE_EXISTING);
            Path sheet = browser.screenshot(light, 900, 1040);
            Files.copy(sheet, SHOWN, StandardCopyOption.REPLACE_EXISTING);
        }

        double off = different(KEPT, drawn);
        assertTrue(off < 0.002, "differs in a share of " + off);
        double other = different(KEPT, browser.screenshot(drawings(door), 800, 1700));
        assertTrue(other > 0.01, "another panel differs only in a share of " + other);
    }

    /** Returns a page of the drawings alone, one below the other. */
    private static Path drawings(Path report) throws IOException {
        String html = Files.readString(report);
        StringBuilder page = new StringBuilder("<!doctype html><meta charset=utf-8>");
        page.append(html, html.indexOf("<style>"), html.indexOf("</style>"));
        page.append("svg text{visibility:hidden}body{background:#fff}svg{max-width:none}</style>");
        Matcher all =
                Pattern.compile(
                                "<svg (width=\"0\"|class=\"(free|fixed)\" viewBox).*?</svg>",
                                Pattern.DOTALL)
                        .matcher(html);
        int count = 0;
        while (all.find()) {
            // Two columns at places that no font can move.
            page.append("<div style=\"position:absolute;left:")
                    .append(count % 2 * 400)
                    .append("px;top:")
                    .append(count / 2 * 370)
                    .append("px\">")
                    .append(all.group())
                    .append("</div>");
            count++;
        }
        assertTrue(count >= 7, count + " drawings");
        return page("drawings-" + report.getFileName(), page.toString());
    }

    /** Returns the share of pixels that an eye would tell apart. */
    private static double different(Path one, Path other) throws IOException {
        BufferedImage a = ImageIO.read(one.toFile());
        BufferedImage b = ImageIO.read(other.toFile());
        assertEquals(a.getWidth(), b.getWidth());
        assertEquals(a.getHeight(), b.getHeight());
        int count = 0;
        for (int y = 0; y < a.getHeight(); y++) {
            for (int x = 0; x < a.getWidth(); x++) {
                int p = a.getRGB(x, y);
                int q = b.getRGB(x, y);
                boolean same = true;
                for (int shift = 0; shift <= 16; shift += 8) {
                    same &= Math.abs((p >> shift & 255) - (q >> shift & 255)) < SAME;
                }
                count += same ? 0 : 1;
            }
        }
        return (double) count / (a.getWidth() * a.getHeight());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"A4", "letter"})
    void paperCutsNoFigure(String paper) throws IOException, InterruptedException {
        for (Path report : List.of(lid, light, door)) {
            String name = report.getFileName() + " on " + paper;
            Marked marked = marked(report, paper, "");
            PrintedPages printed = new PrintedPages(browser.pdf(marked.page()));

            for (int figure = 0; figure < marked.figures(); figure++) {
                List<Integer> starts = printed.with(1, 2, figure);
                assertEquals(1, starts.size(), name + ", figure " + figure);
                assertEquals(starts, printed.with(3, 4, figure), name + ", figure " + figure);
            }
            for (int sheet = 0; sheet < 4; sheet++) {
                int starts = printed.with(5, 6, sheet).get(0);
                boolean alone = sheet == 0 || printed.with(7, 8, sheet - 1).get(0) < starts;
                assertTrue(alone, name + ": sheet " + sheet + " starts on a page of another");
            }
            for (int sheet = 0; sheet < 3; sheet++) {
                assertEquals(
                        List.of(sheet),
                        printed.with(7, 8, sheet),
                        name + ": the wall gets one page, the bench one to lay and one to prove");
            }
        }
        Marked split =
                marked(
                        door,
                        paper,
                        "figure{break-inside:auto!important}figure svg{height:1200px!important}");
        PrintedPages printed = new PrintedPages(browser.pdf(split.page()));
        boolean cut = false;
        for (int figure = 0; figure < split.figures(); figure++) {
            cut |= !printed.with(1, 2, figure).equals(printed.with(3, 4, figure));
        }
        assertTrue(cut, "a figure that is cut would be seen");
    }

    /** A report with a coloured hair at both ends of each figure and each sheet. */
    private record Marked(Path page, int figures) {}

    private static Marked marked(Path report, String paper, String style) throws IOException {
        String html = Files.readString(report);
        html = html.replace("</style>", "@page{size:" + paper + "}" + style + "</style>");
        int figures = html.split("<figure>", -1).length - 1;
        html = hairs(html, "(<figure>)", "$1%s", "1,2");
        html = hairs(html, "(</figure>)", "%s$1", "3,4");
        html = hairs(html, "(<section [^>]*>)", "$1%s", "5,6");
        html = hairs(html, "(</section>)", "%s$1", "7,8");
        return new Marked(page("marked-" + report.getFileName(), html), figures);
    }

    private static String hairs(String html, String at, String put, String colour) {
        Matcher place = Pattern.compile(at).matcher(html);
        StringBuilder out = new StringBuilder();
        int count = 0;
        while (place.find()) {
            String hair =
                    "<i style=\"display:block;height:1px;background:rgb("
                            + colour
                            + ","
                            + count
                            + ")\"></i>";
            place.appendReplacement(out, String.format(put, hair));
            count++;
        }
        return place.appendTail(out).toString();
    }
}
