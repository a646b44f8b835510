package org.coachskin.cli;

/** The command. */
public final class Main {

    private Main() {}

    /** Runs the command. */
    public static void main(String[] args) {
        System.exit(3);
    }
}
