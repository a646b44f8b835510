package org.coachskin.cli.report;

import java.util.List;

/**
 * One sheet.
 *
 * @param id by which the page knows it
 * @param title of the sheet
 * @param use whom it is for
 * @param blocks from top to bottom
 */
public record Sheet(String id, String title, String use, List<Block> blocks) {
    /** Copies the list. */
    public Sheet {
        blocks = List.copyOf(blocks);
    }
}
