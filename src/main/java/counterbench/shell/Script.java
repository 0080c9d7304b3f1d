package counterbench.shell;

import java.io.IOException;
import org.jspecify.annotations.Nullable;

/** Runs commands line by line and stops at the first that does not get through. */
public final class Script {
    private final Runner runner;
    private final Desk desk;

    public Script(Runner runner, Desk desk) {
        this.runner = runner;
        this.desk = desk;
    }

    /**
     * Runs line after line.
     *
     * @param name what messages call it
     * @return how the last command ended
     */
    public Status run(Lines lines, String name) throws IOException {
        Stop stop = desk.circumstances().stop();
        int number = 0;
        for (String line; (line = lines.next()) != null; ) {
            number++;
            if (stop.isAsked()) {
                return Status.INTERRUPTED;
            }
            Status status = runner.run(number == 1 ? withoutMark(line) : line, desk);
            if (status != Status.DONE) {
                desk.err().println(name + ", line " + number + ": stopped here");
                desk.err().flush();
                return status;
            }
            if (desk.circumstances().session().isLeaving()) {
                return Status.DONE;
            }
        }
        return Status.DONE;
    }

    /** Gives one line after the other. */
    @FunctionalInterface
    public interface Lines {
        /** The next line, or null where there is none. */
        @Nullable String next() throws IOException;
    }

    /** Some editors begin a UTF-8 file with a byte order mark. */
    private static String withoutMark(String line) {
        return line.startsWith("\ufeff") ? line.substring(1) : line;
    }
}
