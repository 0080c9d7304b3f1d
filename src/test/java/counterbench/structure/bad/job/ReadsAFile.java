package counterbench.structure.bad.job;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Bad on purpose: a rule that reads a file. */
public final class ReadsAFile {
    public String read(Path file) throws IOException {
        return Files.readString(file);
    }
}
