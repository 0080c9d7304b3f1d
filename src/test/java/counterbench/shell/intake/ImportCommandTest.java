package counterbench.shell.intake;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.people.Role;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Status;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ImportCommandTest extends LarkmerePaper {
    private static FakeShell.Output take(FakeShell shell, Object paper, String... more) {
        return shell.run(
                Stream.concat(Stream.of("import", paper.toString()), Stream.of(more)).toList());
    }

    @ParameterizedTest
    @EnumSource(TestStores.class)
    void a_folder_is_taken_in_once_and_known_again(TestStores kind) {
        try (Larkmere garage = Larkmere.withPacks(kind)) {
            FakeShell shell = garage.shellOf("Maren", Role.LEAD).at(Larkmere.AS_OF);
            FakeShell.Output dry = take(shell, "demo-data/south", "--site", "SOUTH", "--dry-run");
            assertThat(dry.messages())
                    .containsExactly("a dry run, nothing was recorded; 1512 rows would be");
            FakeShell.Output first = take(shell, "demo-data/south", "--site", "SOUTH");
            assertThat(first.status()).isEqualTo(Status.DONE);
            assertThat(first.out()).isEqualTo(dry.out()).containsPattern("uses +280 +0\n");
            assertThat(first.messages())
                    .containsExactly("1512 rows recorded as entry 1 of site SOUTH");
            FakeShell.Output again = take(shell, "demo-data/south", "--site", "SOUTH");
            assertThat(again.messages())
                    .containsExactly("nothing was new: all rows are known already");
            assertThat(again.out()).containsPattern("uses +0 +280\n");
        }
    }

    @Test
    void rows_of_a_time_that_has_not_come_are_taken_and_told_with_the_first_of_them()
            throws IOException {
        write("orders.csv", "order,part,quantity,ordered_on\nO-91,HB-3013,4,2026-03-05\n");
        Path receipts =
                write(
                        "receipts.csv",
                        """
                        part,quantity,received_at,expires_on
                        HB-3013,4,2026-03-05 14:00,2027-01-01
                        HB-3013,5,2026-03-05 14:01,2027-01-01
                        HB-3013,6,2062-03-05 14:00,
                        """);
        String first = "receipts.csv, row 3, received_at 2026-03-05 14:01; if that is a slip, ";
        assertThat(take(maren(), folder, "--dry-run").messages())
                .containsExactly(
                        "a dry run, nothing was recorded; 4 rows would be",
                        "2 rows tell of a time that has not come yet, the first is "
                                + first
                                + "mend it before you import");
        assertThat(take(maren(), folder).messages().get(1))
                .isEqualTo(
                        "2 rows tell of a time that has not come yet, the first is "
                                + first
                                + "take that fact back (reverse ENTRY.LINE, as journal show has it)"
                                + " and import the mended row");
        assertThat(take(maren(), receipts).messages()).hasSize(1);
        Path claims =
                write("rates.csv", "rate,amount,currency,valid_from\nlabour,99,USD,2031-01-01\n");
        assertThat(take(maren(), claims).messages())
                .as("a rate may be said before it holds")
                .hasSize(1);
        Path calibrations =
                write(
                        "calibrations.csv",
                        "instrument,calibrated_on,due_on\nTW-1,2026-03-06,2027-03-06\n");
        assertThat(take(maren(), calibrations, "--dry-run").messages().get(1))
                .isEqualTo(
                        "1 row tells of a time that has not come yet: calibrations.csv, row 2,"
                                + " calibrated_on 2026-03-06; if that is a slip, mend it before you"
                                + " import");
    }

    @Test
    void refused_rows_are_told_and_marked_in_a_copy_and_nothing_is_recorded() throws IOException {
        write("jobs.csv", "job,campaign,vin,opened_at\nN-900,HB-0417,0X,2026-03-02 08:00\n");
        write(
                "uses-march.csv",
                """
                job,part,quantity,condition,at
                N-900,HB-3013,4,new,2026-03-02 09:00
                N-900,HB-3013,"1,5",bent,2026-03-02 09:10
                N-900,HB-3099,1,new,2026-03-02 09:20
                """);
        FakeShell.Output output = take(maren(), folder);
        assertThat(output.status()).isEqualTo(Status.REFUSED);
        assertThat(output.out()).isEmpty();
        assertThat(output.messages())
                .hasSize(4)
                .anyMatch(m -> m.startsWith("uses-march.csv, row 3, quantity \"1,5\": "))
                .anyMatch(m -> m.startsWith("uses-march.csv, row 3, condition \"bent\": "))
                .anyMatch(m -> m.startsWith("uses-march.csv, row 4, part \"HB-3099\": "));
        Path copy = folder.resolveSibling(folder.getFileName() + "-refused");
        assertThat(output.messages().get(3))
                .isEqualTo(
                        "import \""
                                + folder
                                + "\": 2 rows were refused, and nothing was recorded; put them right"
                                + " in the copy in \""
                                + copy
                                + "\", where the last column says why, and import that");
        List<String> marked = Files.readAllLines(copy.resolve("uses-march.csv"));
        assertThat(marked.get(0)).endsWith(",refused_because");
        assertThat(marked.get(1)).isEqualTo("N-900,HB-3013,4,new,2026-03-02 09:00,");
        assertThat(marked.get(2)).contains("quantity").contains("condition");
        assertThat(copy.resolve("jobs.csv")).exists();
        assertThat(take(maren(), folder.resolve("jobs.csv"), "--dry-run").messages())
                .as("the job was not recorded")
                .containsExactly("a dry run, nothing was recorded; 1 row would be");
    }

    @Test
    void a_copy_never_goes_where_something_is() throws IOException {
        Path paper = write("uses.csv", "job,part,quantity,condition,at\nX,Y,1,new,yesterday\n");
        take(maren(), paper);
        assertThat(take(maren(), paper).err()).contains("uses-refused-2\"");
        assertThat(folder.resolve("uses-refused/uses.csv")).exists();
        assertThat(folder.resolve("uses-refused-2/uses.csv")).exists();
        FakeShell.Output named =
                take(maren(), paper, "--marked", folder.resolve("uses-refused").toString());
        assertThat(named.err()).contains("it is there and is no empty folder; name a new folder");
        assertThat(take(maren(), paper, "--marked", folder.resolve("mine").toString()).status())
                .isEqualTo(Status.REFUSED);
        assertThat(folder.resolve("mine/uses.csv")).exists();
    }

    @Test
    void the_first_fifty_rows_are_shown_and_all_are_marked() throws IOException {
        String rows =
                IntStream.range(0, 120)
                        .mapToObj(i -> "N-101,HB-3013,-1,new,2026-03-02 09:00\n")
                        .collect(Collectors.joining());
        Path paper = write("uses.csv", "job,part,quantity,condition,at\n" + rows);
        FakeShell.Output output = take(maren(), paper);
        assertThat(output.messages().stream().filter(m -> m.startsWith("uses.csv, row ")))
                .extracting(m -> m.replaceFirst("uses.csv, row ([0-9]+).*", "$1"))
                .contains("2", "51")
                .doesNotContain("52");
        assertThat(output.err()).contains("120 rows were refused, the first 50 are shown");
        assertThat(Files.readAllLines(folder.resolve("uses-refused/uses.csv")))
                .filteredOn(line -> line.contains("quantity \"\"-1\"\""))
                .hasSize(120);
    }

    @Test
    void hidden_characters_of_a_file_are_shown() throws IOException {
        Path paper =
                write("uses.csv", "job,part,quantity,condition,at\nN-1\u001b[2J,P,1,new,never\n");
        assertThat(take(maren(), paper).err()).contains("\\u001b").doesNotContain("\u001b");
    }

    @Test
    void paper_of_somebody_elses_work_is_refused_before_it_is_read() {
        FakeShell.Output output =
                take(larkmere.shellOf("Otis", Role.TECHNICIAN), "demo-data/north/claims.csv");
        assertThat(output.status()).isEqualTo(Status.REFUSED);
        assertThat(output.messages())
                .containsExactly(
                        "import of claims: this is for the role warranty, and Otis has technician;"
                                + " leave that sheet out, or sign in as somebody with the role");
    }

    @Test
    void paper_that_is_none_is_refused() throws IOException {
        assertThat(take(maren(), "nowhere.csv").err()).contains("there is no such file");
        assertThat(take(maren(), write("uses.txt", "")).err()).contains("is neither");
        assertThat(take(maren(), write("plans.csv", "a\n")).err()).contains("no kind of sheet");
        assertThat(take(larkmere.shell(), "demo-data/north").err()).contains("nobody is signed in");
    }

    @Test
    void which_site_is_meant_must_be_said_unless_the_paper_belongs_to_all() {
        FakeShell shell = maren();
        shell.session().choose("WEST");
        assertThat(take(shell, "demo-data/north").err()).contains("site \"WEST\"");
        assertThat(take(shell, "demo-data/common", "--site", "SOUTH").messages())
                .containsExactly("nothing was new: all rows are known already");
    }

    @Test
    void a_reversal_that_is_not_below_zero_is_refused() throws IOException {
        String lines = "remittance,line,amount,paid_on,kind\nRM-9,";
        for (String amount : List.of("912.71", "0.00")) {
            FakeShell.Output output =
                    take(
                            maren(),
                            write("credits.csv", lines + "1," + amount + ",2026-02-13,reversal"));
            assertThat(output.status()).isEqualTo(Status.REFUSED);
            assertThat(output.err())
                    .contains(
                            "is not below zero, and a reversal takes back what was paid; write it");
        }
        Path below = write("credits.csv", lines + "1,-912.71,2026-02-13,reversal");
        assertThat(take(maren(), below, "--dry-run").status()).isEqualTo(Status.DONE);
    }
}
