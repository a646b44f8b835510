package org.coachskin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.Test;

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
}
