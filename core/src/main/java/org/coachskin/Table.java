package org.coachskin;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * A table of the library: CSV with a unit in the heading of each column of numbers, read into SI
 * once. A cell that holds a comma stands in double quotes. Every table ends with the columns {@code
 * work}, {@code place} and {@code standing}. Immutable; a table that is not well formed is a fault
 * of the library and throws {@link IllegalStateException}.
 */
public final class Table {

    private final String name;
    private final String[] columns;
    private final double[] factors;
    private final double[] offsets;
    private final List<List<String>> rows = new ArrayList<>();

    private Table(String name, String heading) {
        this.name = name;
        List<String> cells = cells(heading);
        columns = new String[cells.size()];
        factors = new double[columns.length];
        offsets = new double[columns.length];
        for (int i = 0; i < columns.length; i++) {
            String cell = cells.get(i);
            int open = cell.indexOf('[');
            columns[i] = open < 0 ? cell : cell.substring(0, open).strip();
            String unit = open < 0 ? "" : cell.substring(open + 1, cell.indexOf(']'));
            factors[i] = factor(unit);
            offsets[i] = unit.equals("degC") ? 273.15 : 0;
        }
    }

    private double factor(String unit) {
        return switch (unit) {
            case "", "m", "kg/m^3", "degC", "N" -> 1;
            case "GPa" -> 1e9;
            case "MPa" -> 1e6;
            case "1e-6/K" -> 1e-6;
            case "g/m^2", "mm" -> 1e-3;
            case "km/h" -> 1 / 3.6;
            case "%" -> 1e-2;
            default -> throw new IllegalStateException(name + ": unknown unit " + unit);
        };
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }

    /** Returns the table of that name in the package of {@code owner}. */
    public static Table read(Class<?> owner, String name) {
        InputStream in = owner.getResourceAsStream(name);
        if (in == null) {
            throw new IllegalStateException("no table " + name);
        }
        try (BufferedReader reader =
                new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            Table table = new Table(name, reader.readLine());
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                List<String> cells = cells(line);
                if (cells.size() != table.columns.length) {
                    throw new IllegalStateException(name + ": " + line);
                }
                table.rows.add(cells);
            }
            return table;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns the number of rows. */
    public int size() {
        return rows.size();
    }

    private int column(String column) {
        for (int i = 0; i < columns.length; i++) {
            if (columns[i].equals(column)) {
                return i;
            }
        }
        throw new IllegalStateException(name + " has no column " + column);
    }

    /** Returns a cell as it is written. */
    public String text(int row, String column) {
        return rows.get(row).get(column(column));
    }

    /** Returns a number in SI. */
    public double number(int row, String column) {
        int i = column(column);
        return Double.parseDouble(rows.get(row).get(i)) * factors[i] + offsets[i];
    }

    /** Returns where a row comes from. */
    public Source source(int row) {
        Standing standing =
                switch (text(row, "standing")) {
                    case "published" -> Standing.PUBLISHED;
                    case "common practice" -> Standing.COMMON_PRACTICE;
                    case "from memory" -> Standing.FROM_MEMORY;
                    case "calculated" -> Standing.CALCULATED;
                    default -> throw new IllegalStateException(name + ": standing of row " + row);
                };
        return new Source(text(row, "work"), text(row, "place"), standing);
    }
}
