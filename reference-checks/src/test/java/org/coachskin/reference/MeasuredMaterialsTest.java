package org.coachskin.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Ours over measured, frozen: a change of tables or formulas shows here as better or worse. */
class MeasuredMaterialsTest {

    private static final double HALF_A_PERCENT = 0.005;

    @Test
    void pliesLieAsNearToMeasuredLaminatesAsEver() {
        Map<String, Measured.Ratios> ratios = Measured.ratios(MeasuredPlies.rows());
        frozen(ratios, MeasuredPlies.WARP, 12, 0.984, 0.870, 1.068);
        frozen(ratios, MeasuredPlies.WEFT, 3, 1.097, 0.991, 1.214);
        frozen(ratios, MeasuredPlies.BIAS, 8, 0.954, 0.840, 1.152);
        frozen(ratios, MeasuredPlies.SHEAR, 4, 0.844, 0.638, 1.018);
        frozen(ratios, MeasuredPlies.POISSON, 3, 1.118, 1.016, 1.288);
        frozen(ratios, MeasuredPlies.GROWS, 3, 0.917, 0.778, 1.085);
        frozen(ratios, MeasuredPlies.GROWS_ACROSS, 1, 1.104, 1.104, 1.104);
        assertEquals(10, ratios.size());
    }

    @Test
    void theRulesMinimaAreNoFloorInShearNorQuiteInTension() {
        Map<String, Measured.Ratios> ratios = Measured.ratios(MeasuredPlies.rows());
        frozen(ratios, MeasuredPlies.PULLED, 14, 0.892, 0.600, 1.087);
        frozen(ratios, MeasuredPlies.PRESSED, 13, 0.574, 0.382, 0.776);
        frozen(ratios, MeasuredPlies.SHEARED, 4, 1.200, 0.825, 1.841);
        List<String> below =
                MeasuredPlies.rows().stream()
                        .filter(row -> row.property().equals(MeasuredPlies.SHEARED))
                        .filter(row -> row.ratio() > 1)
                        .map(Measured::specimen)
                        .toList();
        assertEquals(List.of("roving polyester vf 0.49", "the same, vf 0.549"), below);
    }

    @Test
    void foamsLieAsNearToIndependentValuesAsEver() {
        Map<String, Measured.Ratios> ratios = Measured.ratios(MeasuredFoams.rows());
        frozen(ratios, MeasuredFoams.MODULUS, 4, 0.850, 0.607, 1.014);
        frozen(ratios, MeasuredFoams.SHEAR, 3, 0.993, 0.875, 1.053);
        frozen(ratios, MeasuredFoams.SHEARED, 3, 1.006, 0.894, 1.174);
        frozen(ratios, MeasuredFoams.CRUSHED, 3, 0.911, 0.812, 1.000);
        frozen(ratios, MeasuredFoams.PULLED, 1, 0.759, 0.759, 0.759);
        frozen(ratios, MeasuredFoams.FLOOR, 4, 1.129, 0.813, 1.435);
        frozen(ratios, MeasuredFoams.TOP + MeasuredFoams.SHEARED, 1, 1.228, 1.228, 1.228);
        frozen(ratios, MeasuredFoams.TOP + MeasuredFoams.PULLED, 1, 0.992, 0.992, 0.992);
    }

    @Test
    void aRowCopiedFromItsSheetComesBack() {
        MeasuredFoams.rows().stream()
                .filter(Measured::copied)
                .forEach(row -> assertTrue(Math.abs(row.ratio() - 1) < 0.015, row.toString()));
    }

    private static void frozen(
            Map<String, Measured.Ratios> all,
            String property,
            int count,
            double mean,
            double lowest,
            double highest) {
        Measured.Ratios got = Objects.requireNonNull(all.get(property));
        assertEquals(count, got.count(), property);
        assertEquals(mean, got.mean(), HALF_A_PERCENT, "mean of " + property);
        assertEquals(lowest, got.lowest(), HALF_A_PERCENT, "lowest of " + property);
        assertEquals(highest, got.highest(), HALF_A_PERCENT, "highest of " + property);
    }
}
