package counterbench.shell;

import org.springframework.shell.core.command.ExitStatus;

/** How a command ended, and with which exit code the process says so. */
public enum Status {
    /** Done. */
    DONE(0),
    /** Refused: bad input, a gate, a role. Nothing was changed. */
    REFUSED(1),
    /** The command line itself is wrong. */
    USAGE(2),
    /** A strict review or reconciliation found something of severity stop or fix. */
    FOUND(3),
    /**
     * The store could not be used. An error of the program itself ends with this code, too: the
     * input is not to blame, and whoever looks after the machine has to look.
     */
    UNUSABLE(4),
    /** Interrupted by a person. */
    INTERRUPTED(5);

    private final int code;

    Status(int code) {
        this.code = code;
    }

    /** The exit code. */
    public int code() {
        return code;
    }

    ExitStatus toExitStatus() {
        return new ExitStatus(code, name());
    }

    static Status of(ExitStatus status) {
        for (Status known : values()) {
            if (known.code == status.code()) {
                return known;
            }
        }
        throw new IllegalArgumentException("no such status: " + status);
    }
}
