package counterbench.shell.review;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.facts.TestRows;
import counterbench.journal.Draft;
import counterbench.journal.store.JooqJournal;
import counterbench.people.Role;
import counterbench.review.FindingId;
import counterbench.review.store.FindingBook;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Status;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FindingCommandsTest {
    /** A new washer that a refitted one spared, left on the bench of job N-107. */
    private static final String LEFT = "F-Z9T4XPWS9Y";

    /** A refitted washer on job N-107, which is a stop. */
    private static final String REUSED = "F-7V1TR3G35S";

    /** Opened by each test on the store that it is given. */
    @SuppressWarnings("NullAway.Init")
    private Larkmere larkmere;

    @AfterEach
    void close() {
        larkmere.close();
    }

    private FakeShell.Output run(String line, Role... roles) {
        return larkmere.shellOf("Otis", roles).line(line);
    }

    private String state(String rule) {
        String row =
                run("review --job N-107 --format csv --rule " + rule)
                        .out()
                        .lines()
                        .skip(1)
                        .findFirst()
                        .orElse("");
        return row.substring(row.lastIndexOf(',') + 1);
    }

    private void record(FactRow row) {
        Draft draft = Draft.of(Larkmere.NORTH, Larkmere.AS_OF, "Maren", "test", "a test");
        new JooqJournal(larkmere.store()).record(draft, List.of(row));
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_finding_stays_settled_until_its_evidence_changes_or_the_entry_is_reversed(
            TestStores kind) {
        larkmere = Larkmere.full(kind);
        assertThat(state("left-on-bench")).isEqualTo("open");
        FakeShell.Output settled =
                run(
                        "finding settle " + LEFT + " --reason \"it is in the drawer\"",
                        Role.TECHNICIAN);
        assertThat(settled.err()).isEmpty();
        assertThat(settled.out())
                .isEqualTo("finding F-Z9T4XPWS9Y is settled: entry 9 of site NORTH\n");
        assertThat(state("left-on-bench")).isEqualTo("settled");
        assertThat(state("reused-hardware")).isEqualTo("open");
        assertThat(run("finding settle " + LEFT + " --reason again", Role.TECHNICIAN).messages())
                .containsExactly(
                        "settling of finding F-Z9T4XPWS9Y: Otis has settled it already, in entry 9:"
                                + " it is in the drawer; nothing is left to do; to open it again,"
                                + " reverse that entry");
        record(
                TestRows.row(FactKind.REVERSALS)
                        .with("entry", 9L)
                        .with("at", Larkmere.AS_OF)
                        .with("reason", "it is not"));
        assertThat(state("left-on-bench")).as("reversed").isEqualTo("open");
        run("finding settle " + LEFT + " --reason \"it is, after all\"", Role.TECHNICIAN);
        assertThat(state("left-on-bench")).as("settled again").isEqualTo("settled");
        record(
                TestRows.row(FactKind.ISSUES)
                        .with("job", "N-107")
                        .with("at", java.time.Instant.parse("2026-02-01T12:00:00Z"))
                        .with("part", "HB-3013")
                        .with("quantity", new BigDecimal("1")));
        assertThat(state("left-on-bench")).as("other evidence").isEqualTo("open");
        assertThat(run("finding show " + LEFT).out())
                .contains(
                        "state     open until it is put right, or the role technician settles it with a reason\n")
                .contains("settled   2026-03-05 14:00 by Otis, entry 9, taken back: it is in the")
                .contains("settled   2026-03-05 14:00 by Otis, entry 11: it is, after all\n")
                .contains("          on the evidence: ");
    }

    @ParameterizedTest
    @MethodSource("h2")
    void a_finding_is_settled_by_whoevers_work_it_is_and_a_stop_by_the_lead_alone(TestStores kind) {
        larkmere = Larkmere.full(kind);
        assertThat(run("finding settle " + LEFT + " --reason x", Role.PARTS).err())
                .contains("this is for the role technician, and Otis has parts");
        FakeShell.Output stop = run("finding settle " + REUSED + " --reason x", Role.TECHNICIAN);
        assertThat(stop.status()).isEqualTo(Status.REFUSED);
        assertThat(stop.err()).contains("this is for the role lead, and Otis has technician");
        assertThat(run("finding settle " + REUSED + " --reason seen", Role.LEAD).status())
                .isEqualTo(Status.DONE);
        assertThat(larkmere.shell().line("finding settle " + LEFT + " --reason x").err())
                .contains("nobody is signed in");
    }

    @ParameterizedTest
    @MethodSource("h2")
    void show_tells_the_rule_the_evidence_and_the_cautions(TestStores kind) {
        larkmere = Larkmere.full(kind);
        assertThat(run("finding show " + REUSED.toLowerCase(java.util.Locale.ROOT)).out())
                .startsWith(
                        """
                        finding F-7V1TR3G35S, stop
                        job N-107: 2 of 3 Seal ring 16 mm HB-3013 are new, 1 was refitted
                        rule      reused-hardware: a single-use part was refitted
                        subject   job N-107, part HB-3013
                        site      NORTH
                        campaign  HB-0417
                        month     2026-01
                        terms     HB-0417, revision A: 3 HB-3013 Seal ring 16 mm, new each time, replaces HB-3003
                        """)
                .contains(
                        "state     open until it is put right, or the role lead settles it with a reason\n")
                .contains("\nBefore anybody works on it again\n")
                .contains("never feel for a leak by hand");
    }

    @ParameterizedTest
    @MethodSource("h2")
    void show_tells_the_terms_of_the_step_and_of_the_core_in_question(TestStores kind) {
        larkmere = Larkmere.full(kind);
        assertThat(shown("wait-short"))
                .containsPattern(
                        "\nterms     [A-Z]{2}-[0-9]{4}, revision [A-Z0-9]: .*: at least [0-9.]+ min\n");
        assertThat(shown("core-packaging"))
                .containsPattern(
                        "\nterms     [A-Z]{2}-[0-9]{4}, revision [A-Z0-9]: drain at least [0-9]+ min,"
                                + " then [0-9] plugs, packaging: [a-z]+, ship within [0-9]+ days of"
                                + " completion, charge until accepted: ");
    }

    @ParameterizedTest
    @MethodSource("h2")
    void show_tells_the_terms_of_claims_and_kits_and_the_sites_patience(TestStores kind) {
        larkmere = Larkmere.full(kind);
        assertThat(terms("claimed-late"))
                .isEqualTo("TK-2605, revision 1: submit within 50 days of completion");
        assertThat(terms("claim-ungrounded"))
                .isEqualTo("HB-0429, revision A: needs: core-acknowledged");
        assertThat(terms("claim-unpaid")).isEqualTo("patience of site NORTH: 45 days for a credit");
        assertThat(terms("paid-differently")).contains(": labour ", " hours", "parts allowance ");
        assertThat(terms("kit-incomplete"))
                .startsWith("contents of HB-3010-K, revision A: 1 HB-3011 ")
                .contains("; 3 HB-3013 Seal ring 16 mm, new each time, replaces HB-3003; ");
        assertThat(terms("job-idle")).isEqualTo("patience of site NORTH: 14 days for an open job");
        assertThat(terms("claimed-twice")).as("whatever the terms").isEmpty();
        assertThat(terms("credit-unmatched")).as("no campaign, no patience").isEmpty();
    }

    private String terms(String rule) {
        return shown(rule)
                .lines()
                .filter(line -> line.startsWith("terms     "))
                .map(line -> line.substring("terms     ".length()))
                .findFirst()
                .orElse("");
    }

    private String shown(String rule) {
        FindingId id =
                new FindingBook(larkmere.store())
                        .now(Larkmere.NORTH, Larkmere.AS_OF, f -> true, jobs -> {}).stream()
                                .filter(s -> s.finding().rule().word().equals(rule))
                                .findFirst()
                                .orElseThrow()
                                .id();
        return run("finding show " + id).out();
    }

    @ParameterizedTest
    @MethodSource("h2")
    void one_that_does_not_hold_is_refused_unless_something_was_said_of_it(TestStores kind) {
        larkmere = Larkmere.full(kind);
        assertThat(run("finding show F-0000000000").err())
                .isEqualTo(
                        "finding \"F-0000000000\": there is no such finding now; review shows those"
                                + " there are\n");
        assertThat(run("finding show F-7V1TR3G3S5").err())
                .isEqualTo(
                        "finding \"F-7V1TR3G3S5\": there is no such finding now; did you mean"
                                + " F-7V1TR3G35S?\n");
        assertThat(run("finding settle F-7V1TR3G35T --reason x", Role.LEAD).err())
                .contains("did you mean F-7V1TR3G35S?");
        assertThat(run("finding settle F-0000000000 --reason x", Role.LEAD).status())
                .isEqualTo(Status.REFUSED);
        assertThat(run("finding show J-118").status()).isEqualTo(Status.USAGE);
        assertThat(run("finding settle " + LEFT, Role.LEAD).err()).contains("--reason");
        run("finding settle " + LEFT + " --reason \"it is in the drawer\"", Role.LEAD);
        record(
                TestRows.row(FactKind.USES)
                        .with("job", "N-107")
                        .with("part", "HB-3013")
                        .with("quantity", new BigDecimal("1"))
                        .with("condition", "scrapped")
                        .with("at", java.time.Instant.parse("2026-01-01T12:00:00Z")));
        assertThat(run("finding show " + LEFT).out())
                .startsWith("finding F-Z9T4XPWS9Y does not hold any more\nsettled   ")
                .contains("it is in the drawer");
    }

    static List<TestStores> h2() {
        return List.of(TestStores.H2);
    }
}
