package org.coachskin.reference;

import java.util.List;
import java.util.Locale;
import org.coachskin.check.HonestShares;
import org.coachskin.check.HonestyStudy;

/** What the verdict says of the error of its elements, on the evidence page. */
final class HonestEstimates {

    private HonestEstimates() {}

    static EvidenceSection section() {
        List<HonestyStudy.Row> rows = HonestyStudy.stored();
        StringBuilder text = new StringBuilder();
        text.append(
                String.format(
                        Locale.ROOT,
                        """
                %d figures of %d panels drawn by lot: `honest-estimates.csv`. Flat and crowned, carried all round, on hinges,
                latch and rubber seal, on corner rests, with openings, lips, strips and bands, under a palm, a thumb, luggage,
                pressure, suction and wind that lifts them off their seal. Far more exact: the series where the rim is carried
                all round, elsewhere elements of order 6 with edges 0.8 of the usual. Errors are relative to the figure, of
                forces to the largest of their load case. Under: share of the figures whose error is less than the verdict
                says. The numbers behind the estimates were chosen on other panels of the lot, those for stresses on these
                too; on fifty-two further panels 94 to 98 %% of stresses and 94 to 98 %% of forces lay under.

                | figure | figures | under | estimate over error, median | error, median | error, largest |
                |---|---|---|---|---|---|
                """,
                        rows.size(),
                        rows.stream().mapToInt(HonestyStudy.Row::panel).distinct().count()));
        for (String kind : HonestyStudy.kinds()) {
            HonestShares shares = HonestShares.of(rows, kind);
            text.append(
                    String.format(
                            Locale.ROOT,
                            "| %s | %d | %.1f %% | %.1f | %.0e | %.0e |%n",
                            kind.toLowerCase(Locale.ROOT),
                            shares.figures(),
                            100 * shares.under(),
                            shares.medianRatio(),
                            shares.medianError(),
                            shares.largestError()));
        }
        text.append('\n');
        return new EvidenceSection(
                "What the verdict says of the error of its mesh", text.toString());
    }
}
