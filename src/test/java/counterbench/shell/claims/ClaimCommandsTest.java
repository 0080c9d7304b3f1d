package counterbench.shell.claims;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.people.Person;
import counterbench.people.Role;
import counterbench.shell.BaseCommand;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Status;
import counterbench.shell.care.JournalShowCommand;
import counterbench.shell.intake.ImportCommand;
import counterbench.shell.rack.ShipCommand;
import counterbench.shell.rack.ShipmentAddCommand;
import counterbench.shell.rack.ShipmentOpenCommand;
import counterbench.shell.review.ReviewCommand;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The warranty desk of the invented garage. */
class ClaimCommandsTest {
    @TempDir Path folder;

    private static BaseCommand[] desk(Larkmere larkmere) {
        return new BaseCommand[] {
            new ClaimDraftCommand(larkmere::store, larkmere.sites()),
            new ClaimListCommand(larkmere::store, larkmere.sites()),
            new ClaimSubmitCommand(larkmere::store, larkmere.sites()),
            new ClaimWithdrawCommand(larkmere::store, larkmere.sites()),
            new ClaimAgeingCommand(larkmere::store, larkmere.sites()),
            new ImportCommand(larkmere::store, larkmere.sites()),
            new JournalShowCommand(larkmere::store, larkmere.sites()),
            new ReviewCommand(larkmere::store, larkmere.sites())
        };
    }

    private static FakeShell quinn(Larkmere larkmere) {
        return larkmere.shellOf(Larkmere.QUINN, desk(larkmere));
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_draft_says_each_line_and_what_holds_it_back(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell quinn = quinn(larkmere);

            var drafts = quinn.line("claim draft --month 2026-03 --format csv");

            assertThat(drafts.out().lines())
                    .containsExactly(
                            "job,campaign,work_order,completed_on,operation,labour_hours,"
                                    + "labour_amount,parts_amount,core_charge,total,submit_by,"
                                    + "held_back",
                            "N-163,TK-2605,W26-1073,2026-03-25,52-199,0.5,60.50,0.00,0.00,60.50,"
                                    + "2026-05-14,",
                            "N-166,TK-2605,W26-1076,2026-03-30,52-199,0.5,60.50,0.00,0.00,60.50,"
                                    + "2026-05-19,",
                            "N-167,HB-0417,W26-1077,2026-03-31,31-417,2.2,266.20,435.62,395.00,"
                                    + "1096.82,2026-05-15,\"core NC-0072 is packed, and the claim"
                                    + " needs core-shipped\"");
            assertThat(drafts.err())
                    .startsWith(
                            "3 drafts, 2 of them ready to submit, for 121.00 USD in all; 1 held"
                                    + " back\n");
            var lines = quinn.line("claim draft --job N-167 --lines --format csv");
            assertThat(lines.out().lines())
                    .containsExactly(
                            "job,line,what,quantity,unit_amount,amount",
                            "N-167,labour,operation 31-417,2.2,121.00,266.20",
                            "N-167,parts,kit FP-1050,1,348.50,348.50",
                            "N-167,allowance,\"25 % on parts, to the cent\",,,87.12",
                            "N-167,core charge,what the terms charge for its cores,,,395.00",
                            "N-167,total,,,,1096.82");
            assertThat(lines.err())
                    .startsWith(
                            "job N-167 held back: core NC-0072 is packed, and the claim needs"
                                    + " core-shipped\n1 draft, 0 ready to submit, ");
            assertThat(quinn.line("claim draft --job N-112 --lines --format csv").out())
                    .contains("N-112,total,,,,1209.71");
            assertThat(quinn.line("claim draft --job N-169").err())
                    .contains("draft for job \"N-169\": the job is not done; claim it when");
            assertThat(quinn.line("claim draft --job N-1677").err())
                    .isEqualTo("job \"N-1677\": there is no such job; did you mean N-167?\n");
            assertThat(quinn.line("claim list --job N-1677").err())
                    .isEqualTo("job \"N-1677\": there is no such job; did you mean N-167?\n");
            assertThat(quinn.line("claim draft --campaign HB-417").err())
                    .contains("did you mean HB-0417?");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_month_is_submitted_as_far_as_it_is_ready_and_no_claim_twice(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell quinn = quinn(larkmere);

            var submitted = quinn.line("claim submit --month 2026-03");

            assertThat(submitted.status()).isEqualTo(Status.DONE);
            assertThat(submitted.out())
                    .startsWith(
                            """
                            claim CN-063 for job N-163: 60.50 USD
                            claim CN-064 for job N-166: 60.50 USD
                            submitted: entry \
                            """);
            assertThat(submitted.err())
                    .isEqualTo(
                            "job N-167 held back: core NC-0072 is packed, and the claim needs"
                                    + " core-shipped\n");
            assertThat(quinn.line("claim submit N-163").err())
                    .isEqualTo(
                            """
                            claim for job "N-163": claim CN-063 of 2026-04-10 stands for it; to \
                            claim it anew, take that one back first: claim withdraw CN-063 \
                            --reason TEXT
                            claim submit: nothing was submitted while that stands against it; put \
                            it right first; the lead may override it with --override REASON
                            """);
            assertThat(quinn.line("claim submit --month 2026-05").err())
                    .isEqualTo(
                            "claims of 2026-05: no job that was done in that month is left to"
                                    + " claim; claim list shows what was claimed\n");
            assertThat(quinn.line("claim submit --month 2026-03").err())
                    .contains("no job of that month is ready to be claimed");
            assertThat(quinn.line("claim list --job N-163 --format csv").out())
                    .contains("CN-063,N-163,W26-1073,0TRTP4L25SS002637,2026-04-10,60.50,0.00,0.00");
            assertThat(quinn.line("review --rule claim-ungrounded --format csv").out())
                    .doesNotContain("CN-063");
            String entry = submitted.out().replaceAll("(?s).*entry ([0-9]+) of.*", "$1");
            assertThat(quinn.line("journal show " + entry).out())
                    .contains("labour_hours 0.5, labour_amount 60.50, parts_amount 0.00");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void the_gate_opens_for_the_lead_with_a_reason_that_is_kept(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell quinn = quinn(larkmere);
            FakeShell maren =
                    larkmere.shellOf(new Person("Maren", Set.of(Role.LEAD)), desk(larkmere));

            assertThat(quinn.line("claim submit N-103").err())
                    .contains(
                            "1 core of it was never removed, and the claim needs"
                                    + " core-acknowledged; find the unit and record it: core remove"
                                    + " TAG --job N-103\n")
                    .contains("stop core-missing is open (F-")
                    .containsPattern("finding settle F-\\w+ --reason TEXT\n");
            assertThat(quinn.line("claim submit N-103 --override please").status())
                    .isEqualTo(Status.REFUSED);
            var opened = maren.line("claim submit N-103 --override \"agreed by letter\"");

            assertThat(opened.out())
                    .startsWith("overridden for job N-103: 1 core of it was never removed")
                    .contains("claim CN-063 for job N-103: 1234.00 USD\n");
            assertThat(opened.err())
                    .contains("fix claimed-late: claim CN-063: due by 2026-03-07, submitted on");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void what_is_not_done_or_not_there_is_refused_and_changes_nothing(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell quinn = quinn(larkmere);

            assertThat(quinn.line("claim submit N-163 N-169").err())
                    .startsWith("claim for job \"N-169\": the job is not done; ");
            assertThat(quinn.line("claim submit N-936").err()).contains("there is no such job");
            assertThat(quinn.line("claim submit N-163 --on 2026-03-24").err())
                    .contains(
                            "it was done on 2026-03-25, after the day of submission; say that day");
            assertThat(quinn.line("claim submit N-163 --on 2026-05-01").err())
                    .contains("that day has not come yet");
            assertThat(quinn.line("claim submit N-163 N-166 --claim X-1").status())
                    .isEqualTo(Status.USAGE);
            assertThat(quinn.line("claim submit").status()).isEqualTo(Status.USAGE);
            assertThat(
                            larkmere.shellOf(Larkmere.HAL, desk(larkmere))
                                    .line("claim submit N-163")
                                    .err())
                    .contains("this is for the role warranty");
            assertThat(quinn.line("claim list --job N-163 --format csv").out().lines()).hasSize(1);
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_withdrawn_claim_makes_room_for_one_that_replaces_it(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell quinn = quinn(larkmere);

            assertThat(quinn.line("claim withdraw CN-030 --reason slip --on 2027-04-10").err())
                    .isEqualTo(
                            "--on \"2027-04-10\": that day has not come yet; withdraw it on that"
                                    + " day\n");
            assertThat(quinn.line("claim withdraw CN-030 --reason \"CN-017 asks for it\"").out())
                    .startsWith("claim CN-030 for job N-122 withdrawn on 2026-04-10: entry ");
            assertThat(quinn.line("claim list --state withdrawn --format csv").out())
                    .contains("CN-030,N-122,");
            assertThat(quinn.line("claim withdraw CN-030 --reason again").err())
                    .contains("it stands no more since 2026-04-10");
            assertThat(quinn.line("claim withdraw CN-O30 --reason slip").err())
                    .contains("did you mean CN-030?");
            quinn.line("claim withdraw CN-060 --reason \"wrong hours\"");
            assertThat(quinn.line("claim submit N-152 --claim CN-100").out())
                    .startsWith("claim CN-100 for job N-152: 1245.16 USD\n");
            assertThat(quinn.line("claim list --job N-152 --format csv").out())
                    .contains(",withdrawn")
                    .contains(",submitted");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void ageing_says_what_waits_and_warns_days_before(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell quinn = quinn(larkmere);

            var ageing = quinn.line("claim ageing --as-of \"2026-05-10 12:00\" --format csv");

            assertThat(ageing.out())
                    .contains("to claim,,N-163,2026-03-25,46,,2026-05-14,4,60.50")
                    .contains("submitted,CN-001,N-104,2026-01-14,116,over 90 days,2026-02-28,-71,");
            assertThat(ageing.err())
                    .contains(
                            "to be claimed within 7 days: N-163 (by 2026-05-14), N-167 (by 2026-05-15)\n")
                    .contains("late, the last day for the claim is over: N-101 (by 2026-02-19)");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_refusal_names_the_core_and_the_commands_that_put_it_right(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell quinn = quinn(larkmere);
            FakeShell maren =
                    larkmere.shellOf(
                            new Person("Maren", Set.of(Role.LEAD)),
                            new ShipmentOpenCommand(larkmere::store, larkmere.sites()),
                            new ShipmentAddCommand(larkmere::store, larkmere.sites()),
                            new ShipCommand(larkmere::store, larkmere.sites()));

            assertThat(quinn.line("claim submit N-167").err())
                    .startsWith(
                            "claim for job \"N-167\": core NC-0072 is packed, and the claim needs"
                                    + " core-shipped; shipment add SHIPMENT NC-0072, ship"
                                    + " SHIPMENT\n");
            maren.line("shipment open SH-N14 --carrier \"Two Rivers Freight\" --tracking 7");
            maren.line("shipment add SH-N14 NC-0072");
            assertThat(quinn.line("claim submit N-167").err())
                    .startsWith(
                            "claim for job \"N-167\": core NC-0072 is on-shipment, and the claim"
                                    + " needs core-shipped; ship SH-N14\n");
            maren.line("ship SH-N14 --weight \"16.2 kg\"");
            assertThat(quinn.line("claim submit N-167 --on 2026-04-09").err())
                    .startsWith(
                            "claim for job \"N-167\": core NC-0072 was shipped on 2026-04-10, after"
                                    + " the day of submission; say that day or a later one with"
                                    + " --on\n");
            assertThat(quinn.line("claim submit N-167").out())
                    .startsWith("claim CN-063 for job N-167: 1096.82 USD\n");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_number_that_is_taken_is_refused_with_the_next_free_one(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            assertThat(quinn(larkmere).line("claim submit N-163 --claim CN-001").err())
                    .isEqualTo(
                            "claim \"CN-001\": that number is taken; leave --claim out for the next"
                                    + " free one, CN-063\n");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void desk_and_review_agree_on_the_last_day_also_of_a_job_that_was_not_needed(
            TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell quinn = quinn(larkmere);

            assertThat(quinn.line("claim ageing --site SOUTH --format csv").out())
                    .contains("to claim,,S-215,2026-01-28,72,,2026-03-19,-22,");
            assertThat(quinn.line("claim submit S-215 --site SOUTH").err())
                    .isEqualTo(
                            "fix claimed-late: claim CS-048: due by 2026-03-19, submitted on"
                                    + " 2026-04-10\n");
            assertThat(quinn.line("review --site SOUTH --rule claimed-late --format csv").out())
                    .contains("claim CS-048: due by 2026-03-19, submitted on 2026-04-10");
            assertThat(quinn.line("claim ageing --format csv").out())
                    .contains("to claim,,N-163,2026-03-25,16,,2026-05-14,34,");
            assertThat(quinn.line("claim submit N-163").err()).isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void what_is_paid_too_much_stands_apart_and_hides_nothing_that_is_open(TestStores stores)
            throws IOException {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell quinn = quinn(larkmere);
            String before = stillToBePaid(quinn);
            assertThat(before).contains("up to 30 days 8392.09");
            quinn.line(
                    "import "
                            + Files.writeString(
                                    folder.resolve("credits.csv"),
                                    """
                                    remittance,line,amount,paid_on,claim
                                    RM-O,1,5000.00,2026-04-09,CN-060
                                    """));

            var ageing = quinn.line("claim ageing --format csv");

            assertThat(ageing.out().lines().reduce((a, b) -> b))
                    .contains("paid too much,CN-060,N-152,2026-04-08,2,up to 30 days,,,-3754.84");
            assertThat(ageing.err()).contains("paid too much, in USD: 3754.84 for 1 claim\n");
            // what CN-060 still asked is paid, and no more than that is gone
            assertThat(stillToBePaid(quinn)).contains("up to 30 days 7146.93");
        }
    }

    private static String stillToBePaid(FakeShell quinn) {
        return quinn.line("claim ageing").err().replaceAll("(?s).*still to be paid", "");
    }
}
