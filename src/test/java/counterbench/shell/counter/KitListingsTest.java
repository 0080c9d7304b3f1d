package counterbench.shell.counter;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.acts.KitPlace;
import counterbench.acts.store.ShelfKits;
import counterbench.acts.store.SiteKits;
import counterbench.db.TestStores;
import counterbench.shared.Site;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Status;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Lists and shows the kits of the invented garage. */
class KitListingsTest {
    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void kits_are_listed_by_where_they_are(TestStores stores) {
        try (Counter counter = new Counter(stores)) {
            FakeShell hal = counter.north();

            assertThat(hal.line("kit list --campaign HB-0417 --format csv").out().lines())
                    .containsExactly(
                            "kit,kit_part,lot,expires_on,received_on,state,where,expired",
                            "FP-1052,HB-3010-K,FP2603,2026-10-28,2026-03-17,on-shelf,,",
                            "FP-1053,HB-3010-K,FP2603,2026-10-28,2026-03-17,on-shelf,,");
            assertThat(hal.line("kit list --state sent --format csv").out().lines())
                    .hasSize(6)
                    .contains("RD-0548,HB-5120-K,RD2603,,2026-03-17,sent,SOUTH,");
            assertThat(hal.line("kit list --all --format csv").out().lines())
                    .hasSize(94)
                    .contains("RD-0529,HB-5120-K,RD2602,,2026-02-18,returned,,");
            assertThat(hal.line("kit list --campaign HB-0428").err())
                    .endsWith("did you mean HB-0429?\n");
            assertThat(hal.line("kit list --part HB-5120").err())
                    .endsWith("did you mean HB-5120-K?\n");
            assertThat(hal.line("kit list --all --state sent").status()).isEqualTo(Status.USAGE);
        }
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void the_quick_list_of_the_shelf_is_what_the_whole_ledger_says(TestStores stores) {
        try (Counter counter = new Counter(stores)) {
            FakeShell hal = counter.north();
            hal.line("kit receive FP-2001 FP-2002 FP-2003 --part HB-3010-K");
            hal.line("kit issue FP-2001 N-155");
            hal.line("kit send FP-2002 --to SOUTH");
            hal.line("count --kit FP-1052 missing");
            hal.line("count --kit FP-1049 present");
            counter.south().line("kit arrive FP-2002 RD-0548 --from NORTH");

            mustAgree(counter, Larkmere.NORTH);
            mustAgree(counter, Larkmere.SOUTH);
        }
    }

    private static void mustAgree(Counter counter, Site site) {
        var store = counter.larkmere().store();
        assertThat(new ShelfKits(store, site, Larkmere.AS_OF).list(Optional.empty()))
                .hasSizeGreaterThan(5)
                .isEqualTo(
                        new SiteKits(store)
                                .list(
                                        site,
                                        Larkmere.AS_OF,
                                        kit -> kit.place() == KitPlace.ON_SHELF,
                                        jobs -> {}));
    }

    @ParameterizedTest
    @MethodSource("counterbench.db.TestStores#both")
    void a_kit_shows_its_contents_and_its_life(TestStores stores) {
        try (Counter counter = new Counter(stores)) {
            List<String> shown = counter.north().line("kit show RD-0529").out().lines().toList();

            assertThat(shown)
                    .startsWith(
                            "kit RD-0529 was sent back to the supplier",
                            "part      HB-5120-K, revision A",
                            "lot       RD2602",
                            "expires   not said",
                            "received  2026-02-18 09:21 on DN-0218-N by Hal")
                    .contains(
                            "HB-5124  Clamp screw                   2          1           0",
                            "2026-02-20 09:40  found missing: 1 HB-5124",
                            "2026-02-24 11:15  sent back to the supplier: 1 HB-5121, 1 HB-5122, 2"
                                    + " HB-5123, 2 HB-5125");
            assertThat(shown.get(shown.size() - 1))
                    .contains(" fix kit-incomplete: kit RD-0529 (HB-5120-K) came without 1 of ");
            assertThat(counter.south().line("kit show HV1-0313").out().lines())
                    .contains(
                            "2026-03-11 08:52  put back from job S-241: 1 TK-811",
                            "2026-03-18 15:43  scrapped on job S-246: 0.3 TK-816");
            assertThat(counter.north().line("kit show FP-1O12").err())
                    .isEqualTo("kit \"FP-1O12\": there is no such kit; did you mean FP-1012?\n");
        }
    }
}
