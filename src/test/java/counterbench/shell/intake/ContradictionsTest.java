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

/** Paper that contradicts the packs, or names what nobody knows. */
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
    void a_claim_that_replaces_one_that_nobody_knows_is_refused() throws IOException {
        write(
                "jobs.csv",
                """
                job,campaign,vin,opened_at,completed_at
                N-980,HB-0417,0WBCB12D7NA002799,2026-03-02 08:00,2026-03-02 12:00
                """);
        write("claims.csv", CLAIMS + "CN-980,N-980,2026-03-03,\n");
        assertThat(take().status()).isEqualTo(Status.DONE);
        write("claims.csv", CLAIMS + "CN-981,N-980,2026-03-04,CN-908\n");
        assertThat(take().messages())
                .first()
                .isEqualTo(
                        "claims.csv, row 2, replaces \"CN-908\": there is no such claim; did you"
                                + " mean CN-980?");
        write("claims.csv", CLAIMS + "CN-981,N-980,2026-03-04,CN-981\n");
        assertThat(take().messages()).first().asString().contains("a claim cannot replace itself");
        write(
                "claims.csv",
                CLAIMS + "CN-982,N-980,2026-03-05,CN-981\nCN-981,N-980,2026-03-04,CN-980\n");
        assertThat(take().status()).as("in any order").isEqualTo(Status.DONE);
    }
}
