package org.coachskin.reference;

/**
 * A part of the evidence page that is not a published table: a sweep against 3-D elasticity,
 * measured laminates.
 *
 * @param title heading
 * @param text Markdown, written from our own figures
 */
record EvidenceSection(String title, String text) {}
