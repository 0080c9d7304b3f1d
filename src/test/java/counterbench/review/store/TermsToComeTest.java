package counterbench.review.store;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.intake.store.ImportPaper;
import counterbench.intake.store.LoadPack;
import counterbench.judgement.Finding;
import counterbench.judgement.Rule;
import counterbench.sheets.poi.PoiSheets;
import counterbench.shell.Larkmere;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.YearMonth;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Cores of jobs that go on, or were given up, under terms that change. */
class TermsToComeTest {
    private static final Instant BEFORE = Instant.parse("2026-04-20T17:00:00Z");
    private static final Instant ON_THE_DAY = Instant.parse("2026-05-01T05:00:00Z");

    @TempDir Path folder;

    private Larkmere larkmere;

    @BeforeEach
    void open() throws IOException {
        larkmere = Larkmere.empty(TestStores.H2);
        loadPack("A", "2026-03-01", 12);
        loadPack("B", "2026-05-01", 18);
    }

    @AfterEach
    void close() {
        larkmere.close();
    }

    private void loadPack(String revision, String from, int minutes) throws IOException {
        Path pack = folder.resolve("ZT-9-" + revision + ".yaml");
        Files.writeString(
                pack,
                """
                campaign: ZT-9
                title: Pump
                revision: %s
                in-force-from: %s
                kit: {part: ZT-K, contents: [{part: ZT-1, name: Pump, quantity: 1}]}
                cautions: [Mind the edge]
                procedure:
                  - {id: safe, do: Read the cautions, kind: safety}
                core: {part: ZT-1, drain-minutes: %d, plugs: 0}
                """
                        .formatted(revision, from, minutes));
        new LoadPack(larkmere.store(), PoiSheets.files())
                .run(pack, Larkmere.NORTH, "Maren", Larkmere.AS_OF);
    }

    private void take(String name, String text) throws IOException {
        Path paper = Files.writeString(folder.resolve(name), text);
        var request =
                new ImportPaper.Request(
                        paper, Larkmere.NORTH, "Maren", Larkmere.AS_OF, false, false);
        assertThat(
                        new ImportPaper(larkmere.store(), PoiSheets.files())
                                .run(request, n -> {})
                                .problems())
                .isEmpty();
    }

    private void drainedForFourteenMinutes(String job) throws IOException {
        take(
                "cores.csv",
                """
                core,event,at,job,serial
                C-1,removed,2026-04-01 09:00,%s,S-1
                C-1,drain-begun,2026-04-01 09:10,,
                C-1,drain-ended,2026-04-01 09:24,,
                C-1,packed,2026-04-01 10:00,,
                """
                        .formatted(job));
    }

    private List<Finding> drainShort(Instant now) {
        return Kept.review(larkmere.store(), Larkmere.NORTH, now).findings().stream()
                .filter(f -> f.rule() == Rule.DRAIN_SHORT)
                .toList();
    }

    @Test
    void a_core_of_a_job_that_goes_on_is_judged_again_when_the_next_revision_is_in_force()
            throws IOException {
        take("jobs.csv", "job,campaign,vin,opened_at\nJ-1,ZT-9,0X,2026-04-01 08:00\n");
        drainedForFourteenMinutes("J-1");
        assertThat(drainShort(BEFORE)).isEmpty();
        assertThat(drainShort(ON_THE_DAY.minusSeconds(1))).isEmpty();
        assertThat(drainShort(ON_THE_DAY))
                .singleElement()
                .satisfies(f -> assertThat(f.month()).isNull());
    }

    @Test
    void a_core_of_a_job_that_was_given_up_belongs_to_the_month_in_which_it_was()
            throws IOException {
        take(
                "jobs.csv",
                """
                job,campaign,vin,opened_at,completed_at,outcome
                J-2,ZT-9,0X,2026-04-01 08:00,2026-05-02 08:00,abandoned
                """);
        drainedForFourteenMinutes("J-2");
        assertThat(drainShort(Instant.parse("2026-05-03T12:00:00Z")))
                .singleElement()
                .satisfies(f -> assertThat(f.month()).isEqualTo(YearMonth.of(2026, 5)));
    }
}
