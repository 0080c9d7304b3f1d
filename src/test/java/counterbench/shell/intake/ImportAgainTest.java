package counterbench.shell.intake;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.care.ReversalRequest;
import counterbench.care.store.ReverseEntry;
import counterbench.intake.store.LoadPack;
import counterbench.people.Person;
import counterbench.people.Role;
import counterbench.sheets.poi.PoiSheets;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Status;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Paper that is imported again: unchanged, grown, completed or corrected. */
class ImportAgainTest extends LarkmerePaper {
    private static final String JOBS = "job,campaign,vin,opened_at,completed_at,mileage\n";
    private static final String USES = "job,part,quantity,condition,at,reason\n";
    private static final String NOTHING_NEW = "nothing was new: all rows are known already";
    private static final Pattern ENTRY = Pattern.compile("recorded as entry (\\d+) of site");

    private FakeShell.Output take(String name, String text, String... more) throws IOException {
        return takeAt("NORTH", name, text, more);
    }

    private FakeShell.Output takeAt(String site, String name, String text, String... more)
            throws IOException {
        Path copies = folder.resolve(name.replace(".csv", "-refused"));
        if (Files.exists(copies)) {
            Files.delete(copies.resolve(name));
            Files.delete(copies);
        }
        Files.writeString(folder.resolve(name), text);
        FakeShell shell = maren();
        shell.session().choose(site);
        String options = more.length == 0 ? "" : " " + String.join(" ", more);
        return shell.line("import \"" + folder.resolve(name) + "\"" + options);
    }

    private void isRecorded(FakeShell.Output output, int rows) {
        assertThat(output.status()).as(output.err()).isEqualTo(Status.DONE);
        assertThat(output.err()).contains(rows + (rows == 1 ? " row " : " rows ") + "recorded");
    }

    private static void isRefused(FakeShell.Output output, String why) {
        assertThat(output.status()).isEqualTo(Status.REFUSED);
        assertThat(output.err()).contains(why);
    }

    private static long entry(FakeShell.Output output) {
        Matcher matcher = ENTRY.matcher(output.err());
        assertThat(matcher.find()).as(output.err()).isTrue();
        return Long.parseLong(matcher.group(1));
    }

    private static void reverse(String what) {
        new ReverseEntry(larkmere.store())
                .run(
                        ReversalRequest.of(what, "wrong"),
                        Larkmere.NORTH,
                        new Person("Maren", Set.of(Role.LEAD)),
                        Larkmere.AS_OF,
                        "reverse " + what);
    }

    private void openJob(String job) throws IOException {
        isRecorded(take("jobs.csv", JOBS + job + ",HB-0417,0X,2026-03-02 08:00,,\n"), 1);
    }

    @Test
    void an_empty_cell_is_filled_later_and_a_differing_one_is_refused_by_its_name()
            throws IOException {
        openJob("N-901");
        String done = JOBS + "N-901,HB-0417,0X,2026-03-02 08:00,2026-03-02 11:00,\n";
        isRecorded(take("jobs.csv", done), 1);
        assertThat(take("jobs.csv", done).messages()).containsExactly(NOTHING_NEW);
        assertThat(take("jobs.csv", JOBS + "N-901,HB-0417,0x,2026-03-02 08:00,,\n").messages())
                .as("cells that are empty now take nothing back")
                .containsExactly(NOTHING_NEW);
        isRefused(
                take("jobs.csv", JOBS + "N-901,HB-0417,0X,2026-03-02 08:00,2026-03-02 12:00,\n"),
                "completed_at \"2026-03-02T12:00-06:00\": differs from what is known:"
                        + " \"2026-03-02T11:00-06:00\"");
    }

    @Test
    void an_attribute_of_a_vehicle_is_filled_later_and_a_differing_one_is_refused_by_its_name()
            throws IOException {
        String headings = "campaign,vin,gearbox,hoist\n";
        isRecorded(take("vehicles.csv", headings + "HB-0417,0A1,manual,\n"), 1);
        isRecorded(take("vehicles.csv", headings + "HB-0417,0A1,manual,twin\n"), 1);
        assertThat(take("vehicles.csv", "campaign,vin,hoist\nHB-0417,0a1,twin\n").messages())
                .containsExactly(NOTHING_NEW);
        isRefused(
                take("vehicles.csv", headings + "HB-0417,0A1,manual,single\n"),
                "hoist \"single\": differs from what is known: \"twin\"");
    }

    @Test
    void a_sheet_that_has_grown_adds_what_is_new_and_equal_rows_both_count() throws IOException {
        openJob("N-902");
        String one = "N-902,HB-3013,1,new,2026-03-02 09:00,\n";
        isRecorded(take("uses.csv", USES + one + one), 2);
        assertThat(take("uses.csv", USES + one + one).messages()).containsExactly(NOTHING_NEW);
        isRecorded(take("uses.csv", USES + one + one + one), 1);
        assertThat(take("uses.csv", USES + one).messages()).containsExactly(NOTHING_NEW);
    }

    @Test
    void a_row_that_differs_in_optional_cells_only_is_a_probable_correction() throws IOException {
        openJob("N-903");
        String said = "N-903,HB-3013,1,scrapped,2026-03-02 09:00,dropped\n";
        String other = "N-903,HB-3013,1,scrapped,2026-03-02 09:00,bent\n";
        FakeShell.Output first = take("uses.csv", USES + said);
        isRecorded(first, 1);
        String held = entry(first) + ".1";
        isRefused(
                take("uses.csv", USES + other),
                "uses.csv, row 2: differs only in optional cells from "
                        + held
                        + ", which was imported before: reason is \"dropped\" there and \"bent\" here;"
                        + " if it corrects that one, take it back first (reverse "
                        + held
                        + " --reason TEXT); if both are true, import with --as-new");
        isRefused(
                take("uses.csv", USES + said + "N-903,HB-3013,1,scrapped,2026-03-02 09:00,\n"),
                "uses.csv, row 3: differs only in optional cells from "
                        + held
                        + ", which was imported before: reason is \"dropped\" there and empty here;");
        isRecorded(take("uses.csv", USES + other, "--as-new"), 1);
        assertThat(take("uses.csv", USES + said + other).messages()).containsExactly(NOTHING_NEW);
    }

    @Test
    void what_was_reversed_stays_so_and_its_correction_is_taken() throws IOException {
        openJob("N-904");
        String wrong = "N-904,HB-3013,1,scrapped,2026-03-02 09:00,dropped\n";
        String right = "N-904,HB-3013,1,scrapped,2026-03-02 09:00,bent\n";
        long entry = entry(take("uses.csv", USES + wrong));
        reverse(entry + ".1");
        assertThat(take("uses.csv", USES + wrong).messages()).containsExactly(NOTHING_NEW);
        isRecorded(take("uses.csv", USES + right), 1);
    }

    @Test
    void a_row_is_known_by_the_papers_number() throws IOException {
        openJob("N-905");
        String headings = "job,part,quantity,condition,at,ref\n";
        String said = "N-905,HB-3013,1,new,2026-03-02 09:00,Z-1\n";
        long entry = entry(take("uses.csv", headings + said));
        assertThat(take("uses.csv", headings + said + said).messages())
                .containsExactly(NOTHING_NEW);
        String other = "N-905,HB-3013,2,new,2026-03-02 09:00,Z-1\n";
        isRefused(take("uses.csv", headings + other), "quantity \"2\": differs from the row");
        isRecorded(take("uses.csv", headings + "N-905,HB-3013,1,new,2026-03-02 09:00,Z-2\n"), 1);
        reverse(entry + ".1");
        assertThat(take("uses.csv", headings + said).messages()).containsExactly(NOTHING_NEW);
        isRecorded(take("uses.csv", headings + other), 1);
    }

    @Test
    void a_core_whose_removal_was_reversed_may_come_from_another_job() throws IOException {
        openJob("N-906");
        openJob("N-907");
        String headings = "core,event,at,job,serial\n";
        String wrong = "NC-901,removed,2026-03-02 09:00,N-906,S-901\n";
        String right = "NC-901,removed,2026-03-02 09:00,N-907,S-901\n";
        long entry = entry(take("cores.csv", headings + wrong));
        isRefused(take("cores.csv", headings + right), "was removed on job N-906");
        reverse(entry + ".1");
        isRecorded(take("cores.csv", headings + right), 1);
        isRecorded(take("cores.csv", headings + "NC-901,drain-begun,2026-03-02 09:05,,\n"), 1);
    }

    @Test
    void a_mark_fits_where_any_revision_of_the_campaign_has_its_step_so() throws IOException {
        loadPack("A", "2026-01-01", 4);
        loadPack("B", "2026-03-01", 3);
        isRecorded(take("jobs.csv", JOBS + "N-910,ZT-9,0X,2026-02-20 08:00,,\n"), 1);
        String headings = "job,step,at,value,fastener\n";
        isRecorded(take("marks.csv", headings + "N-910,clamp,2026-02-20 09:00,41,4\n"), 1);
        isRefused(
                take("marks.csv", headings + "N-910,clamp,2026-02-20 09:00,41,5\n"),
                "fastener \"5\": the step has 3");
    }

    private void loadPack(String revision, String from, int fasteners) throws IOException {
        Path pack = folder.resolve("ZT-9-" + revision + ".yaml");
        Files.writeString(
                pack,
                """
                campaign: ZT-9
                title: Clamp
                revision: %s
                in-force-from: %s
                kit: {part: ZT-K, contents: [{part: ZT-1, name: Clamp, quantity: 1}]}
                cautions: [Mind the edge]
                procedure:
                  - {id: clamp, do: Tighten, kind: torque, fasteners: %d, torque: 41 N·m, within: 10 %%}
                """
                        .formatted(revision, from, fasteners));
        new LoadPack(larkmere.store(), PoiSheets.files())
                .run(pack, Larkmere.NORTH, "Maren", Larkmere.AS_OF);
    }

    @Test
    void a_job_may_do_again_one_of_another_site() throws IOException {
        String headings = "job,campaign,vin,opened_at,redo_of\n";
        isRecorded(takeAt("SOUTH", "jobs.csv", JOBS + "S-901,HB-0417,0X,2026-03-02 08:00,,\n"), 1);
        isRecorded(take("jobs.csv", headings + "N-908,HB-0417,0X,2026-03-03 08:00,S-901\n"), 1);
        isRefused(
                take("jobs.csv", headings + "N-909,HB-0417,0X,2026-03-03 08:00,S-9O1\n"),
                "redo_of \"S-9O1\": there is no such job");
    }

    @Test
    void a_line_of_a_remittance_that_was_reversed_comes_anew_with_the_right_core()
            throws IOException {
        String head = "remittance,line,amount,paid_on,core,kind\nRM-9,1,395.00,2026-04-09,";
        FakeShell.Output wrong = take("credits.csv", head + "NC-O069,core\n");
        isRefused(take("credits.csv", head + "NC-0069,core\n"), "core \"NC-0069\": differs");
        reverse(entry(wrong) + ".1");
        isRecorded(take("credits.csv", head + "NC-0069,core\n"), 1);
    }
}
