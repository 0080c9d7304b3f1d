package counterbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import counterbench.campaign.yaml.PackReader;
import counterbench.facts.Column;
import counterbench.facts.FactKind;
import counterbench.home.Surroundings;
import counterbench.judgement.Rule;
import counterbench.shell.BaseCommand;
import counterbench.shell.Commands;
import counterbench.shell.LineParser;
import counterbench.structure.SourceTree;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.context.annotation.AnnotationConfigApplicationContext;

/** README says what the program does, word for word where a machine can tell. */
class ReadmeTest {
    private static final String README = SourceTree.read(Path.of("README.md")).text();
    private static final Pattern PLAIN_BLOCK = Pattern.compile("(?m)^```\\n([^`]*)^```");
    private static final Pattern YAML_BLOCK = Pattern.compile("(?m)^```yaml\\n([\\s\\S]*?)^```");

    @TempDir static Path folder;

    private final AnnotationConfigApplicationContext parts =
            Counterbench.start(
                    new Surroundings(
                            Map.of("COUNTERBENCH_HOME", folder.resolve("none").toString()), folder),
                    InstantSource.system());
    private final Commands commands = parts.getBean(Commands.class);

    @AfterEach
    void close() {
        parts.close();
    }

    @Test
    void every_rule_stands_there_with_its_severity() {
        for (Rule rule : Rule.values()) {
            assertThat(README)
                    .contains("| `" + rule.word() + "` | " + rule.severity().word() + " |");
        }
    }

    @Test
    void every_command_is_named() {
        for (BaseCommand command : commands.all()) {
            assertThat(README).contains("`" + command.getName() + "`");
        }
    }

    @Test
    void every_command_line_is_one_that_the_program_takes() {
        LineParser parser = new LineParser(commands);
        List<String> lines = commandLines().toList();
        assertThat(lines).hasSizeGreaterThan(20);
        for (String line : lines) {
            BaseCommand command = commandOf(line).orElseThrow();
            assertThatCode(() -> command.check(parser.parse(line)))
                    .as(line)
                    .doesNotThrowAnyException();
        }
    }

    private Stream<String> commandLines() {
        return blocks(PLAIN_BLOCK)
                .flatMap(String::lines)
                .flatMap(line -> Arrays.stream(line.split(" && | > ", -1)))
                .map(line -> line.replaceFirst("^counterbench ", "").strip())
                .filter(line -> commandOf(line).isPresent());
    }

    private Optional<BaseCommand> commandOf(String line) {
        return commands.all().stream()
                .filter(c -> (line + " ").startsWith(c.getName() + " "))
                .max(Comparator.comparing(c -> c.getName().length()));
    }

    @Test
    void every_path_of_the_demo_data_leads_somewhere() {
        assertThat(Pattern.compile("\\bdemo-data/[\\w./-]*\\w").matcher(README).results())
                .hasSizeGreaterThan(8)
                .allMatch(path -> Files.exists(Path.of(path.group())));
    }

    @Test
    void every_kind_of_sheet_stands_there_with_its_headings() {
        for (FactKind kind : FactKind.values()) {
            if (kind.isInSheets()) {
                String row = rowOf(kind);
                assertThat(kind.columns())
                        .extracting(Column::heading)
                        .filteredOn(heading -> !heading.equals("attributes"))
                        .allSatisfy(heading -> assertThat(row).containsPattern("\\b" + heading));
            }
        }
    }

    private static String rowOf(FactKind kind) {
        String begin = "| `" + kind.word() + "` |";
        return README.lines().filter(line -> line.startsWith(begin)).findFirst().orElse("");
    }

    @Test
    void the_pack_that_it_shows_is_in_order() {
        String pack = blocks(YAML_BLOCK).findFirst().orElseThrow();
        assertThat(PackReader.read(pack, "README.md").problems()).isEmpty();
    }

    private static Stream<String> blocks(Pattern pattern) {
        return pattern.matcher(README).results().map((MatchResult found) -> found.group(1));
    }
}
