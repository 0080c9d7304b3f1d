package counterbench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;

/** The program by a clock that a file holds, so that a day can pass in seconds. */
public final class DayProgram {
    private DayProgram() {}

    /**
     * Opens the shell.
     *
     * @param args the file with the time
     */
    public static void main(String[] args) {
        Path clock = Path.of(args[0]);
        System.exit(Counterbench.run(List.of(), () -> read(clock)));
    }

    private static Instant read(Path clock) {
        try {
            return Instant.parse(Files.readString(clock));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
