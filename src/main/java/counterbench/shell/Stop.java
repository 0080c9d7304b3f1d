package counterbench.shell;

import counterbench.shared.Interrupted;

/** Whether a person asked the running command to stop. */
public final class Stop {
    private volatile boolean asked;

    /** Asks the running command to stop. */
    public void ask() {
        asked = true;
    }

    /** Forgets that somebody asked, before another command runs. */
    public void clear() {
        asked = false;
    }

    /** Whether somebody asked. */
    public boolean isAsked() {
        return asked;
    }

    /**
     * Where the work may stop.
     *
     * @throws Interrupted if somebody asked
     */
    public void check() {
        if (asked) {
            throw new Interrupted();
        }
    }
}
