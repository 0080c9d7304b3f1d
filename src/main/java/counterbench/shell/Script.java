package counterbench.shell;

import java.io.BufferedReader;
import java.io.IOException;

/** Runs commands line by line and stops at the first that does not get through. */
public final class Script {
    private final Runner runner;
    private final Desk desk;

    public Script(Runner runner, Desk desk) {
        this.runner = runner;
        this.desk = desk;
    }

    /**
     * Runs the lines of a reader.
     *
     * @param name what messages call it
     * @return how the last command ended
     */
    public Status run(BufferedReader lines, String name) throws IOException {
        int number = 0;
        for (String line; (line = lines.readLine()) != null; ) {
            number++;
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

    /** Some editors begin a UTF-8 file with a byte order mark. */
    private static String withoutMark(String line) {
        return line.startsWith("\ufeff") ? line.substring(1) : line;
    }
}
