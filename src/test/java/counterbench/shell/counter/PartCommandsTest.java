package counterbench.shell.counter;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Status;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Loose parts in and out of the invented garage, and counts, by whole command lines. */
class PartCommandsTest {
    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_bad_receipt_is_refused_once_and_clearly(TestStores stores) {
        try (Counter counter = new Counter(stores)) {
            FakeShell hal = counter.north();

            assertThat(hal.line("part receive HB-3013 1.5").err())
                    .startsWith("quantity \"1.5\" of HB-3013: the part is counted in pieces; ");
            assertThat(hal.line("part receive HB-3013 0").err()).contains("it is not above zero");
            assertThat(hal.line("part receive HB-3013 -- -2").status()).isNotEqualTo(Status.DONE);
            assertThat(hal.line("part receive HB-3O13 1").err())
                    .endsWith("did you mean HB-3013?\n");
            assertThat(hal.line("part receive HB-3010-K 1").err())
                    .startsWith("part \"HB-3010-K\": it is a kit, which goes by its serial; ");
            assertThat(hal.line("part receive HB-3015 5 --expires 2026-09-30").err())
                    .contains("a last usable day belongs to a lot");
            assertThat(counter.head(Larkmere.NORTH)).isEqualTo(8);
            assertThat(hal.line("part receive GR-90 10.5 --lot G-9").out())
                    .isEqualTo("10.5 g GR-90 received: entry 9 of site NORTH\n");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void the_lot_in_date_that_expires_first_is_taken(TestStores stores) {
        try (Counter counter = new Counter(stores)) {
            FakeShell hal = counter.north();
            hal.line("part receive HB-3015 10 --lot K-1 --expires 2026-06-01");
            hal.line("part receive HB-3015 10 --lot K-2 --expires 2026-05-01");
            hal.line("part receive HB-3015 10 --lot K-3 --expires 2026-04-09");

            assertThat(hal.line("part issue HB-3015 12 N-155").messages())
                    .containsExactly(
                            "take 10 of lot K-2, until 2026-05-01",
                            "take 2 of lot K-1, until 2026-06-01");
            assertThat(hal.line("part issue HB-3015 9 N-155").err())
                    .isEqualTo(
                            "9 mL HB-3015 to job N-155: the store has 8 in date; expired: 10 of lot"
                                    + " K-3, until 2026-04-09; take less, or name an expired lot"
                                    + " with --lot if it must be\n");
            assertThat(hal.line("part issue HB-3015 2 N-155 --lot K-3").messages())
                    .containsExactly("lot K-3 is past its last usable day, 2026-04-09");
            assertThat(hal.line("part issue HB-3015 9 N-155 --lot K-1").err())
                    .contains("the store has 8 of that lot; take less");
            assertThat(hal.line("part issue HB-3015 1 N-155 --lot K-7").err())
                    .endsWith("the store has none of that lot; did you mean K-1?\n");
            assertThat(counter.balance(Larkmere.NORTH, "BENCH(N-155)", "HB-3015")).isEqualTo("19");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void the_store_never_falls_below_zero_not_even_in_between(TestStores stores) {
        try (Counter counter = new Counter(stores)) {
            FakeShell hal = counter.north();

            assertThat(hal.line("part issue HB-3012 1 N-155").err())
                    .startsWith("1 HB-3012 to job N-155: the store has 0; ");
            hal.line("part receive HB-3012 1");
            assertThat(hal.line("part issue HB-3012 1 N-155 --at \"2026-04-10 08:00\"").err())
                    .startsWith("1 HB-3012 to job N-155: the store has 0; ");
            assertThat(hal.line("part issue HB-3012 1 N-155").status()).isEqualTo(Status.DONE);
            assertThat(hal.line("part scrap HB-3012 1 --reason bent").err())
                    .startsWith("1 HB-3012 into the scrap: the store has 0; ");
            assertThat(hal.line("part issue HB-3012 1 N-101").err())
                    .contains("job N-101 was completed");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void loose_parts_travel_with_their_lots(TestStores stores) {
        try (Counter counter = new Counter(stores)) {
            FakeShell hal = counter.north();
            FakeShell ines = counter.south();

            assertThat(hal.line("part send HB-3003 10 --to SOUTH").messages())
                    .containsExactly("take 4 of lot R-88", "take 6 of lot R-93");
            assertThat(ines.line("part arrive HB-3003 11 --from NORTH").err())
                    .startsWith(
                            "11 HB-3003 from site NORTH: only 10 of it was sent here and has not"
                                    + " arrived; ");
            assertThat(ines.line("part arrive HB-3003 7 --from NORTH").status())
                    .isEqualTo(Status.DONE);
            assertThat(ines.line("part arrive HB-3003 4 --from NORTH").err())
                    .contains("only 3 of it was sent here");
            assertThat(ines.line("part arrive HB-3003 3 --from NORTH --lot R-93").status())
                    .isEqualTo(Status.DONE);
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void what_is_spoilt_or_sent_back_leaves_the_store(TestStores stores) {
        try (Counter counter = new Counter(stores)) {
            FakeShell hal = counter.north();
            hal.line("part receive HB-3015 10 --lot K-3 --expires 2026-04-09");

            var scrapped = hal.line("part scrap HB-3015 4 --reason old");

            assertThat(scrapped.out()).isEqualTo("4 mL HB-3015 scrapped: entry 10 of site NORTH\n");
            assertThat(scrapped.messages()).containsExactly("take 4 of lot K-3, until 2026-04-09");
            assertThat(hal.line("part return HB-3015 6 --lot K-3").status()).isEqualTo(Status.DONE);
            assertThat(counter.balance(Larkmere.NORTH, "STORE", "HB-3015")).isEqualTo("0");
            assertThat(counter.balance(Larkmere.NORTH, "RETURNED", "HB-3015")).isEqualTo("6");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_count_is_told_what_the_book_says_only_afterwards(TestStores stores) {
        try (Counter counter = new Counter(stores)) {
            FakeShell hal = counter.north();

            assertThat(hal.line("count HB-3003 16").screen())
                    .isEqualTo("counted 16 HB-3003, as the book says: entry 9 of site NORTH\n");
            assertThat(hal.line("count HB-3003 18").out())
                    .isEqualTo(
                            "counted 18 HB-3003 where the book says 16, a difference of +2: entry"
                                    + " 10 of site NORTH\n");
            assertThat(hal.line("count HB-3003 17.5").err()).contains("counted in pieces");
            assertThat(hal.line("count HB-3OO3 17").err()).endsWith("did you mean HB-3003?\n");
            assertThat(hal.line("count HB-3003").status()).isEqualTo(Status.USAGE);
            assertThat(counter.balance(Larkmere.NORTH, "STORE", "HB-3003")).isEqualTo("18");
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_kit_is_counted_present_or_missing(TestStores stores) {
        try (Counter counter = new Counter(stores)) {
            FakeShell hal = counter.north();

            assertThat(hal.line("count --kit FP-1052 present").screen())
                    .isEqualTo(
                            "counted kit FP-1052 present, as the book says: entry 9 of site"
                                    + " NORTH\n");
            assertThat(hal.line("count --kit FP-1052 missing").messages())
                    .singleElement()
                    .asString()
                    .startsWith("fix count-difference: KIT(FP-1052): ");
            assertThat(hal.line("kit issue FP-1052 N-155").err())
                    .contains("the kit was not there when it was last counted");
            assertThat(hal.line("count --kit FP-1052 there").status()).isEqualTo(Status.USAGE);
            assertThat(hal.line("count --kit FP-9999 present").err()).contains("no such kit");
        }
    }
}
