package org.coachskin.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coachskin.check.Answer;
import org.coachskin.check.Job;
import org.coachskin.check.Margin;
import org.coachskin.check.Movement;
import org.coachskin.check.Spread;
import org.coachskin.check.Swept;
import org.coachskin.check.Verdict;
import org.coachskin.check.Weights;
import org.coachskin.cli.file.PanelFile;
import org.coachskin.design.Change;
import org.coachskin.failure.Mode;
import org.coachskin.laminate.Schedule;
import org.coachskin.panel.Opening;
import org.coachskin.prove.StripTest;

/** The first screen: the verdict on a panel for the person who is going to build it. */
final class CheckPage {

    private static final int FEW = 7;

    /** A place that feels this much softer than where the file presses is worth a word. */
    private static final double SOFTER = 0.95;

    private final String fileName;
    private final PanelFile file;
    private final Verdict verdict;
    private final Job job;
    private final Figures figures;
    private final Page page = new Page();

    CheckPage(String fileName, PanelFile file, Verdict verdict, Figures figures) {
        this.fileName = fileName;
        this.file = file;
        this.verdict = verdict;
        this.figures = figures;
        job = verdict.job();
    }

    /**
     * Returns the page.
     *
     * @param changes what would cure it, or what could be left out where it holds
     * @param strip the strip to lay and bend first
     * @param all whether every mode is listed
     * @param spreads scatter of the reserves, shown where there is any
     * @param swept how the palm feels all over the panel, where that is known
     */
    String text(
            List<Change> changes,
            StripTest strip,
            boolean all,
            Map<Mode, Spread> spreads,
            Optional<Swept> swept) {
        head();
        new Answers(verdict, figures).write(page);
        changes(changes);
        movement(swept);
        limits(all, spreads);
        if (!job.panel().rimCarried()) {
            HeldBlock.write(page, verdict, figures);
        }
        weight();
        Remarks.takenForGranted(page, file.assumptions(), figures);
        Remarks.notAsked(page, job, figures);
        Remarks.careful(page, verdict, figures);
        next(strip);
        return page.toString();
    }

    private void head() {
        Schedule schedule = job.schedule();
        int out = schedule.outside().size();
        int in = schedule.inside().size();
        String plies =
                schedule.board() == null
                        ? plies(out) + ", no foam"
                        : (out == 0 ? "none" : plies(out))
                                + " out, "
                                + (in == 0 ? "none" : in)
                                + " in";
        page.ends(
                sentence(job.panel().name()),
                figures.sizes(job.panel().width(), job.panel().length()) + ", " + plies);
        page.blank();
    }

    private static String plies(int count) {
        return count == 1 ? "1 ply" : count + " plies";
    }

    private void changes(List<Change> changes) {
        boolean clear = Remarks.clearly(verdict);
        if (changes.isEmpty()) {
            if (!verdict.holds()) {
                page.line("No single change of ply, foam or fittings was found that would cure it.")
                        .blank();
            }
            return;
        }
        page.line(
                clear
                        ? "What you could leave out, one at a time, and it still holds"
                        : verdict.holds()
                                ? "What would make it a clear yes (one change at a time)"
                                : "What would cure it (one change at a time, lightest first)");
        // What is wanting is what the table shows.
        boolean stiffness =
                verdict.felt().isPresent()
                        && (verdict.strong() == Answer.YES || verdict.stiff() != Answer.YES);
        Page.Table table =
                new Page.Table("lrrl")
                        .row(
                                "",
                                stiffness ? figures.stiffnessName() : "reserve",
                                clear ? "saves" : "adds",
                                "");
        for (Change change : changes) {
            table.row(
                    figures.words(change.words()),
                    stiffness
                            ? Rows.felt(change.verdict(), figures)
                            : Figures.reserve(change.verdict().governing().reserve()),
                    change.addedMass() == 0 ? "-" : figures.mass(Math.abs(change.addedMass())),
                    Upshot.of(change.verdict()).words());
        }
        page.table(table);
        if (!clear) {
            page.paragraph(figures.words(Remarks.best(changes)));
        }
        page.blank();
    }

    private void movement(Optional<Swept> swept) {
        Movement movement =
                job.felt()
                        .map(load -> verdict.movementUnder(load.name()))
                        .orElse(verdict.movements().get(0));
        double total = Math.abs(movement.total());
        if (total == 0) {
            return;
        }
        MovementParts parts = MovementParts.of(verdict, movement);
        page.line("Where " + parts.title(figures));
        Page.Table table = new Page.Table("lrr");
        for (MovementParts.Part part : parts.parts()) {
            table.row(
                    part.words(), figures.movement(part.movement()), Figures.percent(part.share()));
        }
        page.table(table);
        verdict.felt().filter(s -> movement.force() != 0).ifPresent(this::spread);
        swept.ifPresent(this::softest);
        page.blank();
    }

    private void spread(Spread felt) {
        page.paragraph(
                "The theory is good to about "
                        + Figures.percent(
                                verdict.margins().stream()
                                        .filter(m -> m.mode() == Mode.FELT_STIFFNESS)
                                        .findFirst()
                                        .map(Margin::methodError)
                                        .orElse(0.0))
                        + ". Hand work varies more: of ten panels laid from this file, eight would feel like "
                        + figures.stiffness(felt.low())
                        + " to "
                        + figures.stiffness(felt.high())
                        + " "
                        + figures.stiffnessName()
                        + ", one softer, one stiffer.");
    }

    /** Says where it is softer than where the file presses, if it clearly is. */
    private void softest(Swept swept) {
        Swept.Feel softest = swept.softest();
        boolean asked =
                job.loads().stream()
                        .anyMatch(load -> load.softest() && load.name().equals(swept.load()));
        double felt = verdict.felt().map(Spread::nominal).orElse(Double.POSITIVE_INFINITY);
        if (asked || softest.stiffness() > SOFTER * felt) {
            return;
        }
        page.paragraph(
                "It is softest under "
                        + Rows.called(swept.load())
                        + " at about "
                        + figures.place(softest.x())
                        + " from left, "
                        + figures.place(softest.y())
                        + " from front: about "
                        + figures.stiffness(softest.stiffness())
                        + " "
                        + figures.stiffnessName()
                        + (softest.stiffness() < job.limits().feltStiffness()
                                ? ", less than is wanted"
                                : "")
                        + ". To judge it there write  at:\u00a0softest\u00a0place.");
    }

    private void limits(boolean all, Map<Mode, Spread> spreads) {
        List<Margin> finite =
                verdict.margins().stream().filter(m -> Double.isFinite(m.multiplier())).toList();
        List<Margin> shown = new ArrayList<>();
        for (Margin margin : finite) {
            if (all || shown.size() < FEW || !margin.holds()) {
                shown.add(margin);
            }
        }
        page.line("What limits it");
        boolean scatter = !spreads.isEmpty();
        Page.Table table =
                new Page.Table(scatter ? "lrrrr" : "lrrr")
                        .row(cells(scatter, "", "fails at", "wanted", "reserve", "8 of 10"));
        for (Margin margin : shown) {
            table.row(
                    cells(
                            scatter,
                            figures.words(Rows.words(margin)),
                            Rows.failsAt(margin, figures),
                            Rows.wanted(margin, figures),
                            Figures.reserve(margin.reserve()),
                            Rows.range(spreads.get(margin.mode()))));
        }
        page.table(table);
        remarks(shown);
        Rows.unsettled(shown, all).ifPresent(page::item);
        String rest =
                shown.size() < finite.size() ? "; all " + finite.size() + " modes: --all" : "";
        String eight =
                scatter
                        ? "; 8 of 10: the reserve of eight panels in ten laid from this file, one lower, one higher"
                        : "";
        page.paragraph("(a reserve under 1.00 means: change something" + rest + eight + ")")
                .blank();
    }

    /** What has to be said of some rows; of those beside openings only of the worst. */
    private void remarks(List<Margin> shown) {
        boolean said = false;
        for (Margin margin : shown) {
            Optional<Opening> opening = verdict.openingBeside(margin);
            if (!margin.remark().isEmpty() && !(said && opening.isPresent())) {
                String where =
                        opening.map(o -> "beside the " + o.name()).orElse(Rows.words(margin));
                page.item(figures.words(where + ": " + margin.remark()));
            }
            said |= opening.isPresent();
        }
    }

    /** The cells of a row, the last of them only where scatter is shown. */
    private static String[] cells(boolean scatter, String... cells) {
        return scatter ? cells : Arrays.copyOf(cells, cells.length - 1);
    }

    private void weight() {
        Weights weights = Weights.of(job);
        List<String> parts = new ArrayList<>();
        addPart(parts, "glass", weights.glass());
        addPart(parts, "resin in the cloth", weights.resin());
        addPart(parts, "plies of your own", weights.given());
        addPart(parts, "seal coat", weights.sealCoat());
        addPart(parts, "foam", weights.foam());
        addPart(parts, "inserts and other foam", weights.inserts());
        page.wrap(
                "Weight   ",
                figures.mass(verdict.mass())
                        + " ("
                        + figures.massPerArea(verdict.mass() / job.panel().area())
                        + (job.panel().zones().isEmpty() ? ")" : " on average), zones counted")
                        + ", before filler, paint and fittings: "
                        + String.join(", ", parts)
                        + " "
                        + figures.massName());
        drums();
    }

    private void drums() {
        page.line(
                "Drums at "
                        + Figures.decimals(verdict.frequency(), 0)
                        + " Hz, "
                        + (job.panel().rimCarried() ? "its whole rim carried." : "held as above."));
        page.blank();
    }

    private void addPart(List<String> parts, String name, double mass) {
        if (mass > 0) {
            parts.add(name + " " + figures.massNumber(mass));
        }
    }

    private void next(StripTest strip) {
        page.line("Next");
        page.paragraph(
                "Before cutting cloth, lay and bend one strip "
                        + figures.size(strip.width())
                        + " wide, "
                        + figures.size(strip.span())
                        + " between rests: "
                        + figures.hung(strip.mass())
                        + " hung from its middle should read "
                        + figures.movement(strip.reading())
                        + " ("
                        + figures.movementNumber(strip.low())
                        + " to "
                        + figures.movementNumber(strip.high())
                        + ").");
        int variants = file.jobs().size() - 1;
        if (variants > 0) {
            page.line(
                    "    coachskin compare "
                            + Texts.asArgument(fileName)
                            + "    its "
                            + (variants == 1 ? "variant" : variants + " variants"));
        }
        page.line("    coachskin check " + Texts.asArgument(fileName) + " --report panel.html");
        Margin worst = verdict.governing();
        page.line(
                "    coachskin check "
                        + Texts.asArgument(fileName)
                        + " --why \""
                        + whyWords(worst.mode())
                        + "\"");
    }

    /** Words that {@code --why} knows a mode by, few enough for the line. */
    private static String whyWords(Mode mode) {
        return switch (mode) {
            case SEAL_GAP -> "gap";
            case PUNCHING -> "round a fitting";
            default -> mode.words();
        };
    }

    static String sentence(String words) {
        return words.isEmpty()
                ? words
                : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
