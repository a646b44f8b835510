package org.coachskin.benchmark;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Times each command with a report against the same without, in turns, and weighs the page. It is
 * no test by name and runs only when asked for:
 *
 * <pre>
 *   mvn -pl core,cli,reference-checks -am test -Dtest=ReportAgainstCheck -Djacoco.skip -Dsurefire.failIfNoSpecifiedTests=false
 * </pre>
 *
 * <p>The figures are printed and written to {@code target/report-against-check.txt}. It needs a
 * POSIX shell.
 */
class ReportAgainstCheck {

    private static final int ROUNDS = 3;

    private static final List<List<String>> COMMANDS =
            List.of(
                    List.of("check", "luggage-lid.yaml"),
                    List.of("check", "luggage-lid-hinged.yaml"),
                    List.of("check", "trailer-side-door.yaml"),
                    List.of("compare", "last-ply-hinged.yaml"),
                    List.of("reinforce", "trailer-door.yaml", "window"));

    @Test
    void compare(@TempDir Path folder) throws IOException, InterruptedException {
        Path root = Path.of("..").toAbsolutePath().normalize();
        Path page = folder.resolve("page.html");
        StringBuilder table = new StringBuilder();
        for (List<String> words : COMMANDS) {
            List<String> plain = new ArrayList<>(words);
            plain.set(1, root.resolve("examples/panels").resolve(words.get(1)).toString());
            plain.add(0, root.resolve("cli/coachskin").toString());
            List<String> reported = new ArrayList<>(plain);
            reported.addAll(List.of("--report", page.toString()));
            CheckAgainstJvm.time(plain); // builds what is missing, warms the disk
            double without = Double.POSITIVE_INFINITY;
            double with = Double.POSITIVE_INFINITY;
            for (int round = 0; round < ROUNDS; round++) {
                without = Math.min(without, CheckAgainstJvm.time(plain));
                with = Math.min(with, CheckAgainstJvm.time(reported));
            }
            byte[] written = Files.readAllBytes(page);
            table.append(
                    String.format(
                            Locale.ROOT,
                            "%-40s %.1f s, with its report %.1f s, %.2f times; %d KB, %d zipped%n",
                            String.join(" ", words),
                            without,
                            with,
                            with / without,
                            written.length / 1000,
                            zipped(written) / 1000));
        }
        table.append(String.format(Locale.ROOT, "least of %d turns%n", ROUNDS));
        Files.writeString(Path.of("target", "report-against-check.txt"), table);
        System.out.print(table);
    }

    private static int zipped(byte[] page) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (GZIPOutputStream zip = new GZIPOutputStream(out)) {
            zip.write(page);
        }
        return out.size();
    }
}
