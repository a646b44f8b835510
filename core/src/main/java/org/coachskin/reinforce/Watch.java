package org.coachskin.reinforce;

/** Who looks on while reinforcements are tried. */
public interface Watch {

    /** Nobody: it runs to its end. */
    Watch NOBODY =
            new Watch() {
                @Override
                public void tried(int count, int of) {}

                @Override
                public boolean isStopped() {
                    return false;
                }
            };

    /**
     * Told now and then how far it is.
     *
     * @param count how many are behind it
     * @param of how many there are
     */
    void tried(int count, int of);

    /** Returns whether to stop with what is known. */
    boolean isStopped();
}
