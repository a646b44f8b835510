package org.coachskin.reference;

import org.coachskin.failure.Factors;

class ClassRulesTest extends FailureTable {

    ClassRulesTest() {
        super("class-rules");
        Factors ours = Factors.STANDARD;
        double mean = 1 / ours.on(Factors.On.LAMINATE_MEAN).value();
        double foam = 1 / ours.on(Factors.On.CORE_SHEAR).value();
        put("skin on a minimum: small craft", 1 / ours.on(Factors.On.LAMINATE_MINIMUM).value());
        put("skin on a mean: yacht shell and deck", mean);
        put("skin on a mean: yacht bulkhead", mean);
        put("skin on a mean: woven roving by hand", mean);
        put("skin on a mean: the same when slamming", mean);
        put("skin on a mean: local; at least", mean);
        put("skin on a mean: local; at most", mean);
        put("skin on a mean: a load that stays", mean / ours.on(Factors.On.STAYS).value());
        put("foam shear: yachts", foam);
        put("foam shear: small craft", foam);
        put("foam shear: special craft", foam);
        String chain = "1/(1.2 x 1.25 x 2.4) of the rule for woven roving laid by hand";
        differs(
                "skin on a mean: woven roving by hand",
                1 / (1.2 * 1.25 * 2.4),
                chain + ": that rule is stricter than ours.");
        differs(
                "skin on a mean: the same when slamming",
                1 / (1.2 * 1.25 * 2.4 * 0.8),
                chain + " over 0.8 for a slam; ours has one factor for both.");
        choice(
                "skin on a mean: yacht bulkhead",
                "the rule allows more where water does not press; ours does not tell.");
        choice(
                "skin on a mean: local; at least",
                "the lower end of that rule's range; ours is its upper end.");
        choice(
                "skin on a mean: a load that stays",
                "ours halves what is allowed for weeks, the rule takes a third.");
        choice("foam shear: small craft", "that rule allows more than ours.");
        choice("foam shear: special craft", "that rule allows more than ours.");
    }

    private void choice(String quantity, String why) {
        differs(quantity, Double.NaN, why);
    }

    @Override
    String title() {
        return "Share of a strength that may be used: class rules beside one over our factors";
    }
}
