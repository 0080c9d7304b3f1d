package counterbench.shell.bench;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.people.Role;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Status;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Loose parts fitted in the place of a kit's, which the rules take as of the kit. */
class LooseForKitTest {
    private static final String UNJUDGED =
            "; the review does not say so, since kit FP-1052 came with one";
    private static Larkmere larkmere;

    @BeforeAll
    static void open(@TempDir Path paper) throws IOException {
        larkmere = Larkmere.full(TestStores.H2);
        write(
                paper,
                "jobs",
                "job,campaign,vin,opened_at",
                "N-900,HB-0417,0WBCB12D7NA002799,2026-04-09 08:00");
        write(
                paper,
                "receipts",
                "part,quantity,received_at,lot,expires_on",
                "HB-3015,5,2026-04-01 08:00,X1,2026-04-05",
                "HB-3011,1,2026-04-01 08:00,XB,",
                "HB-3013,1,2026-04-01 08:00,XC,");
        write(
                paper,
                "issues",
                "job,at,kit,part,quantity,lot",
                "N-900,2026-04-09 08:10,FP-1052,,,",
                "N-900,2026-04-09 08:20,,HB-3015,5,X1",
                "N-900,2026-04-09 08:20,,HB-3011,1,XB",
                "N-900,2026-04-09 08:20,,HB-3013,1,XC");
        write(
                paper,
                "uses",
                "job,part,quantity,condition,at,kit",
                "N-900,HB-3015,5,scrapped,2026-04-09 08:15,FP-1052",
                "N-900,HB-3011,1,scrapped,2026-04-09 08:15,FP-1052",
                "N-900,HB-3013,4,scrapped,2026-04-09 08:15,FP-1052");
        take(paper);
    }

    private static void take(Path paper) {
        FakeShell.Output taken =
                larkmere.shellOf("Maren", Role.LEAD).run(List.of("import", paper.toString()));
        assertThat(taken.status()).as(taken.messages().toString()).isEqualTo(Status.DONE);
    }

    @AfterAll
    static void close() {
        larkmere.close();
    }

    private static void write(Path paper, String kind, String... rows) throws IOException {
        Files.write(paper.resolve(kind + ".csv"), List.of(rows));
    }

    private static List<String> fit(String part, String quantity, String lot) {
        return fit("N-900", part, quantity, lot);
    }

    private static List<String> fit(String job, String part, String quantity, String lot) {
        FakeShell.Output output =
                BenchOfNorth.otis(larkmere).run(List.of("fit", job, part, quantity, "--lot", lot));
        assertThat(output.status()).as(output.messages().toString()).isEqualTo(Status.DONE);
        return output.messages();
    }

    @Test
    void an_expired_lot_is_told_though_the_rules_take_it_as_of_the_kit() {
        assertThat(fit("HB-3015", "5", "X1"))
                .contains("lot X1 is past its last usable day, 2026-04-05" + UNJUDGED);
    }

    @Test
    void a_loose_part_of_a_matched_set_is_told() {
        assertThat(fit("HB-3011", "1", "XB"))
                .contains("HB-3011 belongs to the other parts of its kit, but is loose" + UNJUDGED);
    }

    @Test
    void nothing_is_told_of_a_part_that_neither_expires_nor_belongs_to_others() {
        assertThat(fit("HB-3013", "1", "XC")).noneMatch(m -> m.contains("came with one"));
    }

    @Test
    void a_kit_that_arrived_from_another_site_is_one_of_the_job(@TempDir Path paper)
            throws IOException {
        write(
                paper,
                "kits",
                "site,kit,kit_part,received_at,revision",
                "SOUTH,FP-9901,HB-3010-K,2026-04-01 08:00,B");
        write(
                paper,
                "moves",
                "site,event,at,kit,other_site",
                "SOUTH,sent,2026-04-02 08:00,FP-9901,NORTH",
                "NORTH,arrived,2026-04-03 08:00,FP-9901,SOUTH");
        write(
                paper,
                "jobs",
                "job,campaign,vin,opened_at",
                "N-901,HB-0417,0WBCB12D7NA002799,2026-04-09 08:00");
        write(
                paper,
                "issues",
                "job,at,kit,part,quantity,lot",
                "N-901,2026-04-09 08:10,FP-9901,,,",
                "N-901,2026-04-09 08:20,,HB-3011,1,XD");
        write(paper, "receipts", "part,quantity,received_at,lot", "HB-3011,1,2026-04-01 09:00,XD");
        write(
                paper,
                "uses",
                "job,part,quantity,condition,at,kit",
                "N-901,HB-3011,1,scrapped,2026-04-09 08:15,FP-9901");
        take(paper);
        assertThat(fit("N-901", "HB-3011", "1", "XD"))
                .contains(
                        "HB-3011 belongs to the other parts of its kit, but is loose; the review"
                                + " does not say so, since kit FP-9901 came with one");
    }
}
