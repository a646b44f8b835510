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
    private List<String> lines = List.of();
    private final List<Found> found = new ArrayList<>();
    private final List<Found> later = new ArrayList<>();

    /** A problem and the line it stands in, from 0. */
    private record Found(int line, Problem problem) {}

    Findings(Path path) {
        this.path = path;
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

    private Problem problem(int line, String what, String fix) {
        String shown = line >= 0 && line < lines.size() ? lines.get(line).strip() : "";
        return new Problem("line " + (line + 1), shown, what, fix);
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

    boolean isEmpty() {
        return found.isEmpty();
    }
}
