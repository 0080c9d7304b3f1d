package counterbench.campaign.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Packs kept bad, or doubtful, on purpose. Each file ends with the messages that it must get, in
 * lines that begin with {@code # expect:}.
 */
class BadPackTest {
    private static final String EXPECT = "# expect: ";

    static Stream<Path> bad() throws IOException, URISyntaxException {
        return files("bad");
    }

    static Stream<Path> doubtful() throws IOException, URISyntaxException {
        return files("doubtful");
    }

    @ParameterizedTest
    @MethodSource("bad")
    void a_bad_pack_gets_every_refusal_with_its_place(Path file) throws IOException {
        PackReading reading = read(file);
        assertThat(reading.pack()).isNull();
        assertThat(messages(reading.problems())).isEqualTo(expected(file));
    }

    @ParameterizedTest
    @MethodSource("doubtful")
    void a_doubtful_pack_is_read_and_warned_of(Path file) throws IOException {
        PackReading reading = read(file);
        assertThat(reading.pack()).isNotNull();
        assertThat(messages(reading.warnings())).isEqualTo(expected(file));
    }

    private static PackReading read(Path file) throws IOException {
        return PackReader.read(Files.readString(file), name(file));
    }

    private static List<String> messages(List<PackProblem> problems) {
        return problems.stream().map(PackProblem::message).toList();
    }

    private static List<String> expected(Path file) throws IOException {
        return Files.readAllLines(file).stream()
                .filter(line -> line.startsWith(EXPECT))
                .map(
                        line ->
                                name(file)
                                        + line.substring(EXPECT.length() - 1)
                                                .replaceFirst(" ", ":"))
                .toList();
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }

    private static Stream<Path> files(String folder) throws IOException, URISyntaxException {
        URL url = BadPackTest.class.getResource("/counterbench/campaign/" + folder);
        try (Stream<Path> files = Files.list(Path.of(Objects.requireNonNull(url).toURI()))) {
            return files.sorted().toList().stream();
        }
    }
}
