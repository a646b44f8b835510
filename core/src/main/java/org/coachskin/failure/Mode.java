package org.coachskin.failure;

/** What can happen to a panel, in the words of the bench and in those of the literature. */
public enum Mode {
    /** The palm goes in too far. */
    FELT_STIFFNESS(Question.STIFF, "felt stiffness", "deflection under a palm, secant from rest"),
    /** The panel sags too far under a load that is spread. */
    SAG(Question.STIFF, "sag", "deflection under a distributed load"),
    /** The panel lifts off its rubber seal. */
    SEAL_GAP(Question.STIFF, "gap at the rubber seal", "opening of a one-sided contact"),
    /** A ply breaks in tension. */
    PLY_PULLED(Question.STRONG, "pulled apart", "ply failure in tension"),
    /** A ply breaks in compression. */
    PLY_CRUSHED(Question.STRONG, "crushed", "ply failure in compression"),
    /** A ply breaks in shear in its plane. */
    PLY_SHEARED(Question.STRONG, "sheared in its plane", "ply failure in in-plane shear"),
    /** A skin buckles in short waves on the foam. */
    WRINKLING(Question.STRONG, "skin wrinkling", "face wrinkling"),
    /** The whole section shears over in compression. */
    CRIMPING(Question.STRONG, "panel shearing over", "shear crimping"),
    /** The foam is sheared. */
    CORE_SHEAR(Question.STRONG, "foam sheared", "core shear"),
    /** The foam is sheared through around a hinge, a latch or a rest. */
    PUNCHING(Question.STRONG, "foam sheared round a fitting", "punching shear"),
    /** The foam is torn in its plane. */
    CORE_TENSION(Question.STRONG, "foam torn", "core tension in plane"),
    /** The foam under a load is crushed for good, deep enough to need a repair. */
    CRUSHING(Question.STRONG, "foam crushed for good", "core crushing"),
    /** A skin is pulled off the foam. */
    BOND(Question.STRONG, "skin pulled off", "bond tension on a crown or a bevel"),
    /** A skin breaks where it turns over the bevel of a foam strip. */
    KINK(Question.STRONG, "bent at a bevel", "local bending of a kinked face"),
    /** A lasting dent that can be seen. */
    LASTING_MARK(Question.UNMARKED, "lasting mark", "residual indentation");

    private final Question question;
    private final String words;
    private final String theory;

    Mode(Question question, String words, String theory) {
        this.question = question;
        this.words = words;
        this.theory = theory;
    }

    /** Returns the question this mode belongs to. */
    public Question question() {
        return question;
    }

    /** Returns what happens, as a maker says it. */
    public String words() {
        return words;
    }

    /** Returns what the literature calls it. */
    public String theory() {
        return theory;
    }

    /** Returns whether it is a ply that breaks. */
    public boolean isOfPlies() {
        return this == PLY_PULLED || this == PLY_CRUSHED || this == PLY_SHEARED;
    }

    /** The three questions. */
    public enum Question {
        /** Stiff enough? */
        STIFF,
        /** Strong enough? */
        STRONG,
        /** Does it stay unmarked? */
        UNMARKED
    }
}
