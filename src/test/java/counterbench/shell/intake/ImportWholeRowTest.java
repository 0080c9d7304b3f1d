package counterbench.shell.intake;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.shell.FakeShell;
import counterbench.shell.Status;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A row with a cell that cannot be read is looked through to its end, so that one round is enough.
 */
class ImportWholeRowTest extends LarkmerePaper {
    /** What is complained of in the sheets of the folder, without the last line, which sums up. */
    private List<String> refused() {
        FakeShell shell = maren();
        FakeShell.Output output = shell.line("import \"" + folder + "\"");
        assertThat(output.status()).as(output.screen()).isEqualTo(Status.REFUSED);
        return output.messages().subList(0, output.messages().size() - 1);
    }

    private void rows(String name, String... lines) throws IOException {
        Files.write(folder.resolve(name), List.of(lines));
    }

    @Test
    void what_else_is_wrong_with_a_row_is_said_in_the_same_round() throws IOException {
        rows("jobs.csv", "job,campaign,vin,opened_at", "N-920,HB-0417,0X,2026-03-02 08:00");
        rows(
                "uses.csv",
                "job,part,quantity,condition,at,by",
                "N-92O,HB-3O13,one,new,2026-03-02 09:00,Nobody");
        assertThat(refused())
                .satisfiesExactlyInAnyOrder(
                        m -> assertThat(m).startsWith("uses.csv, row 2, quantity \"one\": "),
                        m -> assertThat(m).startsWith("uses.csv, row 2, job \"N-92O\": there is"),
                        m -> assertThat(m).startsWith("uses.csv, row 2, part \"HB-3O13\": no"),
                        m -> assertThat(m).startsWith("uses.csv, row 2, by \"Nobody\": nobody"));
    }

    @Test
    void rows_that_name_a_refused_job_or_core_are_not_to_blame_for_it() throws IOException {
        rows("jobs.csv", "job,campaign,vin,opened_at", "N-921,HB-0417,0X,yesterday");
        rows("uses.csv", "job,part,quantity,condition,at", "N-921,HB-3013,1,new,2026-03-02 09:00");
        rows(
                "cores.csv",
                "core,event,at,job,serial",
                "NC-921,removed,today,N-921,S-921",
                "NC-921,drain-begun,2026-03-02 10:00,,");
        assertThat(refused())
                .satisfiesExactlyInAnyOrder(
                        m -> assertThat(m).startsWith("jobs.csv, row 2, opened_at \"yesterday\""),
                        m -> assertThat(m).startsWith("cores.csv, row 2, at \"today\""));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "jobs|job,campaign,vin,opened_at,completed_at,outcome|N-9,HB-0417,0X,2026-03-02 08:00,noon,completed",
                "jobs|job,campaign,vin,opened_at,completed_at|N-9,HB-0417,0X,noon,2026-03-02 08:00",
                "issues|job,at,part,quantity|N-101,2026-03-02 08:00,HB-3013,many",
                "uses|job,part,quantity,condition,at,was|N-101,HB-3013,1,off,2026-03-02 09:00,new",
                "uses|job,part,quantity,condition,at,was|N-101,HB-3013,1,taken-off,2026-03-02 09:00,old",
                "marks|job,step,at,value,fastener|N-101,mount,2026-03-02 09:00,firm,1",
                "marks|job,step,at,value,fastener|N-101,mount,2026-03-02 09:00,47,last",
                "cores|core,event,at,quantity|NC-7777,gone,2026-03-02 09:00,",
                "moves|event,at,kit,part,quantity|short,2026-03-02 09:00,FP-1,HB-3013,few",
                "moves|event,at,kit,other_site|flown,2026-03-02 09:00,FP-1,SOUTH",
                "counts|counted_at,quantity,kit|2026-03-02 09:00,some,FP-1",
                "calibrations|instrument,calibrated_on,due_on|TW-1,spring,2026-01-01",
                "shipments|shipment,carrier,tracking,weight,weight_unit|SH-9,X,Y,3,stone",
                "credits|remittance,line,amount,paid_on,kind|RM-9,1,much,2026-03-02,reversal",
                "credits|remittance,line,amount,paid_on,kind|RM-9,1,-3.00,2026-03-02,refund"
            })
    void nothing_is_said_that_follows_from_the_cell_that_cannot_be_read(
            String kind, String headings, String row) throws IOException {
        rows("jobs.csv", "job,campaign,vin,opened_at", "N-101,HB-0417,0X,2026-03-02 08:00");
        rows(kind + "-b.csv", headings, row);
        assertThat(refused()).singleElement().asString().startsWith(kind + "-b.csv, row 2, ");
    }

    @Test
    void a_row_that_says_otherwise_than_is_known_says_so_beside_its_bad_cell() throws IOException {
        rows(
                "jobs.csv",
                "job,campaign,vin,opened_at,mileage",
                "N-922,HB-0417,0X,2026-03-02 08:00,",
                "N-922,HB-0417,0Y,2026-03-02 08:00,far");
        assertThat(refused())
                .satisfiesExactlyInAnyOrder(
                        m -> assertThat(m).startsWith("jobs.csv, row 3, mileage \"far\": "),
                        m -> assertThat(m).startsWith("jobs.csv, row 3, vin \"0Y\": differs"));
    }

    @Test
    void where_it_cannot_be_told_which_cell_is_which_nothing_else_is_said() throws IOException {
        rows("uses.csv", "job,part,quantity,condition,at", "N-92O,1,new,2026-03-02 09:00");
        assertThat(refused()).noneMatch(m -> m.contains("there is no such job"));
    }
}
