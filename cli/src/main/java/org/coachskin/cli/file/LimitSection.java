package org.coachskin.cli.file;

import java.util.List;
import java.util.Optional;
import org.coachskin.Source;
import org.coachskin.check.Limits;
import org.coachskin.failure.Factors;
import org.coachskin.failure.PlyCriterion;
import org.coachskin.material.MaterialLibrary;
import org.coachskin.units.Dimension;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** What is wanted of the panel. */
final class LimitSection {

    private static final List<String> CRITERIA =
            List.of("maximum stress", "maximum strain", "Tsai-Hill", "Tsai-Wu");

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
        Section keys =
                section.get()
                        .allowing(
                                List.of(
                                        "felt stiffness",
                                        "sag",
                                        "lasting dent",
                                        "marks allowed",
                                        "factors",
                                        "criterion"),
                                List.of("gap at the seal"));
        MaterialSection.Numbers n = new MaterialSection.Numbers(keys);
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
        Optional<Section> section =
                keys.map("factors")
                        .map(
                                part ->
                                        part.allowing(
                                                List.of(
                                                        "laminate",
                                                        "core shear",
                                                        "wrinkling",
                                                        "crushing",
                                                        "bond",
                                                        "stays"),
                                                List.of()));
        Factors s = Factors.STANDARD;
        if (section.isEmpty()) {
            return s;
        }
        Section f = section.get();
        double laminate = factor(f, "laminate", Double.NaN);
        boolean own = !Double.isNaN(laminate);
        double core = factor(f, "core shear", Double.NaN);
        return new Factors(
                own ? laminate : s.skinOnMean(),
                own ? laminate : s.skinOnMinimum(),
                Double.isNaN(core) ? s.coreShear() : core,
                Double.isNaN(core) ? s.coreShearPeople() : core,
                factor(f, "wrinkling", s.wrinkling()),
                factor(f, "crushing", s.crushing()),
                factor(f, "bond", s.bond()),
                factor(f, "stays", s.stays()),
                Source.YOURS);
    }

    /** A factor of safety is a plain number; the one place where a number has no unit. */
    private static double factor(Section keys, String key, double otherwise) {
        if (!(keys.node(key).orElse(null) instanceof ScalarNode scalar)) {
            return otherwise;
        }
        try {
            double value = Double.parseDouble(scalar.getValue().strip());
            if (value >= 1 && value <= 20) {
                return value;
            }
        } catch (NumberFormatException e) {
            // Told below, with the range.
        }
        keys.findings()
                .add(
                        scalar,
                        "A factor of safety is a plain number from 1 to 20.",
                        "Write   " + key + ": 2.5");
        return otherwise;
    }
}
