package org.coachskin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;

class ProgressTest {

    private final List<String> drawn = new CopyOnWriteArrayList<>();

    private void work(Duration shownFrom) {
        try (Progress progress = new Progress("judging", 2, drawn::add, shownFrom)) {
            progress.step();
            progress.step();
        }
    }

    @Test
    void drawsOnOneLineAndWipesIt() {
        work(Duration.ZERO);

        assertTrue(drawn.stream().anyMatch(line -> line.contains("judging")), drawn.toString());
        assertTrue(drawn.stream().anyMatch(line -> line.contains("2/2")), drawn.toString());
        for (String line : drawn) {
            assertTrue(line.startsWith("\r"), line);
            assertFalse(line.contains("\n"), line);
            assertTrue(line.length() <= Page.WIDTH, line);
        }
        assertTrue(drawn.get(drawn.size() - 1).isBlank());
        assertTrue(drawn.get(drawn.size() - 1).endsWith("\r"));
    }

    @Test
    void showsNothingOfWhatIsDoneSoon() {
        work(Duration.ofHours(1));

        assertEquals(List.of(), drawn);
    }

    @Test
    void tellsStepsWithoutAnEnd() {
        try (Progress progress = new Progress("looking", -1, drawn::add, Duration.ZERO)) {
            progress.step();
        }

        assertTrue(drawn.stream().anyMatch(line -> line.contains("looking")), drawn.toString());
    }

    /** Work that somebody stops. */
    static final class Endless {
        private Endless() {}

        public static void main(String[] args) throws InterruptedException {
            try (Progress progress = Progress.of("judging", 2)) {
                progress.step();
                Thread.sleep(60_000);
            }
        }
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void whoeverStopsItFindsTheLineWiped() throws IOException, InterruptedException {
        Process run =
                new ProcessBuilder(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-Dcoachskin.terminal=true",
                                "-cp",
                                System.getProperty("java.class.path"),
                                Endless.class.getName())
                        .start();
        StringBuilder said = new StringBuilder();
        InputStream err = run.getErrorStream();
        for (int c = err.read(); c >= 0; c = err.read()) {
            said.append((char) c);
            if (said.toString().endsWith("1/2")) {
                run.toHandle().destroy();
            }
        }

        assertTrue(said.toString().contains("judging"), said.toString());
        assertTrue(said.toString().endsWith("\r" + " ".repeat(78) + "\r"), said.toString());
    }
}
