package org.coachskin.cli.file;

import java.util.List;
import java.util.Optional;
import org.coachskin.Source;
import org.coachskin.laminate.Ply;
import org.coachskin.laminate.PlyStrength;
import org.coachskin.material.Strength;
import org.coachskin.units.Dimension;

/** A cured ply given outright by its constants. */
final class PlySection {

    static final List<String> KEYS =
            List.of(
                    "E1",
                    "E2",
                    "nu12",
                    "G12",
                    "G13",
                    "G23",
                    "thickness",
                    "density",
                    "alpha1",
                    "alpha2",
                    "tension 1",
                    "compression 1",
                    "tension 2",
                    "compression 2",
                    "shear 12",
                    "strengths are");

    private PlySection() {}

    static Optional<Ply> read(String name, Section keys) {
        Numbers n = new Numbers(keys);
        double e1 = n.need("E1", Dimension.STRESS, 1e7, 1e12);
        double e2 = n.or("E2", Dimension.STRESS, 1e7, 1e12, e1);
        double nu12 = n.need("nu12", Dimension.RATIO, 0, 0.9);
        double g12 = n.need("G12", Dimension.STRESS, 1e6, 1e12);
        double g13 = n.or("G13", Dimension.STRESS, 1e6, 1e12, g12);
        double g23 = n.or("G23", Dimension.STRESS, 1e6, 1e12, g13);
        double thickness = n.need("thickness", Dimension.LENGTH, 2e-5, 0.02);
        double density = n.need("density", Dimension.DENSITY, 300, 9000);
        double alpha1 = n.or("alpha1", Dimension.EXPANSION, -1e-5, 1e-3, 1.6e-5);
        double alpha2 = n.or("alpha2", Dimension.EXPANSION, -1e-5, 1e-3, alpha1);
        double pull1 = n.need("tension 1", Dimension.STRESS, 1e5, 1e10);
        double push1 = n.need("compression 1", Dimension.STRESS, 1e5, 1e10);
        double pull2 = n.or("tension 2", Dimension.STRESS, 1e5, 1e10, pull1);
        double push2 = n.or("compression 2", Dimension.STRESS, 1e5, 1e10, push1);
        double shear = n.need("shear 12", Dimension.STRESS, 1e5, 1e10);
        Optional<Strength.Level> level = level(keys);
        if (!n.complete() || level.isEmpty()) {
            return Optional.empty();
        }
        if (nu12 * nu12 >= e1 / e2) {
            keys.findings()
                    .add(
                            keys.keyNode("nu12"),
                            "nu12 is too large for these E1 and E2: it must be below sqrt(E1/E2).",
                            "Are E1 and E2 exchanged?");
            return Optional.empty();
        }
        PlyStrength strength =
                new PlyStrength(
                        MaterialSection.given(pull1, level.get()),
                        MaterialSection.given(push1, level.get()),
                        MaterialSection.given(pull2, level.get()),
                        MaterialSection.given(push2, level.get()),
                        MaterialSection.given(shear, level.get()));
        return Optional.of(
                new Ply(
                        name,
                        e1,
                        e2,
                        nu12,
                        g12,
                        g13,
                        g23,
                        thickness,
                        density,
                        alpha1,
                        alpha2,
                        strength,
                        Source.YOURS));
    }

    private static Optional<Strength.Level> level(Section keys) {
        String words = keys.has("strengths are") ? keys.text("strengths are").orElse("") : "mean";
        return switch (words) {
            case "mean" -> Optional.of(Strength.Level.MEAN);
            case "minimum" -> Optional.of(Strength.Level.MINIMUM);
            default -> {
                keys.findings()
                        .add(
                                keys.keyNode("strengths are"),
                                "Strengths are mean values or minimum values.",
                                "Write   strengths are: mean   or   strengths are: minimum");
                yield Optional.empty();
            }
        };
    }
}
