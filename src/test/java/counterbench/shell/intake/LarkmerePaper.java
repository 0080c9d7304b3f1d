package counterbench.shell.intake;

import counterbench.db.TestStores;
import counterbench.people.Role;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;

/**
 * A folder for each test in which paper lies, and one store for all tests of a class to take it.
 */
abstract class LarkmerePaper {
    static Larkmere larkmere;

    @TempDir Path folder;

    @BeforeAll
    static void open() {
        larkmere = Larkmere.withPacks(TestStores.H2);
    }

    @AfterAll
    static void close() {
        larkmere.close();
    }

    final Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    static FakeShell maren() {
        return larkmere.shellOf("Maren", Role.LEAD);
    }
}
