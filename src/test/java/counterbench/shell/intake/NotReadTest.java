package counterbench.shell.intake;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.shell.FakeShell;
import counterbench.shell.Status;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What somebody wrote down is read, refused, or said not to be read. */
class NotReadTest extends LarkmerePaper {
    private static final String RECEIPT = "part,quantity,received_at\nHB-3013,1,2026-03-01 08:00\n";

    private FakeShell.Output take() {
        return maren().run(List.of("import", folder.toString(), "--dry-run"));
    }

    @Test
    void what_of_a_folder_is_no_sheet_is_named() throws IOException {
        write("receipts.csv", RECEIPT);
        assertThat(take().messages()).hasSize(1);
        write("kits.xls", "");
        write("notes.txt", "");
        write(".hidden", "");
        write("~$receipts.xlsx", "");
        Files.createDirectory(folder.resolve("april"));
        assertThat(take().messages())
                .containsExactly(
                        "a dry run, nothing was recorded; 1 row would be",
                        "not read, since a folder's sheets are its .csv and .xlsx files: april,"
                                + " kits.xls, notes.txt");
        for (int i = 0; i < 4; i++) {
            write("z" + i, "");
        }
        assertThat(take().messages().get(1)).endsWith("kits.xls, notes.txt, z0, z1 and 2 more");
    }

    @Test
    void a_cell_in_a_column_without_a_heading_is_refused_and_an_empty_one_is_not()
            throws IOException {
        write("receipts.csv", "part,,quantity,received_at,\nHB-3013,,1,2026-03-01 08:00,\n");
        assertThat(take().status()).isEqualTo(Status.DONE);
        write("receipts.csv", "part,,quantity,received_at,\nHB-3013,,1,2026-03-01 08:00,late\n");
        assertThat(take().messages().get(0))
                .isEqualTo(
                        "receipts.csv, row 2 \"late\": stands under no heading; give the column a"
                                + " heading; one of your own begins with x-");
        write("receipts.csv", "part,,quantity,received_at,\nHB-3013,?,1,2026-03-01 08:00,\n");
        assertThat(take().messages().get(0)).contains("\"?\": stands under no heading");
    }

    @Test
    void a_kit_of_a_revision_that_no_pack_has_is_refused() throws IOException {
        String kits = "kit,kit_part,received_at,revision\nK-62,HB-3010-K,2026-03-01 08:00,";
        write("kits.csv", kits + "B\n");
        assertThat(take().status()).isEqualTo(Status.DONE);
        write("kits.csv", kits + "Q\n");
        assertThat(take().messages().get(0))
                .isEqualTo(
                        "kits.csv, row 2, revision \"Q\": no loaded pack of that revision has"
                                + " HB-3010-K; write A or B, or leave it empty: the terms of the day"
                                + " of receipt hold then");
    }

    @Test
    void an_order_of_nothing_and_a_claim_that_fell_before_it_was_made_are_refused()
            throws IOException {
        write("orders.csv", "order,part,quantity,ordered_on\nO-91,HB-3013,0,2026-03-05\n");
        write("jobs.csv", "job,campaign,vin,opened_at\nN-900,HB-0417,0X,2026-03-02 08:00\n");
        write(
                "claims.csv",
                """
                claim,job,submitted_on,withdrawn_on,denied_on
                CL-1,N-900,2026-03-05,2026-03-04,
                CL-2,N-900,2026-03-05,,2026-03-04
                CL-3,N-900,2026-03-05,2026-03-05,2026-03-05
                """);
        assertThat(take().messages())
                .filteredOn(m -> m.contains(", row "))
                .containsExactlyInAnyOrder(
                        "orders.csv, row 2, quantity \"0\": is not above zero; write how much it"
                                + " was",
                        "claims.csv, row 2, withdrawn_on \"2026-03-04\": lies before submitted_on;"
                                + " exchange or correct the two days",
                        "claims.csv, row 3, denied_on \"2026-03-04\": lies before submitted_on;"
                                + " exchange or correct the two days");
    }
}
