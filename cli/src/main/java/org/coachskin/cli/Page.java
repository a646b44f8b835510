package org.coachskin.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.coachskin.cli.report.Passage;

/** Plain text for a person, 80 columns wide. */
final class Page {

    static final int WIDTH = 80;

    private static final char GLUE = '\u00a0';

    private static final Pattern NUMBER_AND_UNIT =
            Pattern.compile(
                    "(\\d) ((?:mm|in|N/mm|lbf/in|kg|lb|N|lbf|km/h|mph|MPa|g/m\\^2|kg/m\\^3|times|Hz)\\b|%)");

    private final StringBuilder text = new StringBuilder();

    /** Adds a line as it is. */
    Page line(String line) {
        text.append(line.replace(GLUE, ' ').stripTrailing()).append('\n');
        return this;
    }

    /** Adds an empty line. */
    Page blank() {
        text.append('\n');
        return this;
    }

    /** Adds a line with one part on the left and one that ends at the right margin. */
    Page ends(String left, String right) {
        int gap = WIDTH - 1 - left.length() - right.length();
        return gap > 1 ? line(left + " ".repeat(gap) + right) : wrap("", left).line("  " + right);
    }

    /** Adds words after {@code lead}; further lines start below the first word. */
    Page wrap(String lead, String words) {
        return wrap(lead, lead.length(), words);
    }

    /** Adds words after {@code lead}; further lines are indented by {@code indent}. */
    Page wrap(String lead, int indent, String words) {
        StringBuilder line = new StringBuilder(lead);
        boolean first = true;
        for (String word : together(words).split("(?<! ) (?! )", -1)) {
            if (!first && line.length() + 1 + word.length() > WIDTH) {
                line(line.toString());
                line.setLength(0);
                line.append(" ".repeat(indent));
                first = true;
            }
            line.append(first ? "" : " ").append(word);
            first = false;
        }
        return line(line.toString());
    }

    /**
     * Glues a number to its unit. Words between which more than one space stands, as around what is
     * to be written, stay together as well.
     */
    private static String together(String words) {
        return NUMBER_AND_UNIT.matcher(words.strip()).replaceAll("$1" + GLUE + "$2");
    }

    /** Adds a paragraph indented by two. */
    Page paragraph(String words) {
        return wrap("  ", words);
    }

    /** Adds an item of a list. */
    Page item(String words) {
        return wrap("  - ", words);
    }

    /** Adds a table. */
    Page table(Table table) {
        table.lines().forEach(this::line);
        return this;
    }

    /** Adds part of a text. */
    Page passage(Passage passage) {
        if (passage instanceof Passage.Heading heading) {
            return blank().line(heading.words());
        }
        if (passage instanceof Passage.Lines lines) {
            lines.lines().forEach(line -> line("  " + line));
            return this;
        }
        if (passage instanceof Passage.Words words) {
            return wrap("  " + words.lead(), words.lead().isEmpty() ? 2 : 4, words.words());
        }
        if (passage instanceof Passage.Table rows) {
            Table table = new Table(rows.marks());
            rows.rows().forEach(table::row);
            return table(table);
        }
        ((Passage.Items) passage).items().forEach(this::item);
        return this;
    }

    /** Adds the sources that the rows of a table carry the numbers of. */
    Page lines(Sources sources) {
        sources.addTo(this);
        return this;
    }

    @Override
    public String toString() {
        return text.toString();
    }

    /**
     * Rows of cells, indented by two; each column is as wide as its widest cell. A column whose
     * mark is {@code r} ends on the right, any other starts on the left.
     */
    static final class Table {

        private final String marks;
        private final List<List<String>> rows = new ArrayList<>();

        Table(String marks) {
            this.marks = marks;
        }

        Table row(String... cells) {
            rows.add(List.of(cells));
            return this;
        }

        /** Returns it as part of a text. */
        Passage.Table passage() {
            return new Passage.Table(marks, rows);
        }

        Table row(List<String> cells) {
            rows.add(List.copyOf(cells));
            return this;
        }

        private List<String> lines() {
            int[] width = new int[marks.length()];
            for (List<String> row : rows) {
                for (int i = 0; i < row.size(); i++) {
                    width[i] = Math.max(width[i], row.get(i).length());
                }
            }
            shrinkTheFirst(width);
            List<String> lines = new ArrayList<>();
            for (List<String> row : rows) {
                StringBuilder line = new StringBuilder();
                List<String> first = split(row.isEmpty() ? "" : row.get(0), width[0]);
                for (int k = 0; k < first.size() - 1; k++) {
                    lines.add("  " + first.get(k));
                }
                for (int i = 0; i < row.size(); i++) {
                    String cell = i == 0 ? first.get(first.size() - 1) : row.get(i);
                    String gap = " ".repeat(width[i] - cell.length());
                    line.append("  ").append(marks.charAt(i) == 'r' ? gap + cell : cell + gap);
                }
                lines.add(line.toString());
            }
            return lines;
        }

        /** A first column of words gives way, on two lines, where the table would be too wide. */
        private static void shrinkTheFirst(int[] width) {
            int total = 0;
            for (int w : width) {
                total += 2 + w;
            }
            width[0] = Math.max(16, Math.min(width[0], width[0] - (total - WIDTH)));
        }

        private static List<String> split(String words, int width) {
            List<String> lines = new ArrayList<>();
            String rest = words;
            while (rest.length() > width) {
                int cut = rest.lastIndexOf(' ', width);
                if (cut <= 0) {
                    break;
                }
                lines.add(rest.substring(0, cut));
                rest = "  " + rest.substring(cut + 1);
                if (rest.isBlank()) {
                    break;
                }
            }
            lines.add(rest);
            return lines;
        }
    }
}
