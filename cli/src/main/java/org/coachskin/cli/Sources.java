package org.coachskin.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import org.coachskin.Source;

/** Sources under a table: each is printed once, the rows carry its number. */
final class Sources {

    private final Map<String, Integer> numbers = new LinkedHashMap<>();

    /** Returns the mark of a source, for example {@code (2)} after two spaces. */
    String mark(Source source) {
        Integer number = numbers.computeIfAbsent(source.toString(), s -> numbers.size() + 1);
        return "  (" + number + ")";
    }

    /** Adds the sources in the order in which they were first marked. */
    void addTo(Page page) {
        numbers.forEach((words, number) -> page.wrap("  (" + number + ") ", words));
    }
}
