package org.coachskin.cli.file;

import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coachskin.InputException;
import org.coachskin.check.Job;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.MaterialLibrary;
import org.coachskin.panel.Height;
import org.snakeyaml.engine.v2.nodes.MappingNode;

/**
 * What a panel file says.
 *
 * @param name of the panel
 * @param library the tables with the file's own materials
 * @param jobs the panel as drawn, under {@value #AS_DRAWN}, then its variants by name, in the order
 *     of the file
 * @param assumptions what the file leaves out and the program fills in
 * @param text the file as it stands
 */
public record PanelFile(
        String name,
        MaterialLibrary library,
        Map<String, Job> jobs,
        List<Assumption> assumptions,
        String text) {

    /** Name of the panel as the file draws it, among its variants. */
    public static final String AS_DRAWN = "as drawn";

    /** Copies, keeping the order. */
    public PanelFile {
        jobs = Collections.unmodifiableMap(new LinkedHashMap<>(jobs));
        assumptions = assumptions.stream().distinct().toList();
    }

    /**
     * Something taken for granted.
     *
     * @param key of the file that would say otherwise
     * @param words what is taken
     */
    public record Assumption(String key, String words) {}

    /** Returns the job of the panel as drawn. */
    public Job asDrawn() {
        return Optional.ofNullable(jobs.get(AS_DRAWN)).orElseThrow();
    }

    /**
     * Reads a file.
     *
     * @throws InputException with everything that has to be changed, in the order of the file
     * @throws org.coachskin.NoAnswerException when the file asks what this version cannot work out
     */
    public static PanelFile read(Path path) {
        return reader(path).read();
    }

    /**
     * Reads what is laid, from a file that need not say how large the panel is, what holds it and
     * what presses on it.
     *
     * @throws InputException with everything of it that has to be changed
     */
    public static Laid readLaid(Path path) {
        return reader(path).laid();
    }

    /**
     * What is laid.
     *
     * @param name of the panel
     * @param schedule what is laid, in order
     * @param turned skins turned round raw edges of the foam, in the order of the file
     */
    public record Laid(String name, Schedule schedule, List<Turned> turned) {
        /** Copies the list. */
        public Laid {
            turned = List.copyOf(turned);
        }
    }

    /**
     * A skin turned round a raw edge of the foam.
     *
     * @param place in the words of the file: edges, or the name of an opening
     * @param skin outside or inside
     */
    public record Turned(String place, Height skin) {}

    private static PanelReader reader(Path path) {
        Findings findings = Findings.of(path);
        MappingNode root = Yaml.read(TextFile.read(path, findings), findings);
        return new PanelReader(findings, root);
    }
}
