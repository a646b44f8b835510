package org.coachskin.cli.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coachskin.check.Limits;
import org.coachskin.failure.Factor;
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

    /** Keys of the file, and what each gives the factor for. */
    private static final Map<String, List<Factors.On>> GIVEN = given();

    static final List<String> FACTORS = List.copyOf(GIVEN.keySet());

    private static Map<String, List<Factors.On>> given() {
        Map<String, List<Factors.On>> given = new LinkedHashMap<>();
        given.put("laminate", List.of(Factors.On.LAMINATE_MEAN, Factors.On.LAMINATE_MINIMUM));
        given.put("core shear", List.of(Factors.On.CORE_SHEAR, Factors.On.CORE_SHEAR_PEOPLE));
        given.put("wrinkling", List.of(Factors.On.WRINKLING));
        given.put("crushing", List.of(Factors.On.CRUSHING));
        given.put("bond", List.of(Factors.On.BOND));
        given.put("stays", List.of(Factors.On.STAYS));
        return given;
    }

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
                            "felt stiffness at least "
                                    + Math.round(standard.feltStiffness() / 1000)
                                    + " N/mm, safety factors of the table"));
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
        Factors factors = Factors.STANDARD;
        if (section.isEmpty()) {
            return factors;
        }
        Numbers n = new Numbers(section.get());
        for (Map.Entry<String, List<Factors.On>> entry : GIVEN.entrySet()) {
            if (section.get().has(entry.getKey())) {
                double value = n.need(entry.getKey(), Dimension.RATIO, Factor.LEAST, Factor.MOST);
                for (Factors.On on : entry.getValue()) {
                    factors = Double.isNaN(value) ? factors : factors.with(on, value);
                }
            }
        }
        return factors;
    }
}
