package org.coachskin.shell;

/**
 * One way in which a panel vibrates by itself.
 *
 * @param frequency natural frequency [Hz]
 * @param shape how it moves
 */
public record Vibration(double frequency, ModeShape shape) {}
