package org.coachskin.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.coachskin.Problem;

/** What a person can put right, with the line as it stands and what to write instead. */
final class Problems {

    private static final int PLACE = 11;

    private Problems() {}

    /**
     * Returns the text for standard error.
     *
     * @param file name of the file they are in; empty where they are in no file
     */
    static String text(String file, List<Problem> problems) {
        Page page = new Page();
        boolean whole = problems.stream().allMatch(problem -> !problem.place().startsWith("line "));
        if (!file.isEmpty() && !whole) {
            int count = problems.size();
            page.line(
                    file
                            + " has "
                            + (count == 1 ? "1 mistake" : count + " mistakes")
                            + ". Nothing was calculated.");
        }
        for (Problem problem : problems) {
            if (!file.isEmpty() && !whole) {
                page.blank();
            }
            if (whole && !file.isEmpty()) {
                page.line(file + ":");
            }
            boolean placed = !whole && !(problem.place().isBlank() && problem.shown().isBlank());
            if (placed) {
                page.line(
                        problem.place()
                                + " ".repeat(Math.max(2, PLACE - problem.place().length()))
                                + shortened(problem.shown()));
            }
            String indent = placed ? " ".repeat(PLACE) : "";
            page.wrap(indent, problem.what());
            String lead = placed ? indent : "  ";
            problem.fix().lines().forEach(line -> page.wrap(lead + leading(line), line));
        }
        return page.toString();
    }

    /** Returns the same for a program. */
    static String json(String file, List<Problem> problems) {
        Map<String, Object> json = Json.answer("problems");
        json.put("file", file);
        List<Object> rows = new ArrayList<>();
        for (Problem problem : problems) {
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("place", problem.place());
            row.put("shown", problem.shown());
            row.put("what", problem.what());
            row.put("fix", problem.fix());
            rows.add(row);
        }
        json.put("problems", rows);
        return Json.text(json);
    }

    /** Returns the text of a question that has no answer, with where it stands. */
    static String noAnswer(String file, Problem problem) {
        String place = problem.place().startsWith("line ") ? file + ", " + problem.place() : file;
        Page page = new Page().wrap("", 2, place + ": " + problem.what());
        problem.fix().lines().forEach(line -> page.wrap("  " + leading(line), line));
        return page.toString();
    }

    private static String leading(String line) {
        return line.substring(0, line.length() - line.stripLeading().length());
    }

    /** A line of the file keeps its own spaces; one that is too long is cut. */
    private static String shortened(String shown) {
        int most = Page.WIDTH - PLACE;
        return shown.length() <= most ? shown : shown.substring(0, most - 4) + " ...";
    }
}
