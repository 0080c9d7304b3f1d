package counterbench.shell.intake;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.shell.FakeShell;
import counterbench.shell.Status;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Sheets cannot break a piece, just as commands cannot. */
class PiecesTest extends LarkmerePaper {
    private static final String WRONG = "is no whole number, and %s is counted in pieces";

    private FakeShell.Output take() {
        return maren().run(List.of("import", folder.toString(), "--dry-run"));
    }

    @Test
    void half_a_piece_is_refused_in_every_kind_of_sheet() throws IOException {
        write("jobs.csv", "job,campaign,vin,opened_at\nN-900,HB-0417,0X,2026-03-02 08:00\n");
        write("orders.csv", "order,part,quantity,ordered_on\nO-91,HB-3010-K,1.5,2026-03-01\n");
        write("receipts.csv", "part,quantity,received_at\nHB-3003,0.5,2026-03-01 14:00\n");
        write("issues.csv", "job,part,quantity,at\nN-900,HB-3013,0.5,2026-03-02 09:00\n");
        write(
                "uses.csv",
                "job,part,quantity,condition,at\nN-900,HB-3011,0.25,new,2026-03-02 09:00\n");
        write("moves.csv", "event,part,quantity,at\nscrapped,HB-3012,2.001,2026-03-02 09:00\n");
        write("counts.csv", "part,quantity,counted_at\nHB-3014,7.5,2026-03-02 09:00\n");
        write(
                "kits.csv",
                "kit,kit_part,received_at,missing\nK-9,HB-3010-K,2026-03-01 14:00,HB-3013:1.5\n");
        FakeShell.Output output = take();
        assertThat(output.status()).isEqualTo(Status.REFUSED);
        assertThat(output.messages())
                .filteredOn(m -> m.contains(", row "))
                .hasSize(7)
                .anyMatch(m -> refuses(m, "orders.csv", "1.5", "HB-3010-K"))
                .anyMatch(m -> refuses(m, "receipts.csv", "0.5", "HB-3003"))
                .anyMatch(m -> refuses(m, "issues.csv", "0.5", "HB-3013"))
                .anyMatch(m -> refuses(m, "uses.csv", "0.25", "HB-3011"))
                .anyMatch(m -> refuses(m, "moves.csv", "2.001", "HB-3012"))
                .anyMatch(m -> refuses(m, "counts.csv", "7.5", "HB-3014"))
                .contains(
                        "kits.csv, row 2, missing \"HB-3013:1.5\": has no whole number of HB-3013,"
                                + " which is counted in pieces; write how many pieces");
    }

    private static boolean refuses(String message, String file, String quantity, String part) {
        return message.equals(
                "%s, row 2, quantity \"%s\": %s; write how many pieces"
                        .formatted(file, quantity, WRONG.formatted(part)));
    }

    @Test
    void part_of_a_measured_quantity_is_taken_whether_a_list_or_a_pack_measures_it()
            throws IOException {
        write("parts.csv", "part,name,unit\nGR-92,Grease of another make,g\nHB-9,Cap,each\n");
        write(
                "receipts.csv",
                """
                part,quantity,received_at
                GR-92,0.5,2026-03-01 14:00
                HB-3015,4.5,2026-03-01 14:00
                HB-9,3,2026-03-01 14:00
                HB-9,3.000,2026-03-01 14:10
                """);
        assertThat(take().messages())
                .containsExactly("a dry run, nothing was recorded; 6 rows would be");
        write("receipts.csv", "part,quantity,received_at\nHB-9,0.5,2026-03-01 14:00\n");
        assertThat(take().messages())
                .anyMatch(m -> refuses(m, "receipts.csv", "0.5", "HB-9"))
                .hasSize(2);
    }
}
