package org.coachskin.cli;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.coachskin.cli.report.Passage;

/** What rows of a sheet have told of plies, foam and sources, so that none tells it again. */
final class Told {

    private final Set<List<List<String>>> groups = new HashSet<>();
    private final Set<String> items = new HashSet<>();

    /** Returns a text without the numbers and sources that texts before it have told. */
    List<Passage> more(List<Passage> passages) {
        List<Passage> more = new ArrayList<>();
        String heading = "";
        for (Passage passage : passages) {
            if (passage instanceof Passage.Heading begun) {
                heading = begun.words();
            }
            if (!heading.equals(WhyPage.WENT_IN)) {
                more.add(passage);
            } else if (passage instanceof Passage.Table table) {
                Passage.Table rest = new Passage.Table(table.marks(), unheard(table.rows()));
                if (rest.rows().size() < table.rows().size()) {
                    more.add(new Passage.Words("", "Plies, foam and sources as above."));
                }
                more.add(rest);
            } else if (passage instanceof Passage.Items list) {
                more.add(new Passage.Items(list.items().stream().filter(items::add).toList()));
            } else {
                more.add(passage);
            }
        }
        return more;
    }

    /** Returns the rows of those groups, a row and what is indented under it, that are new. */
    private List<List<String>> unheard(List<List<String>> rows) {
        List<List<List<String>>> all = new ArrayList<>();
        for (List<String> row : rows) {
            if (all.isEmpty() || !row.get(0).startsWith(" ")) {
                all.add(new ArrayList<>());
            }
            all.get(all.size() - 1).add(row);
        }
        return all.stream().filter(groups::add).flatMap(List::stream).toList();
    }
}
