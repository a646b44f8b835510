package org.coachskin.cli;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import org.coachskin.material.MaterialLibrary;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code coachskin new}: a panel file to fill in. */
final class NewCommand implements Subcommand {

    /** What there is a file for. */
    static final List<String> KNOWN = List.of("lid", "door", "roof", "bare");

    @Override
    public CommandSpec spec() {
        return CommandSpec.create()
                .addPositional(
                        Subcommand.arguments("lid, door, roof or bare, and a file", "0", "2"));
    }

    @Override
    public Outcome run(ParseResult given) {
        List<String> wanted = List.of(Subcommand.argumentsOf(given));
        String name = wanted.isEmpty() ? KNOWN.get(0) : wanted.get(0);
        if (!KNOWN.contains(name)) {
            throw Panels.refused(
                    "There is no file to start from called  " + name,
                    "Write   coachskin new "
                            + MaterialLibrary.nearest(name, KNOWN)
                            + "     or one of "
                            + String.join(", ", KNOWN));
        }
        String text = Texts.read("new/" + name + ".yaml");
        if (wanted.size() < 2) {
            return Outcome.answer(Outcome.HOLDS, text);
        }
        String file = wanted.get(1);
        write(file, text.replaceFirst("FILE", Matcher.quoteReplacement(Texts.asArgument(file))));
        return Outcome.answer(
                Outcome.HOLDS,
                file
                        + " is written. Fill it in, then   coachskin check "
                        + Texts.asArgument(file)
                        + "\n");
    }

    /** Writes a file that was not there; what cannot be written whole is taken away again. */
    private static void write(String file, String text) {
        try {
            Path path = Files.createFile(Path.of(file));
            try {
                Files.writeString(path, text);
            } catch (IOException e) {
                Files.deleteIfExists(path);
                throw e;
            }
        } catch (FileAlreadyExistsException e) {
            throw Panels.refused(file + " is there already.", "Choose another name.");
        } catch (IOException | InvalidPathException e) {
            throw Panels.refused(file + " cannot be written.", "Choose another folder or name.");
        }
    }
}
