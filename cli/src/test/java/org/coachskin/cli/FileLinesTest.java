package org.coachskin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.coachskin.check.Job;
import org.coachskin.cli.file.PanelFile;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.Foam;
import org.coachskin.material.Inserts;
import org.coachskin.panel.ZoneRecipe;
import org.coachskin.reinforce.Build;
import org.coachskin.reinforce.Laying;
import org.coachskin.reinforce.Measure;
import org.coachskin.reinforce.Target;
import org.coachskin.reinforce.Tried;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is printed to be written in the panel file lays what was tried. */
class FileLinesTest {

    private static final Pattern NUMBER = Pattern.compile("\\d+\\.\\d+(?:E-?\\d+)?");

    private static final Path DOOR = Path.of("../examples/panels/trailer-door.yaml");

    private static final Path HATCH = Path.of("../examples/panels/roof-hatch.yaml");

    @Test
    void theLinesLayWhatWasTried(@TempDir Path folder) throws IOException {
        PanelFile door = PanelFile.read(DOOR);
        Schedule.Item ply = door.asDrawn().schedule().inside().get(0);
        Schedule.Item aslant =
                new Schedule.Wet(((Schedule.Wet) ply).cloth(), StrictMath.toRadians(45));
        Foam denser = door.library().foam(Foam.Kind.POLYURETHANE, 96).orElseThrow();
        Foam plywood = Inserts.named("plywood").orElseThrow();
        for (String name : List.of("window", "right edge", "latch")) {
            Target target = Target.named(door.asDrawn(), name).orElseThrow();
            List<Build> builds =
                    target instanceof Target.Hardware
                            ? List.of(
                                    new Build.Plies(ply, 1, 1),
                                    new Build.Insert(plywood, List.of(ply)))
                            : List.of(
                                    new Build.Plies(ply, 3, 1),
                                    new Build.Plies(ply, 0, 2),
                                    new Build.Plies(aslant, 2, 0),
                                    new Build.Strip(0.012, List.of(ply), 0.03),
                                    new Build.Strip(0.0125, List.of(ply, aslant), 0.0375),
                                    new Build.Insert(denser, List.of()));
            for (Build build : builds) {
                boolean turned = target.turned().isPresent() && !(build instanceof Build.Plies);
                // With its bevel and the ply past it a strip wants 60 mm more.
                double width = build instanceof Build.Strip ? 0.04 : 0.06;
                assertSame(folder, DOOR, target, new Measure(build, width, turned, 0));
            }
        }
        Target lip = Target.named(PanelFile.read(HATCH).asDrawn(), "lip").orElseThrow();
        assertSame(folder, HATCH, lip, new Measure(new Build.InLip(ply, 2), 0, false, 0));
    }

    @Test
    void whatIsSaidOfALipStays(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("hatch.yaml");
        Files.writeString(
                file,
                Files.readString(HATCH)
                                .replaceFirst(
                                        "(?m)^lip: .*$",
                                        "lip: {width: 30 mm, at: [rear edge, left edge], flush: inside,"
                                                + " more plies: [{cloth: plain glass 160 g/m^2, angle: 45 deg}, my own]}")
                        + """
                        my plies:
                          my own: {E1: 18 GPa, nu12: 0.13, G12: 3 GPa, thickness: 0.4 mm, density: 1700 kg/m^3,
                                   tension 1: 250 MPa, compression 1: 200 MPa, shear 12: 50 MPa}
                        """);
        Job job = PanelFile.read(file).asDrawn();
        Target lip = Target.named(job, "lip").orElseThrow();
        Schedule.Item ply = job.schedule().inside().get(0);

        assertSame(folder, file, lip, new Measure(new Build.InLip(ply, 2), 0, false, 0));
    }

    private static void assertSame(Path folder, Path file, Target target, Measure measure)
            throws IOException {
        Job job = Laying.on(PanelFile.read(file).asDrawn(), target, measure);
        Tried tried = new Tried(measure, job, 0, 0, List.of(), Optional.empty());
        List<String> text = new ArrayList<>(Files.readAllLines(file));
        List<String> lines = FileLines.of(target, tried);
        text.removeIf(line -> line.startsWith("lip:") && lines.get(0).startsWith("lip:"));
        Page page = new Page();
        FileLines.print(lines, page);
        page.toString().lines().map(line -> line.substring(4)).forEach(text::add);
        Path written = folder.resolve("written.yaml");
        Files.write(written, text);
        Job read = PanelFile.read(written).asDrawn();

        assertEquals(regions(job), regions(read), String.join("\n", lines));
        assertTrue(builds(job).equals(builds(read)), String.join("\n", lines));
        assertEquals(job.panel().turned(), read.panel().turned());
    }

    /** Where, by the micrometre, whatever it is called. */
    private static List<String> regions(Job job) {
        return job.recipes().stream()
                .map(
                        recipe ->
                                NUMBER.matcher(recipe.region().toString())
                                        .replaceAll(
                                                found ->
                                                        String.valueOf(
                                                                Math.rint(
                                                                        1e6
                                                                                * Double
                                                                                        .parseDouble(
                                                                                                found
                                                                                                        .group())))))
                .toList();
    }

    private static List<ZoneRecipe.Build> builds(Job job) {
        return job.recipes().stream().map(ZoneRecipe::build).toList();
    }
}
