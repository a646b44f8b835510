package org.coachskin.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.coachskin.InputException;
import org.coachskin.NoAnswerException;
import org.coachskin.Problem;
import org.coachskin.cli.file.PanelFile;
import picocli.CommandLine.ParseResult;

/** What every subcommand on panel files reads. */
final class Panels {

    private Panels() {}

    /**
     * Returns what a panel file says.
     *
     * @throws Refused when it cannot be read or answered, with all that has to be put right
     */
    static PanelFile read(String name) {
        return read(name, PanelFile::read);
    }

    /**
     * Returns what a panel file lays.
     *
     * @throws Refused when it cannot be read or answered, with all that has to be put right
     */
    static PanelFile.Laid readLaid(String name) {
        return read(name, PanelFile::readLaid);
    }

    private static <T> T read(String name, Function<Path, T> reader) {
        try {
            return reader.apply(Path.of(name));
        } catch (InvalidPathException e) {
            throw refused(name + " is no name a file can have.", "");
        } catch (InputException e) {
            throw new Refused(Outcome.INPUT, name, e.problems());
        } catch (NoAnswerException e) {
            throw new Refused(Outcome.NO_ANSWER, name, List.of(e.problem()));
        }
    }

    /**
     * Returns the system of units asked for; metric where none is.
     *
     * @throws Refused when it is neither of the two
     */
    static Figures units(ParseResult given) {
        String words = given.matchedOptionValue("--units", "metric");
        return switch (words.toLowerCase(Locale.ROOT)) {
            case "metric" -> Figures.METRIC;
            case "us" -> Figures.US;
            default ->
                    throw refused(
                            "There are no units called  " + words,
                            "Write   --units metric     or   --units us");
        };
    }

    /** Returns a refusal of input that stands in no file. */
    static Refused refused(String what, String fix) {
        return new Refused(Outcome.INPUT, "", List.of(new Problem("", "", what, fix)));
    }
}
