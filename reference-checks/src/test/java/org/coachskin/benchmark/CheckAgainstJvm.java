package org.coachskin.benchmark;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/**
 * Times the whole command, from the start of the process to its end, against a bare JVM that reads
 * the same panel file with the same library and prints one line; in turns, so that a machine that
 * is busy for a while slows both. It is no test by name and runs only when asked for:
 *
 * <pre>
 *   mvn -pl core,cli,reference-checks -am test -Dtest=CheckAgainstJvm -Djacoco.skip -Dsurefire.failIfNoSpecifiedTests=false
 * </pre>
 *
 * <p>The figures are printed and written to {@code target/check-against-jvm.txt}. It needs a POSIX
 * shell. Beside the whole check stand the parts of it: the launcher alone ({@code --version}), and
 * the reading, the plies and their print ({@code schedule}).
 */
class CheckAgainstJvm {

    private static final int ROUNDS = 21;

    /** Reads the file named first; what the bare JVM runs. */
    public static void main(String[] args) throws IOException {
        Object read =
                new Load(LoadSettings.builder().build())
                        .loadFromString(Files.readString(Path.of(args[0])));
        System.out.println(((Map<?, ?>) read).size());
    }

    @Test
    void compare() throws IOException, InterruptedException {
        Path root = Path.of("..").toAbsolutePath().normalize();
        String command = root.resolve("cli/coachskin").toString();
        String file = root.resolve("examples/panels/luggage-lid.yaml").toString();
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        String path = jar(CheckAgainstJvm.class) + ":" + jar(Load.class);
        List<List<String>> runs =
                List.of(
                        List.of(java, "-cp", path, CheckAgainstJvm.class.getName(), file),
                        List.of(command, "--version"),
                        List.of(command, "schedule", file),
                        List.of(command, "check", file));
        double[][] seconds = new double[runs.size()][ROUNDS];
        for (List<String> run : runs) {
            time(run); // builds what is missing, warms the disk
        }
        for (int round = 0; round < ROUNDS; round++) {
            for (int i = 0; i < runs.size(); i++) {
                seconds[i][round] = time(runs.get(i));
            }
        }
        StringBuilder report = new StringBuilder();
        String[] names = {"bare JVM, same file", "--version", "schedule", "check"};
        for (int i = 0; i < names.length; i++) {
            Arrays.sort(seconds[i]);
            report.append(
                    String.format(
                            Locale.ROOT,
                            "%-20s min %.3f s, median %.3f s, %.1f times the bare JVM%n",
                            names[i],
                            seconds[i][0],
                            seconds[i][ROUNDS / 2],
                            seconds[i][ROUNDS / 2] / seconds[0][ROUNDS / 2]));
        }
        report.append(
                String.format(
                        Locale.ROOT,
                        "Java %s, %d rounds in turns%n",
                        System.getProperty("java.version"),
                        ROUNDS));
        Files.writeString(Path.of("target", "check-against-jvm.txt"), report);
        System.out.print(report);
    }

    private static String jar(Class<?> type) {
        try {
            return Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI())
                    .toString();
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Returns how long a command takes that answers, whatever it answers [s]. */
    static double time(List<String> run) throws IOException, InterruptedException {
        long start = System.nanoTime();
        Process process = new ProcessBuilder(run).redirectErrorStream(true).start();
        String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        int status = process.waitFor();
        long end = System.nanoTime();
        assertTrue(status <= 1, text);
        return (end - start) * 1e-9;
    }
}
