package org.coachskin.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.coachskin.check.Job;
import org.coachskin.check.Movement;
import org.coachskin.check.PanelCheck;
import org.coachskin.check.Picture;
import org.coachskin.check.Verdict;
import org.coachskin.cli.report.Block;
import org.coachskin.cli.report.MovementDrawing;
import org.coachskin.cli.report.Sheet;
import org.coachskin.panel.LoadCase;

/** How several panels give under the load by which the first is felt, all in one scale. */
final class GivesSheet {

    private GivesSheet() {}

    /** Returns the sheet, panels by name; one that does not bear that load is left out. */
    static Sheet of(Map<String, Verdict> verdicts, Figures figures) {
        Job first = verdicts.values().iterator().next().job();
        String load = first.felt().orElse(first.loads().get(0)).name();
        Map<String, Picture.Moved> moved = new LinkedHashMap<>();
        verdicts.forEach(
                (name, verdict) ->
                        new PanelCheck()
                                .picture(verdict, List.of()).moved().stream()
                                        .filter(m -> m.load().equals(load))
                                        .findFirst()
                                        .ifPresent(m -> moved.put(name, m)));
        double reach = moved.values().stream().mapToDouble(MovementDrawing::reach).max().orElse(0);
        List<Block> blocks = new ArrayList<>();
        verdicts.forEach(
                (name, verdict) -> {
                    Picture.Moved of = moved.get(name);
                    if (of != null) {
                        String id = "gives" + blocks.size();
                        blocks.add(figure(id, name, verdict, of, reach, figures));
                    }
                });
        return new Sheet("gives", "How each gives", "for the engineer", blocks);
    }

    private static Block figure(
            String id,
            String name,
            Verdict verdict,
            Picture.Moved moved,
            double reach,
            Figures figures) {
        Movement movement = verdict.movementUnder(moved.load());
        String parts =
                MovementParts.of(verdict, movement).parts().stream()
                        .map(part -> part.words() + " " + figures.movement(part.movement()))
                        .collect(Collectors.joining("; "));
        List<LoadCase> loads =
                verdict.job().loads().stream()
                        .filter(load -> load.name().equals(moved.load()))
                        .toList();
        return new Block.Figure(
                name,
                figures.movement(Math.abs(movement.total()))
                        + " under "
                        + Rows.called(moved.load())
                        + ", a line every "
                        + MovementDrawing.step(reach, figures)
                        + ". Of it: "
                        + parts
                        + ".",
                MovementDrawing.of(id, verdict.job().panel(), moved, reach, loads, figures),
                List.of());
    }
}
