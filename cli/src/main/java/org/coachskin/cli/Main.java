package org.coachskin.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.coachskin.InputException;
import org.coachskin.NoAnswerException;
import org.coachskin.Problem;
import org.coachskin.material.MaterialLibrary;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/**
 * The command. Exit status: 0 every limit holds, 1 a limit does not hold, 2 the input needs a
 * change, 3 no answer.
 */
public final class Main {

    private static final Map<String, Supplier<Subcommand>> SUBCOMMANDS = new LinkedHashMap<>();

    static {
        SUBCOMMANDS.put("check", CheckCommand::new);
        SUBCOMMANDS.put("compare", CompareCommand::new);
        SUBCOMMANDS.put("reinforce", ReinforceCommand::new);
        SUBCOMMANDS.put("schedule", ScheduleCommand::new);
        SUBCOMMANDS.put("materials", MaterialsCommand::new);
        SUBCOMMANDS.put("loads", LoadsCommand::new);
        SUBCOMMANDS.put("new", NewCommand::new);
    }

    private Main() {}

    /** Runs the command and ends the JVM with its exit status. */
    public static void main(String[] args) {
        Outcome outcome = run(args);
        print(FileDescriptor.err, outcome.err());
        boolean told = print(FileDescriptor.out, outcome.out());
        Interrupt.printed();
        System.exit(told ? outcome.status() : Outcome.NO_ANSWER);
    }

    /** Writes all of a text, and says whether that went well. */
    static boolean print(FileDescriptor to, String text) {
        // The stream is the terminal's own and stays open.
        FileOutputStream stream = new FileOutputStream(to);
        try {
            stream.write(text.getBytes(StandardCharsets.UTF_8));
            return true;
        } catch (IOException e) {
            // A reader that closes its end early, such as head, has seen what it wanted.
            String reason = String.valueOf(e.getMessage());
            boolean closed = reason.contains("Broken pipe");
            if (!closed && to == FileDescriptor.out) {
                print(
                        FileDescriptor.err,
                        "coachskin: the answer cannot be written: " + reason + "\n");
            }
            return closed;
        }
    }

    /** Returns what the command answers to {@code args}. */
    static Outcome run(String... args) {
        try {
            return dispatch(args);
        } catch (Refused e) {
            return refused(e, List.of(args).contains("--json"));
        } catch (InputException e) {
            return unplaced(Outcome.INPUT, e.problems(), List.of(args).contains("--json"));
        } catch (NoAnswerException e) {
            List<Problem> one = List.of(e.problem());
            return unplaced(Outcome.NO_ANSWER, one, List.of(args).contains("--json"));
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            return Outcome.problem(Outcome.NO_ANSWER, fault(e));
        }
    }

    /** What is wrong in no file in particular. */
    private static Outcome unplaced(int status, List<Problem> problems, boolean json) {
        return json
                ? Outcome.answer(status, Problems.json("", problems))
                : Outcome.problem(status, Problems.text("", problems));
    }

    private static Outcome refused(Refused e, boolean json) {
        if (!json && e.status() == Outcome.NO_ANSWER) {
            return Outcome.problem(e.status(), Problems.noAnswer(e.file(), e.problems().get(0)));
        }
        return json
                ? Outcome.answer(e.status(), Problems.json(e.file(), e.problems()))
                : Outcome.problem(e.status(), Problems.text(e.file(), e.problems()));
    }

    private static Outcome dispatch(String[] args) {
        String first = args.length == 0 ? "--help" : args[0];
        if (first.equals("--help") || first.equals("-h") || first.equals("help")) {
            return Outcome.answer(
                    args.length == 0 ? Outcome.INPUT : Outcome.HOLDS,
                    Texts.read("help/coachskin.txt"));
        }
        if (first.equals("--version")) {
            return Outcome.answer(Outcome.HOLDS, version());
        }
        Supplier<Subcommand> wanted = SUBCOMMANDS.get(first);
        if (wanted == null) {
            String nearest = MaterialLibrary.nearest(first, List.copyOf(SUBCOMMANDS.keySet()));
            return Outcome.problem(
                    Outcome.INPUT,
                    "coachskin has no subcommand  "
                            + first
                            + "\n  Write   coachskin "
                            + (first.startsWith("-") ? "check FILE" : nearest)
                            + "     All of them:  coachskin --help\n");
        }
        String[] rest = Arrays.copyOfRange(args, 1, args.length);
        if (List.of(rest).contains("--help") || List.of(rest).contains("-h")) {
            return Outcome.answer(Outcome.HOLDS, Texts.read("help/" + first + ".txt"));
        }
        Subcommand subcommand = wanted.get();
        CommandSpec spec = subcommand.spec();
        try {
            return subcommand.run(new CommandLine(spec).parseArgs(rest));
        } catch (ParameterException e) {
            return Outcome.problem(Outcome.INPUT, misuse(first, spec, e));
        }
    }

    /** What was given to a subcommand and cannot be understood. */
    private static String misuse(String name, CommandSpec spec, ParameterException e) {
        String help = "\n  What it takes:  coachskin " + name + " --help\n";
        if (e instanceof UnmatchedArgumentException unmatched) {
            String word = unmatched.getUnmatched().get(0);
            if (!word.startsWith("-")) {
                return "coachskin " + name + " has no use for  " + word + help;
            }
            List<String> known = List.copyOf(spec.optionsMap().keySet());
            String nearest =
                    known.isEmpty() ? "" : "\n  Write   " + MaterialLibrary.nearest(word, known);
            return "coachskin " + name + " has no option  " + word + nearest + help;
        }
        if (e instanceof MissingParameterException missing && !missing.getMissing().isEmpty()) {
            String what = missing.getMissing().get(0).paramLabel();
            return "coachskin " + name + " needs " + what + help;
        }
        return "coachskin " + name + ": " + e.getMessage() + help;
    }

    private static String fault(Throwable e) {
        StringWriter trace = new StringWriter();
        if (System.getenv("COACHSKIN_TRACE") != null) {
            e.printStackTrace(new PrintWriter(trace));
        }
        return "coachskin: a fault of the program, not of your file: "
                + Optional.ofNullable(e.getMessage()).orElse(e.getClass().getSimpleName())
                + "\n  No answer can be given. Please report it, with the panel file and the output of\n"
                + "  the same command with COACHSKIN_TRACE=1 set before it.\n"
                + trace;
    }

    private static String version() {
        return "coachskin "
                + versionWords()
                + ", on Java "
                + System.getProperty("java.version")
                + "\n";
    }

    /** Returns the version of the command. */
    static String versionWords() {
        String version = Main.class.getPackage().getImplementationVersion();
        return version == null ? "as built from source" : version;
    }

    /** Returns the names of the subcommands. */
    static List<String> subcommands() {
        return List.copyOf(SUBCOMMANDS.keySet());
    }

    /** Returns what a subcommand may be given. */
    static CommandSpec specOf(String name) {
        Supplier<Subcommand> wanted = SUBCOMMANDS.get(name);
        if (wanted == null) {
            throw new IllegalArgumentException("no subcommand " + name);
        }
        return wanted.get().spec();
    }
}
