package org.coachskin.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.coachskin.cli.report.Report;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** A file that is written whole or not at all, and never over what was read. */
final class ReportFile {

    private static final String OTHER = "Choose another folder or name.";

    private final String name;
    private final Path path;

    /**
     * Checks that the file can be written, as far as that can be told before.
     *
     * @param inputs files that are read
     * @throws Refused when it cannot
     */
    private ReportFile(String name, List<String> inputs) {
        this.name = name;
        try {
            path = Path.of(name);
        } catch (InvalidPathException e) {
            throw Panels.refused(name + " is no name a file can have.", "Choose another name.");
        }
        if (name.isBlank()) {
            throw Panels.refused("The report has no name.", "Write   --report lid.html");
        }
        if (Files.isDirectory(path)) {
            throw Panels.refused(
                    name + " is a folder.", "Name a file in it:   --report " + name + "/lid.html");
        }
        if (Files.exists(path) && !Files.isRegularFile(path)) {
            throw Panels.refused(name + " is no ordinary file.", OTHER);
        }
        for (String input : inputs) {
            if (isSame(path, Path.of(input))) {
                throw Panels.refused(
                        "The report would go over the panel file " + input + ".",
                        "Choose another name, for example   --report " + stem(input) + ".html");
            }
        }
        if (Files.exists(path) && name.toLowerCase(Locale.ROOT).matches(".*\\.ya?ml")) {
            throw Panels.refused(
                    "The report would go over " + name + ", which may be a panel or materials.",
                    "Choose another name, for example   --report " + stem(name) + ".html");
        }
        Path folder = folder();
        if (!Files.isDirectory(folder)) {
            throw Panels.refused(
                    "There is no folder " + folder + " for the report.",
                    "Make it, or choose another folder.");
        }
        if (!Files.isWritable(folder) || (Files.exists(path) && !Files.isWritable(path))) {
            throw Panels.refused("You may not write " + name + ".", OTHER);
        }
    }

    /** Returns the option that names it. */
    static OptionSpec option() {
        return Subcommand.option("--report", "FILE.html");
    }

    /**
     * Returns the file that a report is to be written to, if one is wanted.
     *
     * @param inputs files that are read
     * @throws Refused when it cannot be written
     */
    static Optional<ReportFile> wanted(ParseResult given, List<String> inputs) {
        return given.hasMatchedOption("--report")
                ? Optional.of(new ReportFile(given.matchedOptionValue("--report", ""), inputs))
                : Optional.empty();
    }

    private static boolean isSame(Path one, Path other) {
        try {
            return (Files.exists(one) && Files.exists(other))
                    ? Files.isSameFile(one, other)
                    : one.toAbsolutePath().normalize().equals(other.toAbsolutePath().normalize());
        } catch (IOException e) {
            return false;
        }
    }

    private static String stem(String input) {
        String file = String.valueOf(Path.of(input).getFileName());
        int dot = file.lastIndexOf('.');
        return dot > 0 ? file.substring(0, dot) : file;
    }

    private Path folder() {
        Path parent = path.toAbsolutePath().getParent();
        return parent == null ? path.toAbsolutePath() : parent;
    }

    /**
     * Works the report out, which may take a while, and writes it.
     *
     * @throws Refused when it cannot be written; what was there before stays
     */
    void write(Supplier<Report> report) {
        String page;
        try (Progress progress = Progress.of("drawing the report", -1)) {
            Report drawn = report.get();
            progress.step();
            page = drawn.page();
        }
        write(page);
    }

    /** Writes the file: beside its place first, then in one step into it. */
    private void write(String text) {
        Path beside = null;
        try {
            // A link stays a link; what it leads to is written.
            Path target = Files.exists(path) ? path.toRealPath() : path.toAbsolutePath();
            Path folder = target.getParent();
            beside = Files.createTempFile(folder == null ? target : folder, ".coachskin", ".html");
            Files.write(beside, text.getBytes(StandardCharsets.UTF_8));
            readable(beside);
            Files.move(
                    beside,
                    target,
                    StandardCopyOption.REPLACE_EXISTING,
                    StandardCopyOption.ATOMIC_MOVE);
        } catch (AccessDeniedException | ReadOnlyFileSystemException e) {
            throw failed(beside, "You may not write " + name + ".");
        } catch (IOException e) {
            throw failed(beside, name + " cannot be written: " + e.getMessage() + ".");
        }
    }

    /** Temporary files are private; a report is as public as its folder. */
    private static void readable(Path file) throws IOException {
        var view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
        if (view != null) {
            view.setPermissions(PosixFilePermissions.fromString("rw-r--r--"));
        }
    }

    private static Refused failed(@Nullable Path beside, String what) {
        if (beside != null) {
            try {
                Files.deleteIfExists(beside);
            } catch (IOException e) {
                // What is left over is said to be unfinished by its name.
            }
        }
        return Panels.refused(what, OTHER);
    }
}
