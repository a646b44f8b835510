package org.coachskin.cli.report;

import java.util.List;

/** Part of a text that is told in lines on a terminal and set on a sheet. */
public sealed interface Passage {

    /** What follows is about. */
    record Heading(String words) implements Passage {}

    /** Lines that stay lines, as of a formula. */
    record Lines(List<String> lines) implements Passage {
        /** Copies the list. */
        public Lines {
            lines = List.copyOf(lines);
        }
    }

    /**
     * Running words.
     *
     * @param lead what stands before them, or empty
     */
    record Words(String lead, String words) implements Passage {}

    /**
     * Rows of cells; a first cell that is indented belongs to the row above that is not.
     *
     * @param marks of the columns: {@code r} for figures, {@code l} for words
     */
    record Table(String marks, List<List<String>> rows) implements Passage {
        /** Copies the lists. */
        public Table {
            rows = rows.stream().map(List::copyOf).toList();
        }
    }

    /** Items of a list. */
    record Items(List<String> items) implements Passage {
        /** Copies the list. */
        public Items {
            items = List.copyOf(items);
        }
    }
}
