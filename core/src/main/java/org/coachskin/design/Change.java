package org.coachskin.design;

import org.coachskin.check.Verdict;

/**
 * One change to a panel, already calculated.
 *
 * @param words what to do, for example {@code one more 160 g/m^2 ply inside}
 * @param verdict on the changed panel
 * @param addedMass of the whole panel [kg]; below zero where it gets lighter
 */
public record Change(String words, Verdict verdict, double addedMass) {}
