package counterbench.days;

import counterbench.TypedProgram;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;

/** The invented garage of the demo on the Monday morning after its story. */
final class Garage {
    private static final Instant MORNING = Instant.parse("2026-04-13T11:00:00Z");

    private Garage() {}

    /** Fills a home in a folder with it. */
    static Path prepared(Path folder) throws Exception {
        Path home = folder.resolve("garage");
        try (TypedProgram program =
                TypedProgram.at(Files.createDirectories(folder.resolve("none")), () -> MORNING)) {
            program.done("demo --home " + home);
        }
        return home;
    }
}
