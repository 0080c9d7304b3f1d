package counterbench.shell.review;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Status;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReviewCommandTest {
    private static final String AS_OF = " --as-of \"2026-04-10 12:00\" ";
    private static Larkmere larkmere;

    @BeforeAll
    static void open() {
        larkmere = Larkmere.full(TestStores.H2);
    }

    @AfterAll
    static void close() {
        larkmere.close();
    }

    private static FakeShell.Output review(String options) {
        return larkmere.shell().line("review" + AS_OF + options);
    }

    @Test
    void people_see_names_and_messages_and_a_count_of_each_severity() {
        FakeShell.Output output = review("--job N-107");
        assertThat(output.status()).isEqualTo(Status.DONE);
        assertThat(output.out())
                .isEqualTo(
                        """
                        finding       severity  rule             subject                  message
                        ------------  --------  ---------------  -----------------------  ------------------------------------------------------------------
                        F-7V1TR3G35S  stop      reused-hardware  job N-107, part HB-3013  job N-107: 2 of 3 Seal ring 16 mm HB-3013 are new, 1 was refitted
                        F-Z9T4XPWS9Y  fix       left-on-bench    job N-107, part HB-3013  job N-107: 1 of Seal ring 16 mm HB-3013 still on its bench account
                        """);
        assertThat(output.messages()).containsExactly("2 findings, open: 1 stop, 1 fix, 0 note");
    }

    @Test
    void programs_see_the_words_that_they_may_rely_on() {
        assertThat(review("--rule claim-ungrounded --site SOUTH --format csv").out())
                .isEqualTo(
                        "rule,severity,site,campaign,subject_kind,subject,part,step,month,message,"
                                + "evidence,state\r\n"
                                + "claim-ungrounded,stop,SOUTH,TK-2605,claim,CS-003,,,2026-01,"
                                + "\"claim CS-003: submitted on 2026-01-12, when job S-208 was not"
                                + " completed\",on 2026-01-12 job S-208 was not completed,open\r\n");
        assertThat(review("--job N-107 --severity fix --format json").out())
                .startsWith("{\"rows\":[\n{\"rule\":\"left-on-bench\",\"severity\":\"fix\"")
                .contains("\"step\":null");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "|83 findings, open: 35 stop, 38 fix, 10 note",
                "--site SOUTH --severity stop --state open|11 findings, open: 11 stop, 0 fix, 0 note",
                "--state settled|no findings",
                "--rule torque-count|1 finding, open: 1 stop, 0 fix, 0 note",
                "--campaign HB-0433 --month 2026-01|2 findings, open: 0 stop, 1 fix, 1 note",
            })
    void options_narrow_what_is_shown(String options, String summary) {
        assertThat(review(options == null ? "" : options).messages()).containsExactly(summary);
    }

    @Test
    void strict_ends_with_3_only_if_an_open_stop_or_fix_is_shown() {
        assertThat(review("--strict --rule torque-count").status()).isEqualTo(Status.FOUND);
        assertThat(review("--strict --severity note").status()).isEqualTo(Status.DONE);
        assertThat(review("--strict --state settled").status()).isEqualTo(Status.DONE);
    }

    @Test
    void the_past_is_judged_by_what_had_happened_or_was_known_then() {
        assertThat(larkmere.shell().line("review --as-of 2026-01-01T00:00Z").messages())
                .containsExactly("no findings");
        assertThat(review("--site SOUTH --known 0").messages()).containsExactly("no findings");
        assertThat(review("--site SOUTH --known 999").messages())
                .singleElement()
                .asString()
                .startsWith("--known \"999\": site SOUTH ends with entry ");
        assertThat(review("--known 1").err())
                .contains("--known needs --site: every site counts its own entries");
    }

    @Test
    void cores_and_claims_of_a_job_are_shown_with_it() {
        assertThat(review("--job S-208").out()).contains("claim CS-003");
    }

    @Test
    void what_there_is_not_is_refused() {
        assertThat(review("--job N-999").err())
                .isEqualTo("job \"N-999\": there is no such job; job list shows those there are\n");
        assertThat(review("--campaign HB-0471").err()).contains("did you mean HB-0417?");
        assertThat(review("--site WEST").err()).contains("there is no such site");
        FakeShell.Output rule = review("--rule reused-hardwear");
        assertThat(rule.status()).isEqualTo(Status.USAGE);
        assertThat(rule.err()).contains("did you mean reused-hardware?");
        assertThat(larkmere.shell().line("review --as-of \"2026-03-08 02:30\"").err())
                .contains("did not exist in America/Chicago");
    }
}
