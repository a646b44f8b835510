package org.coachskin.reference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A Markdown table whose columns also stand in line in the raw text. */
final class Columns {

    private final List<String[]> rows = new ArrayList<>();
    private final boolean[] right;

    /** Starts a table; a heading that ends with {@code >} is of a column set to the right. */
    Columns(String... headings) {
        right = new boolean[headings.length];
        String[] first = new String[headings.length];
        for (int i = 0; i < headings.length; i++) {
            right[i] = headings[i].endsWith(">");
            first[i] = right[i] ? headings[i].substring(0, headings[i].length() - 1) : headings[i];
        }
        rows.add(first);
    }

    Columns row(String... cells) {
        if (cells.length != right.length) {
            throw new IllegalArgumentException(Arrays.toString(cells));
        }
        rows.add(cells);
        return this;
    }

    String text() {
        int[] width = new int[right.length];
        for (String[] row : rows) {
            for (int i = 0; i < width.length; i++) {
                width[i] = Math.max(width[i], row[i].length());
            }
        }
        StringBuilder text = new StringBuilder();
        for (int r = 0; r < rows.size(); r++) {
            for (int i = 0; i < width.length; i++) {
                String cell = rows.get(r)[i];
                String blank = " ".repeat(width[i] - cell.length());
                text.append("| ").append(right[i] ? blank + cell : cell + blank).append(' ');
            }
            text.append("|\n");
            if (r == 0) {
                for (int i = 0; i < width.length; i++) {
                    text.append('|').append("-".repeat(width[i] + 1)).append(right[i] ? ':' : '-');
                }
                text.append("|\n");
            }
        }
        return text.toString();
    }
}
