package counterbench.shell.intake;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Status;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Paper that contradicts the packs or itself. */
class ContradictionsTest extends LarkmerePaper {
    private static final String CLAIMS = "claim,job,submitted_on,replaces\n";

    private FakeShell.Output take() {
        return maren().run(List.of("import", folder.toString()));
    }

    @Test
    void a_list_that_has_a_part_in_another_unit_than_a_pack_is_refused() throws IOException {
        write("parts.csv", "part,name,unit\nHB-3013,Seal ring,g\nHB-3011,Pump,each\n");
        assertThat(take().messages())
                .first()
                .isEqualTo(
                        "parts.csv, row 2, unit \"g\": a loaded pack has HB-3013 in each; write"
                                + " each: a part is kept in one unit everywhere");
    }

    @Test
    void a_pack_that_has_a_part_in_another_unit_than_a_list_is_refused() throws IOException {
        write("parts.csv", "part,name,unit\nXX-77,Grease of another make,g\n");
        assertThat(take().status()).isEqualTo(Status.DONE);
        String pack =
                Files.readString(Larkmere.DATA.resolve("packs/HB-0433-A.yaml"))
                        .replace("campaign: HB-0433", "campaign: HB-0499");
        String part = pack.replaceAll("(?s).*contents:\\s+- \\{part: ([A-Z0-9-]+),.*", "$1");
        Path file = write("other.yaml", pack.replace("part: " + part + ",", "part: XX-77,"));
        FakeShell.Output refused = maren().run(List.of("campaign", "load", file.toString()));
        assertThat(refused.status()).isEqualTo(Status.REFUSED);
        assertThat(refused.messages())
                .containsExactly(
                        "part XX-77 in each: the list of parts of site NORTH has it in g; correct"
                                + " the pack; or, if the list is wrong, take its row back (journal"
                                + " show finds it)");
    }

    @Test
    void a_claim_may_replace_one_from_before_the_books_began_but_not_itself() throws IOException {
        write(
                "jobs.csv",
                """
                job,campaign,vin,opened_at,completed_at
                N-980,HB-0417,0WBCB12D7NA002799,2026-03-02 08:00,2026-03-02 12:00
                """);
        write("claims.csv", CLAIMS + "CN-980,N-980,2026-03-03,CN-980\n");
        assertThat(take().messages())
                .first()
                .isEqualTo(
                        "claims.csv, row 2, replaces \"CN-980\": a claim cannot replace itself; name"
                                + " the earlier claim");
        write("claims.csv", CLAIMS + "CN-980,N-980,2026-03-03,CL-OLD-7\n");
        assertThat(take().status()).isEqualTo(Status.DONE);
    }
}
