package org.coachskin.cli.report;

import java.util.List;

/** One part of a sheet. */
public sealed interface Block {

    /** Returns its heading; empty where it needs none. */
    String heading();

    private static List<String> set(List<String> words) {
        return words.stream().map(Typing::set).toList();
    }

    /** Returns what it is to the style sheet beside its shape; may be empty. */
    default String kind() {
        return "";
    }

    /** Returns whether it takes the whole width of the sheet. */
    default boolean wide() {
        return true;
    }

    /**
     * A drawing.
     *
     * @param sentence says what to see
     * @param notes what the drawing has no room for
     */
    record Figure(String heading, String sentence, Drawing drawing, List<String> notes)
            implements Block {
        /** Copies the list and sets the words. */
        public Figure {
            heading = Typing.set(heading);
            sentence = Typing.set(sentence);
            notes = set(notes);
        }

        @Override
        public boolean wide() {
            return false;
        }
    }

    /**
     * Bars that begin at nought.
     *
     * @param sentence says what to see
     * @param unit of the figures
     * @param limit where the line of what is wanted stands; NaN for none
     * @param limitWords what stands at that line
     */
    record Bars(
            String heading,
            String sentence,
            String unit,
            double limit,
            String limitWords,
            List<Bar> bars,
            boolean wide)
            implements Block {

        private static final double ROOM = 1.06;

        /** Copies the list and sets the words. */
        public Bars {
            heading = Typing.set(heading);
            sentence = Typing.set(sentence);
            unit = Typing.set(unit);
            bars = List.copyOf(bars);
        }

        /** Returns these bars for half the width of a sheet. */
        public Bars narrow() {
            return new Bars(heading, sentence, unit, limit, limitWords, bars, false);
        }

        /** Returns what the whole width stands for. */
        double reach() {
            double most = Double.isNaN(limit) ? 0 : limit * 1.25;
            for (Bar bar : bars) {
                most = Math.max(most, bar.value());
            }
            return most == 0 ? 1 : most * ROOM;
        }

        /** Returns a place along the bars for a style sheet. */
        public String share(double value) {
            double share = Math.max(0, Math.min(1, value / reach()));
            return Sketch.at(100 * share) + "%";
        }

        /** Returns whether there is a line of what is wanted. */
        public boolean hasLimit() {
            return !Double.isNaN(limit);
        }
    }

    /**
     * One bar.
     *
     * @param words what it stands for
     * @param value its length; no more than can be drawn beside the others
     * @param shown the figure in words
     * @param more what else there is to say in a word or two
     * @param fails whether what is wanted is not met
     */
    record Bar(String words, double value, String shown, String more, boolean fails) {
        /** Sets the words. */
        public Bar {
            words = Typing.set(words);
            more = Typing.set(more);
        }
    }

    /**
     * A table.
     *
     * @param sentence says what to see; may be empty
     * @param head of the columns
     * @param rows cells of each row
     * @param kind {@code tick} for boxes to tick, {@code fill} for boxes to fill in, or empty
     */
    record Rows(
            String heading,
            String sentence,
            List<String> head,
            List<List<String>> rows,
            String kind,
            boolean wide)
            implements Block {
        /** Copies the lists and sets the words. */
        public Rows {
            heading = Typing.set(heading);
            sentence = Typing.set(sentence);
            head = set(head);
            rows = rows.stream().map(Block::set).toList();
        }
    }

    /**
     * Paragraphs.
     *
     * @param listed whether they are items of a list
     * @param kind {@code careful} for what must be read, or empty
     */
    record Words(String heading, List<String> paragraphs, boolean listed, String kind)
            implements Block {
        /** Copies the list and sets the words. */
        public Words {
            paragraphs = set(paragraphs);
        }
    }

    /** Texts that are folded on a screen and open on paper. */
    record Folds(String heading, String sentence, List<Fold> folds) implements Block {
        /** Copies the list. */
        public Folds {
            folds = List.copyOf(folds);
        }
    }

    /** One folded text. */
    record Fold(String summary, List<Passage> passages) {
        /** Copies the list and sets the summary. */
        public Fold {
            summary = Typing.set(summary);
            passages = List.copyOf(passages);
        }
    }

    /** A text as it stands. */
    record Raw(String heading, String text) implements Block {}
}
