package org.coachskin;

/**
 * Something the person at the keyboard can put right.
 *
 * @param place where to look, for example {@code line 8}; empty where there is no place
 * @param shown what stands there, as it was written; empty where there is nothing to show
 * @param what what is wrong, in one sentence
 * @param fix what to write instead; may hold several lines
 */
public record Problem(String place, String shown, String what, String fix) {

    /** Returns the problem on a few lines: place and text, what is wrong, what to write. */
    @Override
    public String toString() {
        String head = shown.isEmpty() ? place : place + "    " + shown;
        return (head.isBlank() ? "" : head + "\n    ")
                + what
                + (fix.isEmpty() ? "" : "\n    " + fix);
    }
}
