package org.coachskin.reference;

/**
 * One published number.
 *
 * @param quantity what it is; the key by which a test finds the row
 * @param published the number as printed
 * @param unit its unit as printed; empty for a pure number
 * @param tolerance largest difference allowed, in the same unit; the header of the file gives the
 *     reason
 * @param status {@code agrees}, or {@code disputed}: then it is listed with our value and never a
 *     target
 */
record PublishedRow(
        String quantity, double published, String unit, double tolerance, String status) {

    boolean disputed() {
        return status.equals("disputed");
    }
}
