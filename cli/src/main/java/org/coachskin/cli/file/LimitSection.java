package org.coachskin.cli.file;

import java.util.List;
import java.util.Optional;
import org.coachskin.Source;
import org.coachskin.check.Limits;
import org.coachskin.failure.Factors;
import org.coachskin.failure.PlyCriterion;
import org.coachskin.material.MaterialLibrary;
import org.coachskin.units.Dimension;

/** What is wanted of the panel. */
final class LimitSection {

    static final List<String> CRITERIA =
            List.of("maximum stress", "maximum strain", "Tsai-Hill", "Tsai-Wu");

    static final List<String> KEYS =
            List.of(
                    "felt stiffness",
                    "sag",
                    "lasting dent",
                    "marks allowed",
                    "factors",
                    "criterion");

    static final List<String> FACTORS =
            List.of("laminate", "core shear", "wrinkling", "crushing", "bond", "stays");

    private final Section root;
    private final List<PanelFile.Assumption> assumptions;

    LimitSection(Section root, List<PanelFile.Assumption> assumptions) {
        this.root = root;
        this.assumptions = assumptions;
    }

    Limits read() {
        Limits standard = Limits.STANDARD;
        Optional<Section> section = root.has("limits") ? root.map("limits") : Optional.empty();
        if (section.isEmpty()) {
            assumptions.add(
                    new PanelFile.Assumption(
                            "limits",
                            "felt stiffness at least 40 N/mm, safety factors of the table"));
            return new Limits(
                    standard.feltStiffness(),
                    standard.spanShare(),
                    standard.lastingDent(),
                    false,
                    Factors.STANDARD,
                    criterion(root));
        }
        Section keys = section.get().allowing(KEYS, List.of("gap at the seal"));
        Numbers n = new Numbers(keys);
        return new Limits(
                value(
                        n.or(
                                "felt stiffness",
                                Dimension.STIFFNESS,
                                100,
                                1e8,
                                standard.feltStiffness()),
                        standard.feltStiffness()),
                keys.has("sag") ? sag(keys, standard.spanShare()) : standard.spanShare(),
                value(
                        n.or("lasting dent", Dimension.LENGTH, 1e-6, 0.01, standard.lastingDent()),
                        standard.lastingDent()),
                keys.flag("marks allowed", false),
                keys.has("factors") ? factors(keys) : Factors.STANDARD,
                criterion(keys.has("criterion") ? keys : root));
    }

    private static double value(double read, double otherwise) {
        return Double.isNaN(read) ? otherwise : read;
    }

    /** {@code span/100}. */
    private static double sag(Section keys, double otherwise) {
        String text = keys.text("sag").orElse("");
        if (text.matches("span */ *\\d{1,5}")) {
            return 1 / Double.parseDouble(text.replaceAll("\\D", ""));
        }
        keys.findings()
                .add(
                        keys.keyNode("sag"),
                        "\"sag\" is a share of the short side.",
                        "Write   sag: span/100");
        return otherwise;
    }

    private PlyCriterion criterion(Section keys) {
        Optional<String> name = keys.text("criterion");
        if (name.isEmpty()) {
            return new PlyCriterion.MaxStress();
        }
        String nearest = MaterialLibrary.nearest(name.get(), CRITERIA);
        if (!nearest.equalsIgnoreCase(name.get())) {
            keys.findings()
                    .add(
                            keys.keyNode("criterion"),
                            "No ply criterion is called that.",
                            "Write   criterion: "
                                    + nearest
                                    + "   or one of: "
                                    + String.join(", ", CRITERIA));
        }
        return switch (CRITERIA.indexOf(nearest)) {
            case 1 -> new PlyCriterion.MaxStrain();
            case 2 -> new PlyCriterion.TsaiHill();
            case 3 -> new PlyCriterion.TsaiWu(-0.5);
            default -> new PlyCriterion.MaxStress();
        };
    }

    private static Factors factors(Section keys) {
        Optional<Section> section = keys.map("factors").map(part -> part.allowing(FACTORS));
        Factors s = Factors.STANDARD;
        if (section.isEmpty()) {
            return s;
        }
        Numbers n = new Numbers(section.get());
        boolean skins = section.get().has("laminate");
        boolean core = section.get().has("core shear");
        double laminate = factor(n, "laminate", s.skinOnMean());
        double shear = factor(n, "core shear", s.coreShear());
        Factors given =
                new Factors(
                        laminate,
                        skins ? laminate : s.skinOnMinimum(),
                        shear,
                        core ? shear : s.coreShearPeople(),
                        factor(n, "wrinkling", s.wrinkling()),
                        factor(n, "crushing", s.crushing()),
                        factor(n, "bond", s.bond()),
                        factor(n, "stays", s.stays()),
                        Source.YOURS);
        return n.complete() ? given : s;
    }

    /** A factor of safety: a plain number, as it divides a strength. */
    private static double factor(Numbers n, String key, double otherwise) {
        return n.or(key, Dimension.RATIO, 1, 20, otherwise);
    }
}
