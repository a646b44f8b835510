package org.coachskin.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.coachskin.check.Concentration;
import org.coachskin.check.Job;
import org.coachskin.check.Limits;
import org.coachskin.check.Margin;
import org.coachskin.check.Movement;
import org.coachskin.check.PanelCheck;
import org.coachskin.check.Verdict;
import org.coachskin.cli.report.Passage;
import org.coachskin.failure.Factor;
import org.coachskin.failure.FirstCrush;
import org.coachskin.failure.Mode;
import org.coachskin.failure.OpenHole;
import org.coachskin.failure.PlyCriterion;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Ply;
import org.coachskin.material.Foam;
import org.coachskin.material.Strength;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.jspecify.annotations.Nullable;

/** What stands behind one row: formula, sources, numbers that went in, a second theory's answer. */
final class WhyPage {

    private static final List<PlyCriterion> CRITERIA =
            List.of(
                    new PlyCriterion.MaxStress(),
                    new PlyCriterion.MaxStrain(),
                    new PlyCriterion.TsaiHill(),
                    new PlyCriterion.TsaiWu(-0.5));

    /** Over numbers and sources that many rows share. */
    static final String WENT_IN = "What went in";

    private final Verdict verdict;
    private final Figures figures;
    private final PanelCheck check = new PanelCheck();

    /** Worked out once, whatever rows are asked about. */
    private Page.@Nullable Table criteria;

    private @Nullable List<Double> firstOrder;
    private @Nullable List<Margin> otherwise;

    WhyPage(Verdict verdict, Figures figures) {
        this.verdict = verdict;
        this.figures = figures;
    }

    /**
     * Returns the page about the first row that holds all of these words.
     *
     * @throws Refused when no row does
     */
    String about(String words) {
        Margin margin =
                verdict.margins().stream()
                        .filter(m -> Rows.matches(m, words))
                        .findFirst()
                        .orElseThrow(
                                () ->
                                        Panels.refused(
                                                "No row of this panel is called  " + words,
                                                "Write words of one of these:\n"
                                                        + String.join(
                                                                "\n",
                                                                verdict.margins().stream()
                                                                        .map(m -> m.mode().words())
                                                                        .distinct()
                                                                        .toList())));
        return about(margin);
    }

    /** Returns the page about one row. */
    private String about(Margin margin) {
        Page page = new Page();
        page.wrap("", 2, CheckPage.sentence(figures.words(Rows.words(margin))));
        passages(margin).forEach(page::passage);
        return page.toString();
    }

    /** Returns what stands behind one row, part by part. */
    List<Passage> passages(Margin margin) {
        String[] text = Texts.read("why/" + margin.mode() + ".txt").strip().split("\n\n", -1);
        List<Passage> told = new ArrayList<>();
        told.add(new Passage.Words("", "in the literature: " + margin.mode().theory()));
        told.add(new Passage.Heading("Formula"));
        told.add(new Passage.Lines(text[0].lines().map(this::filled).toList()));
        told.add(new Passage.Words("From: ", filled(text[1])));
        told.add(new Passage.Heading("This panel"));
        told.add(figuresOf(margin).passage());
        told.add(new Passage.Heading(WENT_IN));
        told.add(numbers(margin).passage());
        told.add(new Passage.Items(sources(margin)));
        told.add(new Passage.Heading("A second answer"));
        secondAnswer(told, margin);
        told.add(new Passage.Heading("Not covered"));
        told.add(new Passage.Words("", text[2]));
        return told;
    }

    /** Numbers of a text come from where they are used. */
    private String filled(String text) {
        return text.replace("{crushed}", figures.fineSize(Limits.CRUSHED));
    }

    private Page.Table figuresOf(Margin margin) {
        Page.Table table = new Page.Table("lrl");
        table.row("load", margin.loadCase(), margin.reversed() ? "the other way round" : "");
        if (margin.mode() == Mode.LASTING_MARK || margin.mode() == Mode.CRUSHING) {
            firstCrush(table, margin);
        }
        table.row(
                "applied",
                amount(margin, margin.applied()),
                verdict.openingBeside(margin).isPresent() ? figures.words(margin.remark()) : "");
        table.row(
                margin.mode() == Mode.FELT_STIFFNESS ? "wanted" : "it takes",
                amount(margin, margin.allowable()),
                "");
        if (margin.mode() != Mode.FELT_STIFFNESS) {
            table.row("the load fits", Figures.times(margin.multiplier()) + " times", how(margin));
            table.row(
                    "wanted",
                    Figures.fixed(margin.factor(), 1) + " times",
                    margin.factors().isEmpty() ? "" : "factor of safety, see below");
        }
        // In full, so that a hand can follow.
        double reserve = margin.reserve();
        String rounded = reserve < 10 ? Figures.reserve(reserve) : Figures.fixed(reserve, 2);
        table.row("reserve", rounded, "");
        table.row("error of the theory", Figures.percent(margin.methodError()), "");
        if (margin.meshError() > 0) {
            table.row("worked out within", Figures.percent(margin.meshError()), "");
        }
        return table;
    }

    /** What a hand needs to follow the force of first crush. */
    private void firstCrush(Page.Table table, Margin margin) {
        Job job = verdict.job();
        for (LoadCase load : job.loads()) {
            for (Load part : load.loads()) {
                if (load.name().equals(margin.loadCase())
                        && part instanceof Load.Press press
                        && press.x() == margin.place().x()
                        && press.y() == margin.place().y()) {
                    FirstCrush first =
                            FirstCrush.of(job.panel().laminate(), press.patch()).orElseThrow();
                    table.row("area of the patch A", figures.area(press.patch().area()), "");
                    double share = first.pressure(press.patch().area());
                    table.row("share s", Figures.fixed(share, 3), "");
                    table.row("crushing starts at", figures.force(first.force()), "");
                }
            }
        }
        double dent = margin.mode() == Mode.CRUSHING ? Limits.CRUSHED : job.limits().lastingDent();
        table.row("dent that counts", figures.fineSize(dent), "");
    }

    /** How the multiplier follows from the two figures above it. */
    private String how(Margin margin) {
        boolean stands =
                verdict.job().loads().stream()
                                .anyMatch(
                                        load ->
                                                load.name().equals(margin.loadCase())
                                                        && !load.standing().isEmpty())
                        || verdict.held().stream().anyMatch(held -> !held.seals().isEmpty());
        double plain =
                margin.mode() == Mode.SAG || margin.mode() == Mode.SEAL_GAP || margin.applied() > 0
                        ? margin.allowable() / margin.applied()
                        : Double.POSITIVE_INFINITY;
        if (Math.abs(plain - margin.multiplier()) <= 1e-6 * margin.multiplier()
                || plain == margin.multiplier()) {
            return "it takes / applied";
        }
        return stands
                ? verdict.held().stream().anyMatch(held -> !held.seals().isEmpty())
                        ? "what stands, as the seal, is not multiplied"
                        : "what heat leaves is added, not multiplied"
                : "by " + verdict.job().limits().criterion().words();
    }

    private String amount(Margin margin, double value) {
        return switch (margin.mode()) {
            case FELT_STIFFNESS ->
                    figures.stiffness(value, margin.allowable()) + " " + figures.stiffnessName();
            case SAG, SEAL_GAP -> figures.movement(value);
            case LASTING_MARK -> figures.force(value);
            case CRUSHING -> value < 1e4 ? figures.force(value) : figures.stress(value);
            case WRINKLING, CRIMPING -> figures.forcePerWidth(value);
            default -> figures.fineStress(value);
        };
    }

    /** Each different ply and the foam, with the constants that matter to the mode. */
    private Page.Table numbers(Margin margin) {
        Page.Table table = new Page.Table("lr");
        Set<String> seen = new LinkedHashSet<>();
        Laminate laminate =
                verdict.job().panel().laminateAt(margin.place().x(), margin.place().y());
        for (Layer layer : laminate.layers()) {
            if (layer instanceof Layer.Laid laid && seen.add(laid.ply().name())) {
                Ply ply = laid.ply();
                table.row(ply.name() + ", cured", figures.fineSize(ply.thickness()));
                table.row("  E along warp", figures.stress(ply.e1()));
                table.row("  E along weft", figures.stress(ply.e2()));
                table.row("  shear modulus", figures.stress(ply.g12()));
            } else if (layer instanceof Layer.Core core && seen.add(core.foam().name())) {
                Foam foam = core.foam();
                table.row(
                        "foam: " + foam.name() + ", " + figures.density(foam.density()),
                        figures.size(core.thickness()));
                table.row("  E through the thickness", figures.stress(foam.eThrough()));
                table.row("  shear modulus", figures.stress(foam.g()));
            }
        }
        strength(margin)
                .forEach((name, strength) -> table.row(name, figures.stress(strength.value())));
        return table;
    }

    private Map<String, Strength> strength(Margin margin) {
        Map<String, Strength> found = new LinkedHashMap<>();
        for (Layer layer : verdict.job().panel().laminate().layers()) {
            if (layer instanceof Layer.Laid laid) {
                switch (margin.mode()) {
                    case PLY_PULLED ->
                            put(found, "strength in tension", laid.ply().strength().tension1());
                    case PLY_CRUSHED ->
                            put(
                                    found,
                                    "strength in compression",
                                    laid.ply().strength().compression1());
                    case KINK -> {
                        put(found, "strength in tension", laid.ply().strength().tension1());
                        put(found, "strength in compression", laid.ply().strength().compression1());
                    }
                    case PLY_SHEARED ->
                            put(found, "strength in shear", laid.ply().strength().shear12());
                    default -> {}
                }
            } else if (layer instanceof Layer.Core core) {
                switch (margin.mode()) {
                    case CORE_SHEAR -> put(found, "foam's shear strength", core.foam().shear());
                    case CORE_TENSION, BOND ->
                            put(found, "foam's tensile strength", core.foam().tension());
                    case CRUSHING, LASTING_MARK ->
                            put(found, "foam's crushing strength", core.foam().crush());
                    default -> {}
                }
            }
        }
        return found;
    }

    private static void put(Map<String, Strength> found, String name, Strength strength) {
        String level = strength.level() == Strength.Level.MEAN ? " (mean)" : " (minimum)";
        found.put(name + level, strength);
    }

    private List<String> sources(Margin margin) {
        Map<String, String> lines = new LinkedHashMap<>();
        for (Layer layer : verdict.job().panel().laminate().layers()) {
            if (layer instanceof Layer.Laid laid) {
                lines.put("ply: " + laid.ply().source(), "");
            } else if (layer instanceof Layer.Core core) {
                lines.put("foam: " + core.foam().source(), "");
            }
        }
        strength(margin).values().forEach(s -> lines.put("strength: " + s.source(), ""));
        Job job = verdict.job();
        lines.put("glass share: " + job.schedule().layUp().source(), "");
        if (job.schedule().board() != null) {
            lines.put("seal coat: " + job.schedule().sealCoat().source(), "");
        }
        verdict.openingBeside(margin)
                .ifPresent(opening -> lines.put("open hole: " + OpenHole.STANDARD.source(), ""));
        margin.factors().forEach(factor -> lines.put(words(factor), ""));
        return new ArrayList<>(lines.keySet());
    }

    private static String words(Factor factor) {
        return "factor of safety "
                + Figures.fixed(factor.value(), 1)
                + " "
                + factor.words()
                + ": "
                + factor.source();
    }

    private void secondAnswer(List<Passage> told, Margin margin) {
        switch (margin.mode()) {
            case PLY_PULLED, PLY_CRUSHED, PLY_SHEARED -> {
                told.add(otherCriteria().passage());
                Concentration.of(verdict, margin).map(WhyPage::concentration).ifPresent(told::add);
            }
            case FELT_STIFFNESS, SAG -> {
                Movement movement = verdict.movementUnder(margin.loadCase());
                int which = verdict.movements().indexOf(movement);
                told.add(
                        new Passage.Words(
                                "",
                                "First-order theory, in which skins and foam turn together, gives "
                                        + figures.fineMovement(firstOrder().get(which))
                                        + " in place of "
                                        + figures.fineMovement(movement.total())
                                        + ". It leaves out the dent and errs beside small patches."));
            }
            default -> {}
        }
        otherwise().stream()
                .filter(other -> other.mode() == margin.mode())
                .findFirst()
                .ifPresentOrElse(
                        other -> told.add(new Passage.Words("", byElements(margin, other))),
                        () -> {
                            if (hasNoOther(margin.mode())) {
                                told.add(new Passage.Words("", "None for this mode."));
                            }
                        });
    }

    private String byElements(Margin margin, Margin other) {
        return "Finite elements, which share nothing with the series but the stiffness of the stack, have "
                + (margin.mode() == Mode.FELT_STIFFNESS
                        ? amount(other, other.applied())
                                + " in place of "
                                + amount(margin, margin.applied())
                        : "it fit "
                                + Figures.times(other.multiplier())
                                + " times in place of "
                                + Figures.times(margin.multiplier()))
                + ".";
    }

    /** Returns each movement by first-order theory. */
    List<Double> firstOrder() {
        List<Double> known = firstOrder;
        if (known == null) {
            known = check.firstOrder(verdict);
            firstOrder = known;
        }
        return known;
    }

    private List<Margin> otherwise() {
        List<Margin> known = otherwise;
        if (known == null) {
            known = check.otherwise(verdict);
            otherwise = known;
        }
        return known;
    }

    private static boolean hasNoOther(Mode mode) {
        return !mode.isOfPlies() && mode != Mode.FELT_STIFFNESS && mode != Mode.SAG;
    }

    private static Passage concentration(Concentration raised) {
        return new Passage.Words(
                "",
                "Right at the rim of the "
                        + raised.opening()
                        + " this skin has "
                        + Figures.fixed(raised.solved(), 1)
                        + " times the stress of the uncut panel as worked out here, and "
                        + Figures.fixed(raised.wideSheet(), 1)
                        + " times it as a wide sheet by itself (Lekhnitskii, Anisotropic Plates "
                        + "[from memory]); on foam it is less, near an edge more.");
    }

    /** The weakest ply by each of the criteria, the one that governs first. */
    private Page.Table otherCriteria() {
        Page.Table known = criteria;
        if (known == null) {
            known = new Page.Table("lr").row("weakest ply of all, by", "the load fits");
            Job job = verdict.job();
            for (PlyCriterion criterion : CRITERIA) {
                Job other = job.withLimits(job.limits().withCriterion(criterion));
                OptionalDouble least =
                        check.margins(other).stream()
                                .filter(m -> m.mode().isOfPlies())
                                .mapToDouble(Margin::multiplier)
                                .min();
                if (least.isPresent()) {
                    known.row(criterion.words(), Figures.times(least.getAsDouble()) + " times");
                }
            }
            criteria = known;
        }
        return known;
    }
}
