package org.coachskin.cli;

import org.coachskin.check.Answer;
import org.coachskin.check.Verdict;

/** What a verdict comes to. */
enum Upshot {
    HOLDS("holds"),
    BARELY("barely"),
    TOO_SOFT("not stiff enough"),
    TOO_WEAK("not strong enough"),
    MARKS("still marks");

    private final String words;

    Upshot(String words) {
        this.words = words;
    }

    static Upshot of(Verdict verdict) {
        if (verdict.stiff() == Answer.NO) {
            return TOO_SOFT;
        }
        if (verdict.strong() == Answer.NO) {
            return TOO_WEAK;
        }
        if (!verdict.holds()) {
            return MARKS;
        }
        return Remarks.clearly(verdict) ? HOLDS : BARELY;
    }

    /** Returns it in a few words. */
    String words() {
        return words;
    }
}
