package org.coachskin.cli.file;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.coachskin.InputException;
import org.coachskin.NoAnswerException;
import org.coachskin.Problem;
import org.snakeyaml.engine.v2.nodes.Node;

/** Everything that has to be changed in a file, collected so that it can be told at once. */
final class Findings {

    private final Path path;
    private final String inFile;
    private List<String> lines = List.of();
    private final List<Found> found = new ArrayList<>();
    private final List<Found> later = new ArrayList<>();

    /** A problem and the line it stands in, from 0. */
    private record Found(int line, Problem problem) {}

    private Findings(Path path, String inFile) {
        this.path = path;
        this.inFile = inFile;
    }

    /** Returns findings on the file that was named to the command. */
    static Findings of(Path path) {
        return new Findings(path, "");
    }

    /** Returns findings on a file that another one names: each place says which file it is in. */
    static Findings ofPart(Path path) {
        return new Findings(path, " of " + path.getFileName());
    }

    Path path() {
        return path;
    }

    /** Returns the lines of the file as they stand. */
    String text() {
        return String.join("\n", lines) + "\n";
    }

    void text(List<String> fileLines) {
        lines = List.copyOf(fileLines);
    }

    /** Notes what is wrong at a node. */
    void add(Node node, String what, String fix) {
        add(line(node), what, fix);
    }

    void add(int line, String what, String fix) {
        found.add(new Found(line, problem(line, what, fix)));
    }

    /** Notes what is wrong with the file as a whole. */
    void addWhole(String what, String fix) {
        found.add(new Found(-1, new Problem(String.valueOf(path), "", what, fix)));
    }

    /** Notes a question that this version has no answer to. */
    void addLater(Node node, String what, String fix) {
        int line = line(node);
        later.add(new Found(line, problem(line, what, fix)));
    }

    /** Takes over what was found in a file that is named at {@code node}. */
    void addAll(Findings part, Node node) {
        for (Found each : part.found) {
            if (each.line() < 0) {
                add(
                        node,
                        part.path.getFileName() + ": " + each.problem().what(),
                        "Check the name.");
            } else {
                found.add(new Found(line(node), each.problem()));
            }
        }
        part.later.forEach(each -> later.add(new Found(line(node), each.problem())));
    }

    private Problem problem(int line, String what, String fix) {
        String shown = line >= 0 && line < lines.size() ? lines.get(line).strip() : "";
        return new Problem("line " + (line + 1) + inFile, shown, what, fix);
    }

    static int line(Node node) {
        return node.getStartMark().map(mark -> mark.getLine()).orElse(0);
    }

    /** Ends the reading if something has to be changed, or else if something has no answer. */
    void stopIfAny() {
        if (!found.isEmpty()) {
            throw new InputException(
                    found.stream()
                            .sorted(Comparator.comparingInt(Found::line))
                            .map(Found::problem)
                            .distinct()
                            .toList());
        }
        later.stream()
                .min(Comparator.comparingInt(Found::line))
                .ifPresent(
                        first -> {
                            throw new NoAnswerException(first.problem());
                        });
    }

    /** Returns whether nothing has to be changed; a question without an answer does not count. */
    boolean isEmpty() {
        return found.isEmpty();
    }

    /** Returns how much has to be changed so far. */
    int count() {
        return found.size();
    }

    /** Returns whether something asked for cannot be worked out yet. */
    boolean anyLater() {
        return !later.isEmpty();
    }
}
