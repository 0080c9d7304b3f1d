package counterbench.review.store;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.judgement.Finding;
import counterbench.review.FindingState;
import counterbench.review.StatedFinding;
import counterbench.shell.Larkmere;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** The demo data tells the story that its own list of findings tells, and no other. */
class DemoDataTest {
    @Test
    void the_demo_garage_has_exactly_the_findings_that_its_list_names() throws IOException {
        List<String> expected =
                Files.readAllLines(Larkmere.DATA.resolve("expected-findings.csv")).stream()
                        .skip(1)
                        .toList();
        try (Larkmere larkmere = Larkmere.full(TestStores.H2)) {
            List<StatedFinding> found = new ArrayList<>();
            FindingBook book = new FindingBook(larkmere.store());
            found.addAll(book.now(Larkmere.NORTH, Larkmere.AS_OF, f -> true, n -> {}));
            found.addAll(book.now(Larkmere.SOUTH, Larkmere.AS_OF, f -> true, n -> {}));
            assertThat(found.stream().map(f -> line(f.finding())))
                    .containsExactlyInAnyOrderElementsOf(expected);
            assertThat(found).allMatch(f -> f.state() == FindingState.OPEN);
            assertThat(found.stream().map(StatedFinding::id)).doesNotHaveDuplicates();
        }
    }

    private static String line(Finding finding) {
        return String.join(
                ",",
                finding.rule().word(),
                finding.site(),
                finding.subject().kind().word(),
                finding.subject().name(),
                Objects.toString(finding.subject().part(), ""),
                Objects.toString(finding.subject().step(), ""));
    }
}
