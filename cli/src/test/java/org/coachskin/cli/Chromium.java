package org.coachskin.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** Debian's Chromium without a screen. */
final class Chromium {

    private static final List<String> NAMES =
            List.of("chromium", "chromium-browser", "google-chrome");

    private final Path program;
    private final Path folder;

    private Chromium(Path program, Path folder) {
        this.program = program;
        this.folder = folder;
    }

    /** Returns the browser of this machine, if it has one. */
    static Optional<Chromium> in(Path folder) {
        return NAMES.stream()
                .flatMap(
                        name ->
                                Stream.of(System.getenv("PATH").split(":"))
                                        .map(part -> Path.of(part, name)))
                .filter(Files::isExecutable)
                .findFirst()
                .map(program -> new Chromium(program, folder));
    }

    /** Returns what the browser has to say about a page, its console included. */
    String console(Path page) throws IOException, InterruptedException {
        return run(page, "--enable-logging=stderr", "--v=0", "--dump-dom");
    }

    /** Returns a page as the browser understands it. */
    String dom(Path page) throws IOException, InterruptedException {
        return run(page, "--dump-dom");
    }

    /** Takes a picture of the top of a page. */
    Path screenshot(Path page, int width, int height) throws IOException, InterruptedException {
        Path to = Files.createTempFile(folder, "shot", ".png");
        run(page, "--screenshot=" + to, "--window-size=" + width + "," + height);
        return to;
    }

    /** Prints a page. */
    Path pdf(Path page) throws IOException, InterruptedException {
        Path to = Files.createTempFile(folder, "print", ".pdf");
        run(page, "--no-pdf-header-footer", "--print-to-pdf=" + to);
        return to;
    }

    private String run(Path page, String... wanted) throws IOException, InterruptedException {
        Path profile = Files.createTempDirectory(folder, "profile");
        List<String> command =
                new ArrayList<>(
                        List.of(
                                program.toString(),
                                "--headless=new",
                                "--no-sandbox",
                                "--disable-gpu",
                                "--hide-scrollbars",
                                "--force-device-scale-factor=1",
                                "--force-color-profile=srgb",
                                "--user-data-dir=" + profile));
        command.addAll(List.of(wanted));
        command.add(page.toUri().toString());
        Path said = Files.createTempFile(folder, "said", ".txt");
        Process process =
                new ProcessBuilder(command)
                        .redirectErrorStream(true)
                        .redirectOutput(said.toFile())
                        .start();
        if (!process.waitFor(120, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new IOException("the browser did not end");
        }
        remove(profile);
        return Files.readString(said, StandardCharsets.UTF_8);
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(path);
            }
        }
    }
}
