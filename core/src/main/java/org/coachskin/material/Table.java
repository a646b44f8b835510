package org.coachskin.material;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.coachskin.Source;
import org.coachskin.Standing;

/**
 * A table of the library: CSV with a unit in the heading of each column of numbers; read into SI
 * once.
 */
public final class Table {

    private final String name;
    private final String[] columns;
    private final double[] factors;
    private final double[] offsets;
    private final List<String[]> rows = new ArrayList<>();

    private Table(String name, String heading) {
        this.name = name;
        String[] cells = heading.split(",", -1);
        columns = new String[cells.length];
        factors = new double[cells.length];
        offsets = new double[cells.length];
        for (int i = 0; i < cells.length; i++) {
            int open = cells[i].indexOf('[');
            columns[i] = open < 0 ? cells[i] : cells[i].substring(0, open).strip();
            String unit = open < 0 ? "" : cells[i].substring(open + 1, cells[i].indexOf(']'));
            factors[i] = factor(unit);
            offsets[i] = unit.equals("degC") ? 273.15 : 0;
        }
    }

    private double factor(String unit) {
        return switch (unit) {
            case "", "m", "kg/m^3", "degC" -> 1;
            case "GPa" -> 1e9;
            case "MPa" -> 1e6;
            case "1e-6/K" -> 1e-6;
            case "g/m^2" -> 1e-3;
            case "%" -> 1e-2;
            default -> throw new IllegalStateException(name + ": unknown unit " + unit);
        };
    }

    /** Reads a table that is known to be there, beside this class or by its path. */
    public static Table read(String name) {
        InputStream in = Table.class.getResourceAsStream(name);
        if (in == null) {
            throw new IllegalStateException("no table " + name);
        }
        try (BufferedReader reader =
                new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            Table table = new Table(name, reader.readLine());
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                String[] cells = line.split(",", -1);
                if (cells.length != table.columns.length) {
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

    /** Returns a cell as it stands. */
    public String text(int row, String column) {
        return rows.get(row)[column(column)];
    }

    /** Returns a cell in SI. */
    public double number(int row, String column) {
        int i = column(column);
        return Double.parseDouble(rows.get(row)[i]) * factors[i] + offsets[i];
    }

    /** Returns where a row comes from, by its columns work, place and standing. */
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
