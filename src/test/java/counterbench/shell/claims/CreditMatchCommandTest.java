package counterbench.shell.claims;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.people.Person;
import counterbench.people.Role;
import counterbench.shell.BaseCommand;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Status;
import counterbench.shell.care.ReverseCommand;
import counterbench.shell.intake.ImportCommand;
import counterbench.shell.review.ReviewCommand;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CreditMatchCommandTest {
    @TempDir Path folder;

    private static FakeShell quinn(Larkmere larkmere) {
        return larkmere.shellOf(
                new Person("Quinn", Set.of(Role.WARRANTY)),
                new BaseCommand[] {
                    new CreditMatchCommand(larkmere::store, larkmere.sites()),
                    new ClaimListCommand(larkmere::store, larkmere.sites()),
                    new ImportCommand(larkmere::store, larkmere.sites()),
                    new ReverseCommand(larkmere::store, larkmere.sites()),
                    new ReviewCommand(larkmere::store, larkmere.sites())
                });
    }

    /** A remittance: a slip in the number, one for two claims, and one that nothing is like. */
    private Path remittance() throws IOException {
        return Files.writeString(
                folder.resolve("credits.csv"),
                """
                remittance,line,amount,paid_on,claim,vin,kind
                RM-X,1,1209.71,2026-03-20,CN-O01,0TRTP3S26RS000501,claim
                RM-X,2,2341.98,2026-04-09,"CN-060, CN-062",,claim
                RM-X,3,10.00,2026-04-09,ZZ-9,,claim
                """);
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void sure_ones_are_taken_and_the_others_are_said_with_the_reasons(TestStores stores)
            throws IOException {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell quinn = quinn(larkmere);
            quinn.line("import " + remittance());

            var dry = quinn.line("credit match --dry-run --format csv");
            assertThat(dry.out())
                    .contains("RM-0227-N/35,2026-02-27,412.36,KN-118,unknown,,no claim is like it")
                    .contains("RM-0213-N/15,2026-02-13,950.11,CN-008,doubtful,CN-008,nothing but");
            assertThat(quinn.line("claim list --job N-104 --format csv").out())
                    .contains(",submitted\r\n");

            var matched = quinn.line("credit match --format csv");

            assertThat(matched.status()).isEqualTo(Status.DONE);
            assertThat(matched.err())
                    .contains("credit RM-X/1, 1209.71, goes to claim CN-001\n")
                    .contains("goes to claim CN-060\n")
                    .contains("goes to claim CN-062\n");
            assertThat(quinn.line("claim list --job N-104 --format csv").out())
                    .contains(",paid\r\n");
            assertThat(quinn.line("claim list --job N-152 --format csv").out())
                    .contains(",paid\r\n");
            assertThat(quinn.line("review --rule credit-unmatched --format csv").out())
                    .contains("RM-0227-N/35")
                    .contains("RM-X/3")
                    .doesNotContain("RM-X/1")
                    .doesNotContain("RM-X/2");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_line_is_matched_by_hand_shared_out_and_taken_back(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell quinn = quinn(larkmere);

            assertThat(quinn.line("credit match RM-0227-N/35 --claim CN-O01").err())
                    .contains("did you mean CN-001?");
            assertThat(
                            quinn.line(
                                            "credit match RM-0227-N/35 --claim CN-001=400.00"
                                                    + " --claim CN-060=12.00")
                                    .err())
                    .contains("its shares come to 412.00, and it is 412.36");
            assertThat(quinn.line("credit match RM-0227-N/3S --claim CN-001").messages())
                    .containsExactly(
                            "credit \"RM-0227-N/3S\": there is no such line; did you mean"
                                    + " RM-0227-N/35 or RM-0227-N/3?");
            assertThat(quinn.line("credit match 99 --claim CN-001").err())
                    .contains(
                            "there is no such line; credit match --dry-run lists those that wait to"
                                    + " be matched");
            var matched =
                    quinn.line(
                            "credit match RM-0227-N/35 --claim CN-001=400.00 --claim"
                                    + " CN-060=12.36");
            assertThat(matched.status()).as(matched.err()).isEqualTo(Status.DONE);
            assertThat(quinn.line("review --rule credit-unmatched --format csv").out().lines())
                    .hasSize(1);
            assertThat(quinn.line("claim list --job N-104 --format csv").out())
                    .contains(",400.00,")
                    .contains(",paid differently\r\n");
            assertThat(quinn.line("credit match RM-0227-N/35 --claim CN-001").status())
                    .isEqualTo(Status.REFUSED);
            String entry = matched.err().replaceAll("(?s).*entry ([0-9]+) of.*", "$1");
            assertThat(quinn.line("credit match RM-0227-N/35 --claim CN-001").messages())
                    .containsExactly(
                            "credit \"RM-0227-N/35\": it is matched already: entry "
                                    + entry
                                    + " gave it to claims CN-001, CN-060; if that is wrong, take it"
                                    + " back first: reverse "
                                    + entry
                                    + " --reason TEXT");

            quinn.line("reverse " + entry + " --reason \"wrong claim\"");

            assertThat(quinn.line("review --rule credit-unmatched --format csv").out())
                    .contains("RM-0227-N/35");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_line_that_is_taken_back_pays_nobody_and_a_smaller_one_not_what_it_was_shared_for(
            TestStores stores) throws IOException {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell quinn = quinn(larkmere);
            quinn.line("import " + line("first", "2490.32"));
            var matched =
                    quinn.line("credit match RM-Y/1 --claim CN-060=1200.00 --claim CN-061=1290.32");
            assertThat(matched.status()).as(matched.err()).isEqualTo(Status.DONE);
            assertThat(matched.err()).contains("claim CN-061 is paid 45.16 too much by that\n");
            assertThat(found(quinn)).contains("CN-060");

            var reversed = quinn.line("reverse 9 --reason \"wrong amount\"");
            assertThat(reversed.status()).isEqualTo(Status.DONE);
            assertThat(lostMatches(reversed))
                    .isEqualTo(
                            "entry 10 matched RM-Y/1 and counts no more without it; reverse 10, too,"
                                    + " or it counts again when the line comes anew with the same"
                                    + " amount\n");
            assertThat(found(quinn)).doesNotContain("CN-060").doesNotContain("CN-061");

            quinn.line("import " + line("second", "10.00"));
            assertThat(quinn.line("claim list --month 2026-04 --format csv").out())
                    .doesNotContain(",paid\r\n");
            assertThat(quinn.line("review --rule credit-unmatched --format csv").out())
                    .contains("RM-Y/1");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void only_the_lines_that_are_gone_are_told_to_have_lost_their_match(TestStores stores)
            throws IOException {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell quinn = quinn(larkmere);
            quinn.line("import " + remittance());
            quinn.line("credit match");

            assertThat(lostMatches(quinn.line("reverse 9.1 --reason \"wrong remittance\"")))
                    .startsWith("entry 10 matched RM-X/1 and counts no more without it; ");
            assertThat(lostMatches(quinn.line("reverse 9.3 --reason \"wrong remittance\"")))
                    .isEmpty();
            assertThat(lostMatches(quinn.line("reverse 9 --reason \"wrong remittance\"")))
                    .startsWith("entry 10 matched RM-X/1, RM-X/2 and counts no more without ");
        }
    }

    /** What a reversal says of matches, without what it says that it takes back. */
    private static String lostMatches(FakeShell.Output reversed) {
        return reversed.err()
                .lines()
                .filter(line -> line.startsWith("entry 10 "))
                .map(line -> line + "\n")
                .collect(Collectors.joining());
    }

    private Path line(String name, String amount) throws IOException {
        return line(name, amount, "2026-04-09");
    }

    private Path line(String name, String amount, String paid) throws IOException {
        Path paper = Files.createDirectories(folder.resolve(name));
        Files.writeString(
                paper.resolve("credits.csv"),
                "remittance,line,amount,paid_on\nRM-Y,1," + amount + "," + paid + "\n");
        return paper;
    }

    private static String found(FakeShell quinn) {
        return quinn.line("review --rule paid-differently --format csv").out();
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void whoever_is_asked_is_told_what_can_be_answered_and_what_came_of_it(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell quinn = quinn(larkmere).onScreen(200);

            var left = quinn.line("credit match", "", "");
            assertThat(left.out())
                    .contains("  1  claim CN-008 for job N-112: ")
                    .contains("  2  claim CN-001 for job N-104: ")
                    .doesNotContain("  3  ");
            assertThat(left.err())
                    .contains(
                            "2 lines to match: 0 are sure, 1 is doubtful, 1 is unknown; 52 others"
                                    + " name their claim rightly\n")
                    .contains(
                            "credit RM-0227-N/35 is like no claim: name the one that it pays"
                                    + " (credit match RM-0227-N/35 --claim CLAIM); if it is another"
                                    + " garage's, say so in settling its finding")
                    .endsWith("credit RM-0213-N/15 is left as it is\n");

            var matched = quinn.line("credit match", "help", "yes", "7", "1");
            assertThat(matched.err())
                    .contains("none or Enter leaves the line for later, stop leaves all")
                    .contains(
                            "claim \"yes\": there is no such claim; claim list names them\nanswer")
                    .contains("number \"7\": the list goes from 1 to 2\nanswer with")
                    .contains("credit RM-0213-N/15, 950.11, goes to claim CN-008\n")
                    .doesNotContain("too much");
            assertThat(quinn.line("credit match", "").err())
                    .contains("1 line to match: 0 are sure, 0 are doubtful, 1 is unknown; ");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_claim_takes_no_line_twice_and_one_submitted_later_not_without_a_word(TestStores stores)
            throws IOException {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell quinn = quinn(larkmere);
            quinn.line("import " + line("old", "1245.16", "2026-04-07"));

            assertThat(
                            quinn.line(
                                            "credit match RM-Y/1 --claim CN-061=600.00 --claim"
                                                    + " CN-061=645.16")
                                    .err())
                    .isEqualTo(
                            "credit \"RM-Y/1\": claim CN-061 is said more than once; say each claim"
                                    + " once, with all that it gets\n");
            assertThat(quinn.line("credit match RM-Y/1 --claim CN-061").err())
                    .contains(
                            "claim CN-061 was submitted on 2026-04-08, after that was paid; if it is"
                                    + " not the one, reverse this entry\n");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_line_older_than_every_claim_like_it_offers_none(TestStores stores) throws IOException {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell quinn = quinn(larkmere).onScreen(200);
            quinn.line(
                    "import "
                            + Files.writeString(
                                    folder.resolve("credits.csv"),
                                    """
                                    remittance,line,amount,paid_on,claim
                                    RM-Y,1,1245.16,2026-01-10,CN-060
                                    """));

            var asked = quinn.line("credit match", "none", "1", "CN-060");

            assertThat(asked.out())
                    .contains("it names claim CN-060, but it was paid before the claim")
                    .doesNotContain("1  claim CN-060", "1  claim CN-061");
            assertThat(asked.err()).contains("number \"1\": there is no list to choose from");
            assertThat(asked.err()).contains("credit RM-Y/1, 1245.16, goes to claim CN-060\n");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_claim_that_was_paid_before_the_question_is_not_offered_as_open(TestStores stores)
            throws IOException {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell quinn = quinn(larkmere).onScreen(200);
            quinn.line(
                    "import "
                            + Files.writeString(
                                    folder.resolve("credits.csv"),
                                    """
                                    remittance,line,amount,paid_on,claim,vin
                                    RM-Z,1,1245.16,2026-04-09,,0WBSH08D0LA002426
                                    RM-Z,2,1245.16,2026-04-09,,
                                    RM-Z,3,1245.16,2026-04-09,,
                                    """));

            var matched = quinn.line("credit match", "CN-057", "stop");

            assertThat(matched.err())
                    .contains("credit RM-Z/1, 1245.16, goes to claim CN-056\n")
                    .contains("credit RM-Z/2, 1245.16, goes to claim CN-057\n");
            String[] questions = matched.out().split("credit RM-Z/", -1);
            assertThat(questions).hasSize(3);
            assertThat(questions[1])
                    .contains("claim CN-057 for", "claim CN-060 for", "claim CN-061 for")
                    .doesNotContain("claim CN-056 for");
            assertThat(questions[2])
                    .contains("claim CN-060 for", "claim CN-061 for")
                    .doesNotContain("claim CN-056 for", "claim CN-057 for");
        }
    }
}
