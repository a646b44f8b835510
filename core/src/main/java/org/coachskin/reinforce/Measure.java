package org.coachskin.reinforce;

/**
 * One way to reinforce.
 *
 * @param build what is laid or glued
 * @param width of the band of full thickness, away from what is reinforced [m]; 0 where nothing is
 *     laid
 * @param turned whether the inside skin goes round the raw edge besides
 * @param radius corner radius of the opening [m]; 0 for the one it has
 */
public record Measure(Build build, double width, boolean turned, double radius) {

    /** Returns it in a few words: what, how wide, what besides. */
    public String words() {
        StringBuilder words = new StringBuilder();
        if (!(build instanceof Build.Nothing)) {
            words.append(build.words());
            if (width > 0) {
                words.append(", ").append(Words.millimetres(width)).append(" wide");
            }
        }
        if (turned) {
            words.append(words.length() == 0 ? "" : ", ")
                    .append("inside skin turned round the edge");
        }
        if (radius > 0) {
            words.append(words.length() == 0 ? "" : ", ")
                    .append("corner radius ")
                    .append(Words.millimetres(radius));
        }
        return words.length() == 0 ? "nothing" : words.toString();
    }
}
