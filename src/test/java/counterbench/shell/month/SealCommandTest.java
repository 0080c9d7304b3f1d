package counterbench.shell.month;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.journal.store.EntryReader;
import counterbench.month.sheet.BookKind;
import counterbench.people.Person;
import counterbench.people.Role;
import counterbench.sheets.poi.WorkbookWriter;
import counterbench.shell.BaseCommand;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Status;
import counterbench.shell.care.ReverseCommand;
import counterbench.shell.claims.ClaimWithdrawCommand;
import counterbench.shell.intake.ImportCommand;
import counterbench.shell.review.FindingSettleCommand;
import counterbench.shell.review.ReviewCommand;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SealCommandTest {
    private static final Person MAREN = new Person("Maren", Set.of(Role.LEAD));

    @TempDir Path folder;

    private static BaseCommand[] commands(Larkmere larkmere) {
        return new BaseCommand[] {
            new SealCommand(larkmere::store, larkmere.sites()),
            new ReviewCommand(larkmere::store, larkmere.sites()),
            new ReconcileCommand(larkmere::store, larkmere.sites()),
            new FindingSettleCommand(larkmere::store, larkmere.sites()),
            new ImportCommand(larkmere::store, larkmere.sites()),
            new ReverseCommand(larkmere::store, larkmere.sites()),
            new ClaimWithdrawCommand(larkmere::store, larkmere.sites()),
            new ExportMonthCommand(
                    BookKind.PARTS, larkmere::store, larkmere.sites(), new WorkbookWriter()),
            new ExportMonthCommand(
                    BookKind.WARRANTY, larkmere::store, larkmere.sites(), new WorkbookWriter())
        };
    }

    private static FakeShell maren(Larkmere larkmere) {
        FakeShell shell = larkmere.shellOf(MAREN, commands(larkmere));
        shell.session().choose("SOUTH");
        return shell;
    }

    private static void settleAll(FakeShell maren, String month) {
        Matcher ids =
                Pattern.compile("F-[0-9A-Z]{10}")
                        .matcher(
                                maren.line("review --site SOUTH --state open --month " + month)
                                        .out());
        List<String> found = new ArrayList<>();
        while (ids.find()) {
            found.add(ids.group());
        }
        for (String id : found) {
            assertThat(maren.line("finding settle " + id + " --reason \"as agreed\"").status())
                    .isEqualTo(Status.DONE);
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_month_is_sealed_by_the_lead_in_its_turn_when_nothing_is_open(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell maren = maren(larkmere);

            assertThat(
                            larkmere.shellOf(Larkmere.QUINN, commands(larkmere))
                                    .line("seal 2026-01")
                                    .err())
                    .contains("this is for the role lead");
            assertThat(maren.line("seal 2026-02").err())
                    .isEqualTo(
                            "seal \"2026-02\": 2026-01 is still open, and months are sealed in"
                                    + " order; seal 2026-01 first\n");
            assertThat(maren.line("seal 2026-04").err()).contains("the month is not over");
            var refused = maren.line("seal 2026-01");
            assertThat(refused.status()).isEqualTo(Status.REFUSED);
            assertThat(refused.err()).contains("is open, ").contains("or finding settle F-");

            settleAll(maren, "2026-01");

            assertThat(maren.line("seal 2026-01").out())
                    .startsWith("2026-01 of site SOUTH is sealed: entry ");
            assertThat(maren.line("seal 2026-01").err()).contains("has sealed it");
        }
    }

    @Test
    void of_much_that_is_open_it_says_how_much_is_not_told() throws IOException {
        Path counts = folder.resolve("counts.csv");
        StringBuilder wrong = new StringBuilder("counted_at,quantity,part\n");
        for (int part = 3012; part <= 3016; part++) {
            wrong.append("2026-01-30 18:00,77,HB-%d\n".formatted(part));
        }
        Files.writeString(counts, wrong);
        try (Larkmere larkmere = Larkmere.full(TestStores.H2)) {
            FakeShell maren = maren(larkmere);
            assertThat(maren.line("import " + counts + " --site NORTH").status())
                    .isEqualTo(Status.DONE);
            assertThat(maren.line("seal 2026-01 --site NORTH").err().lines())
                    .hasSize(21)
                    .last()
                    .asString()
                    .matches(
                            "seal \"2026-01\": so much is open that only the first 20 of 2[1-9]"
                                    + " are told; review --month 2026-01 --state open lists all");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_sealed_month_comes_out_the_same_cell_by_cell_whatever_is_recorded_later(
            TestStores stores) throws IOException {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell maren = maren(larkmere);
            assertThat(maren.line("seal 2026-01 --override \"agreed by letter\"").status())
                    .isEqualTo(Status.DONE);
            List<String> parts = exported(maren, "parts", "2026-01", "first");
            List<String> warranty = exported(maren, "warranty", "2026-01", "first");
            String review = maren.line("review --site SOUTH --month 2026-01 --format csv").out();

            assertThat(maren.line(imported(latePaper())).err())
                    .contains("104 rows recorded as entry ")
                    .contains("103 rows of sealed months: booked in the first open one\n");
            assertThat(reversed(maren, received(parts)).err())
                    .contains(
                            "2026-01 is sealed and stays as it is: the reversal is booked in"
                                    + " 2026-02\n");

            assertThat(exported(maren, "parts", "2026-01", "second")).isEqualTo(parts);
            assertThat(exported(maren, "warranty", "2026-01", "second")).isEqualTo(warranty);
            assertThat(maren.line("review --site SOUTH --month 2026-01 --format csv").out())
                    .isEqualTo(review);
            List<String> february = exported(maren, "parts", "2026-02", "later");
            assertThat(february)
                    .filteredOn(cell -> cell.startsWith("Movements!") && cell.endsWith("=LATE"))
                    .hasSize(100);
            assertThat(february).anyMatch(cell -> cell.endsWith("=taken back: received"));
            opensWhereJanuaryEnded(maren);
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_settlement_that_is_taken_back_after_the_seal_counts_in_the_first_open_month(
            TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell maren = maren(larkmere);
            String january = "review --site SOUTH --month 2026-01 --state settled --format csv";
            String february = "review --site SOUTH --month 2026-02 --format csv";
            settleAll(maren, "2026-01");
            assertThat(maren.line("seal 2026-01").status()).isEqualTo(Status.DONE);
            String sealed = maren.line(january).out();
            String before = maren.line(february).out();

            long settling = newest(larkmere) - 1;
            assertThat(
                            maren.line(
                                            "reverse "
                                                    + settling
                                                    + " --reason \"not agreed\" --site SOUTH")
                                    .status())
                    .isEqualTo(Status.DONE);

            assertThat(maren.line(january).out()).isEqualTo(sealed);
            List<String> counted = maren.line(february).out().lines().toList();
            assertThat(counted).hasSize((int) before.lines().count() + 1);
            assertThat(counted).anyMatch(row -> row.contains(",2026-01,"));
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_withdrawal_that_is_told_after_the_seal_stands_in_the_first_open_months_workbook(
            TestStores stores) throws IOException {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell maren = maren(larkmere);
            maren.line("seal 2026-01 --override \"agreed by letter\"");
            List<String> sealed = exported(maren, "warranty", "2026-01", "sealed");
            assertThat(claims(exported(maren, "warranty", "2026-02", "before")))
                    .doesNotContain("CS-001");

            var late = maren.line("claim withdraw CS-001 --reason slip --on 2026-01-31");
            var now = maren.line("claim withdraw CS-002 --reason slip --on 2026-04-02");

            assertThat(late.err())
                    .contains("2026-01 is sealed: what happened in it is booked in 2026-02\n");
            assertThat(now.status()).isEqualTo(Status.DONE);
            assertThat(now.err()).doesNotContain("sealed");
            assertThat(exported(maren, "warranty", "2026-01", "again")).isEqualTo(sealed);
            List<String> february = exported(maren, "warranty", "2026-02", "after");
            assertThat(claims(february)).contains("CS-001").doesNotContain("CS-002");
            assertThat(claims(exported(maren, "warranty", "2026-04", "after")))
                    .contains("CS-002")
                    .doesNotContain("CS-001");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_credit_that_was_matched_to_a_claim_that_fell_says_so(TestStores stores)
            throws IOException {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell maren = maren(larkmere);
            maren.line("claim withdraw CS-001 --reason slip");

            assertThat(exported(maren, "warranty", "2026-01", "credits"))
                    .filteredOn(cell -> cell.startsWith("Credits!"))
                    .anyMatch(cell -> cell.endsWith("=CS-001, withdrawn"))
                    .anyMatch(cell -> cell.endsWith("=CS-002"));
        }
    }

    /** The numbers of the claims on the sheet. */
    private static List<String> claims(List<String> cells) {
        return cells.stream()
                .filter(cell -> cell.matches("Claims!A[0-9]+=.*"))
                .map(cell -> cell.replaceFirst(".*?=", ""))
                .toList();
    }

    private static long newest(Larkmere larkmere) {
        return larkmere.store()
                .read(sql -> EntryReader.newest(sql, Larkmere.SOUTH.no(), 1))
                .get(0)
                .number();
    }

    private void opensWhereJanuaryEnded(FakeShell maren) {
        String january =
                maren.line("reconcile --campaign HB-0417 --month 2026-01 --format csv").out();
        String february =
                maren.line("reconcile --campaign HB-0417 --month 2026-02 --format csv").out();
        assertThat(column(february, "opening")).isEqualTo(column(january, "closing_book"));
    }

    private static List<String> column(String csv, String heading) {
        List<String> lines = csv.lines().toList();
        int part = List.of(lines.get(0).split(",", -1)).indexOf("part");
        int at = List.of(lines.get(0).split(",", -1)).indexOf(heading);
        return lines.stream()
                .skip(1)
                .map(line -> line.split(",", -1))
                .filter(cells -> cells[0].equals("goods"))
                .map(cells -> cells[part] + " " + cells[at])
                .sorted()
                .toList();
    }

    /** A hundred receipts, two credits and a claim of January, and a receipt of April. */
    private Path latePaper() throws IOException {
        Path paper = Files.createDirectories(folder.resolve("late"));
        StringBuilder receipts = new StringBuilder("part,quantity,received_at,lot,document\n");
        for (int i = 0; i < 100; i++) {
            receipts.append("HB-3013,2,2026-01-20 08:%02d,LATE,D-%d\n".formatted(i % 60, i));
        }
        receipts.append("HB-3013,1,2026-04-02 08:00,NOW,D-X\n");
        Files.writeString(paper.resolve("receipts.csv"), receipts);
        Files.writeString(
                paper.resolve("credits.csv"),
                """
                remittance,line,amount,paid_on,claim
                RM-L,1,10.00,2026-01-30,CS-001
                RM-L,2,11.00,2026-01-31,CS-002
                """);
        Files.writeString(
                paper.resolve("claims.csv"),
                """
                claim,job,submitted_on,labour_amount
                CS-900,S-215,2026-01-31,59.00
                """);
        return paper;
    }

    private static String imported(Path paper) {
        return "import " + paper + " --site SOUTH";
    }

    /** Where the journal says what the first receipt among the movements says. */
    private static String received(List<String> cells) {
        String row =
                cells.stream()
                        .filter(c -> c.matches("Movements!B[0-9]+=received"))
                        .findFirst()
                        .orElseThrow()
                        .replaceAll("Movements!B([0-9]+)=.*", "$1");
        String entry = "Movements!M" + row + "=";
        return cells.stream()
                .filter(c -> c.startsWith(entry))
                .findFirst()
                .orElseThrow()
                .substring(entry.length());
    }

    private static FakeShell.Output reversed(FakeShell maren, String address) {
        return maren.line("reverse " + address + " --reason \"never came\" --site SOUTH");
    }

    private List<String> exported(FakeShell maren, String kind, String month, String name)
            throws IOException {
        Path file = folder.resolve(kind + "-" + month + "-" + name + ".xlsx");
        var seen = maren.line("export " + kind + " --month " + month + " --to " + file);
        assertThat(seen.status()).as(seen.err()).isEqualTo(Status.DONE);
        List<String> cells = new ArrayList<>();
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file))) {
            for (Sheet sheet : book) {
                for (Row row : sheet) {
                    for (Cell cell : row) {
                        cells.add(sheet.getSheetName() + "!" + cell.getAddress() + "=" + cell);
                    }
                }
            }
        }
        return cells;
    }
}
