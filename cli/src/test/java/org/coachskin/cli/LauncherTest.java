package org.coachskin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * The launcher in a folder with a space in its name, with a Maven and a Java that only say what
 * they were asked.
 */
@DisabledOnOs(OS.WINDOWS)
class LauncherTest {

    @TempDir Path folder;

    private Path root;
    private Path launcher;

    @BeforeEach
    void aCheckoutThatWasNeverBuilt() throws IOException {
        root = folder.resolve("my checkout");
        for (String name : List.of("core/src/main", "cli/src/main", ".mvn")) {
            Files.createDirectories(root.resolve(name));
        }
        for (String name : List.of("pom.xml", "core/pom.xml", "cli/pom.xml")) {
            Files.writeString(root.resolve(name), "");
        }
        launcher = root.resolve("cli/coachskin");
        Files.copy(Path.of("coachskin"), launcher);
        executable(launcher, Files.readString(launcher));
        executable(
                folder.resolve("bin/mvn"),
                "#!/bin/sh\necho x >> '"
                        + folder
                        + "/builds'\nsleep 0.2\n: > '"
                        + root
                        + "/cli/target/app/coachskin.jar'\n");
        java("17", "good");
        java("11", "old");
    }

    private void java(String version, String name) throws IOException {
        Path home = folder.resolve(name + " java");
        executable(
                home.resolve("bin/java"),
                "#!/bin/sh\nfor last do :; done\necho \"java "
                        + version
                        + " got $last\"\nexit 1\n");
        Files.writeString(home.resolve("release"), "JAVA_VERSION=\"" + version + ".0.1\"\n");
    }

    private static void executable(Path file, String text) throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    private Process start(Path command, String javaHome) throws IOException {
        ProcessBuilder start =
                new ProcessBuilder(command.toString(), "check", "my lid.yaml")
                        .redirectErrorStream(true);
        start.environment().clear();
        start.environment().put("PATH", folder.resolve("bin") + ":/usr/bin:/bin");
        start.environment().put("JAVA_HOME", javaHome);
        return start.start();
    }

    private String run(Path command, String javaHome, int status) throws Exception {
        Process process = start(command, javaHome);
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(status, process.waitFor(), said);
        return said;
    }

    private String good() {
        return folder.resolve("good java").toString();
    }

    @Test
    void buildsOnceAndHandsOnArgumentsAndExitStatus() throws Exception {
        String first = run(launcher, good(), 1);
        String second = run(launcher, good(), 1);

        assertEquals(
                "coachskin: building, once; this takes up to a minute ...\njava 17 got my lid.yaml\n",
                first);
        assertEquals("java 17 got my lid.yaml\n", second);
        assertEquals(1, Files.readAllLines(folder.resolve("builds")).size());
    }

    @Test
    void buildsOnceWhenItIsStartedTwiceAtOnce() throws Exception {
        List<Process> starts = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            starts.add(start(launcher, good()));
        }
        for (Process process : starts) {
            assertEquals(1, process.waitFor());
        }

        assertEquals(1, Files.readAllLines(folder.resolve("builds")).size());
    }

    @Test
    void worksThroughASymbolicLink() throws Exception {
        Path link = Files.createSymbolicLink(folder.resolve("a link"), launcher);

        assertTrue(run(link, good(), 1).endsWith("java 17 got my lid.yaml\n"));
    }

    @Test
    void passesOverAJavaThatIsTooOld() throws Exception {
        Files.createSymbolicLink(folder.resolve("bin/java"), folder.resolve("good java/bin/java"));

        assertTrue(run(launcher, folder.resolve("old java").toString(), 1).contains("java 17 got"));
    }

    @Test
    void saysThatItNeedsJava() throws Exception {
        for (String tool : List.of("sh", "dirname", "readlink", "sed")) {
            Path found = Path.of("/bin").resolve(tool);
            Files.createSymbolicLink(
                    folder.resolve("bin").resolve(tool),
                    Files.exists(found) ? found : Path.of("/usr/bin").resolve(tool));
        }
        ProcessBuilder start = new ProcessBuilder(launcher.toString(), "check", "my lid.yaml");
        start.environment().clear();
        start.environment().put("PATH", folder.resolve("bin").toString());
        start.environment().put("JAVA_HOME", folder.resolve("none").toString());
        Process process = start.start();
        String said = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);

        assertEquals(3, process.waitFor(), said);
        assertTrue(said.contains("needs Java 17 or newer"), said);
    }

    @Test
    void saysWhatAFailedBuildSaid() throws Exception {
        executable(folder.resolve("bin/mvn"), "#!/bin/sh\necho '[ERROR] no such thing'\nexit 1\n");

        String said = run(launcher, good(), 3);

        assertTrue(said.contains("[ERROR] no such thing"), said);
        assertTrue(said.contains("the build failed"), said);
    }
}
