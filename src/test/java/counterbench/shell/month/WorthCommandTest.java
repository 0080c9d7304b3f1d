package counterbench.shell.month;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.people.Person;
import counterbench.people.Role;
import counterbench.shell.BaseCommand;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Status;
import counterbench.shell.intake.ImportCommand;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class WorthCommandTest {
    private static final Person MAREN = new Person("Maren", Set.of(Role.LEAD));

    @TempDir Path folder;

    private static FakeShell maren(Larkmere larkmere) {
        return larkmere.shellOf(
                MAREN,
                new BaseCommand[] {
                    new WorthCommand(larkmere::store, larkmere.sites()),
                    new ImportCommand(larkmere::store, larkmere.sites()),
                    new SealCommand(larkmere::store, larkmere.sites())
                });
    }

    /** What the command says of each part, by heading. */
    private static Map<String, Map<String, String>> worth(FakeShell shell, String options) {
        var seen = shell.line("worth --site SOUTH --format csv " + options);
        assertThat(seen.status()).as(seen.err()).isEqualTo(Status.DONE);
        List<String> lines = seen.out().lines().toList();
        List<String> headings = List.of(lines.get(0).split(",", -1));
        Map<String, Map<String, String>> parts = new LinkedHashMap<>();
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",", -1);
            Map<String, String> row = new LinkedHashMap<>();
            for (int i = 0; i < cells.length; i++) {
                row.put(headings.get(i), cells[i]);
            }
            parts.put(row.get("part"), row);
        }
        return parts;
    }

    private static Map<String, String> of(String part, Map<String, Map<String, String>> all) {
        return Objects.requireNonNull(all.get(part), part);
    }

    private void paper(FakeShell shell, String name, String... files) throws IOException {
        Path paper = Files.createDirectories(folder.resolve(name));
        for (int i = 0; i < files.length; i += 2) {
            Files.writeString(paper.resolve(files[i]), files[i + 1]);
        }
        var seen = shell.line("import " + paper + " --site SOUTH");
        assertThat(seen.status()).as(seen.err()).isEqualTo(Status.DONE);
    }

    /**
     * The worked example of OpenStax, Principles of Accounting, Volume 1, chapter 10 (Rice
     * University), from paper to report, with averages rounded as it prints them.
     */
    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_month_of_the_textbook_is_worth_what_it_prints_by_every_method(TestStores stores)
            throws IOException {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell maren = maren(larkmere);
            paper(
                    maren,
                    "textbook",
                    "parts.csv",
                    "part,name,unit\nXR-1,Receiver,each\n",
                    "receipts.csv",
                    """
                    part,quantity,received_at,lot,unit_cost
                    XR-1,150,2026-01-31 09:00,FIRST,21
                    XR-1,225,2026-02-10 09:00,SECOND,27
                    XR-1,210,2026-02-25 09:00,THIRD,33
                    """,
                    "moves.csv",
                    """
                    event,at,part,quantity,lot
                    returned,2026-02-05 09:00,XR-1,120,FIRST
                    returned,2026-02-15 09:00,XR-1,20,FIRST
                    returned,2026-02-15 09:00,XR-1,160,SECOND
                    """);

            assertThat(figures(maren, "lots")).isEqualTo("3150.00 13005.00 7260.00 8895.00");
            assertThat(figures(maren, "fifo")).isEqualTo("3150.00 13005.00 7200.00 8955.00");
            assertThat(figures(maren, "lifo")).isEqualTo("3150.00 13005.00 7380.00 8775.00");
            assertThat(figures(maren, "lifo-by-month"))
                    .isEqualTo("3150.00 13005.00 9360.00 6795.00");
            assertThat(figures(maren, "average")).isEqualTo("3150.00 13005.00 8284.62 7870.38");
            assertThat(figures(maren, "average --whole"))
                    .isEqualTo("3150.00 13005.00 8283.00 7872.00");
            assertThat(figures(maren, "moving-average"))
                    .isEqualTo("3150.00 13005.00 7252.94 8902.06");
            assertThat(figures(maren, "moving-average --whole"))
                    .isEqualTo("3150.00 13005.00 7253.00 8902.00");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void in_whole_units_every_value_is_whole_and_the_month_still_adds_up(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            Map<String, Map<String, String>> parts =
                    worth(maren(larkmere), "--month 2026-02 --whole");

            assertThat(parts.values())
                    .isNotEmpty()
                    .allSatisfy(
                            row -> {
                                assertThat(money(row, "opening_value").add(money(row, "in_value")))
                                        .isEqualByComparingTo(
                                                money(row, "out_cost")
                                                        .add(money(row, "closing_value")));
                                for (String value : VALUES) {
                                    assertThat(row.get(value)).endsWith(".00");
                                }
                            });
            assertThat(parts.values()).anyMatch(row -> "each".equals(row.get("unit")));
            assertThat(parts.values()).anyMatch(row -> "mL".equals(row.get("unit")));
        }
    }

    private static final List<String> VALUES =
            List.of("opening_value", "in_value", "out_cost", "closing_value");

    private static BigDecimal money(Map<String, String> row, String heading) {
        return new BigDecimal(Objects.requireNonNull(row.get(heading)));
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_month_that_has_not_begun_is_refused(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            assertThat(maren(larkmere).line("worth --site SOUTH --month 2026-05").err())
                    .isEqualTo(
                            "worth of \"2026-05\": that month has not begun; the newest is"
                                    + " 2026-04\n");
        }
    }

    private static String figures(FakeShell shell, String method) {
        Map<String, String> part = of("XR-1", worth(shell, "--month 2026-02 --method " + method));
        return String.join(
                " ",
                part.get("opening_value"),
                part.get("in_value"),
                part.get("out_cost"),
                part.get("closing_value"));
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_sealed_month_keeps_its_worth_and_the_next_opens_with_it(TestStores stores)
            throws IOException {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell maren = maren(larkmere);
            assertThat(maren.line("seal 2026-01 --site SOUTH --override \"by letter\"").status())
                    .isEqualTo(Status.DONE);
            Map<String, Map<String, String>> january = worth(maren, "--month 2026-01");
            Map<String, String> before = of("GR-90", worth(maren, "--month 2026-02"));

            paper(
                    maren,
                    "late",
                    "receipts.csv",
                    "part,quantity,received_at,unit_cost\nGR-90,50,2026-01-03 08:00,0.10\n");

            assertThat(worth(maren, "--month 2026-01")).isEqualTo(january).containsKey("GR-90");
            Map<String, String> after = of("GR-90", worth(maren, "--month 2026-02"));
            assertThat(after.get("opening_value"))
                    .isEqualTo(of("GR-90", january).get("closing_value"))
                    .isEqualTo(before.get("opening_value"));
            assertThat(gain(before, after, "in")).isEqualByComparingTo("50");
            assertThat(gain(before, after, "in_value")).isEqualByComparingTo("5");
            assertThat(gain(before, after, "closing")).isEqualByComparingTo("50");
        }
    }

    private static BigDecimal gain(
            Map<String, String> before, Map<String, String> after, String heading) {
        return new BigDecimal(after.get(heading)).subtract(new BigDecimal(before.get(heading)));
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void parts_whose_cost_nobody_knows_are_named_and_in_no_sum(TestStores stores)
            throws IOException {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            FakeShell maren = maren(larkmere);
            String sums = maren.line("worth --month 2026-01 --site SOUTH").err();
            paper(
                    maren,
                    "free",
                    "parts.csv",
                    "part,name,unit\nXR-2,Clip,each\n",
                    "receipts.csv",
                    "part,quantity,received_at\nXR-2,5,2026-01-03 08:00\n");

            var seen = maren.line("worth --month 2026-01 --site SOUTH");

            assertThat(seen.err())
                    .startsWith(sums)
                    .endsWith(
                            "not known for want of a cost, and so in none of the sums: XR-2; import"
                                    + " their receipts with unit_cost, or what is missing of them\n");
            assertThat(of("XR-2", worth(maren, "--month 2026-01")))
                    .containsEntry("in", "5")
                    .containsEntry("in_value", "")
                    .containsEntry("closing", "5")
                    .containsEntry("unit_cost", "")
                    .containsEntry("closing_value", "");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_method_that_is_not_there_is_refused_with_the_near_one(TestStores stores) {
        try (Larkmere larkmere = Larkmere.full(stores)) {
            assertThat(maren(larkmere).line("worth --month 2026-01 --method averge").err())
                    .contains("did you mean average?");
        }
    }
}
