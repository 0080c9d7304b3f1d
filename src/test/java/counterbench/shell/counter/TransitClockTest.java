package counterbench.shell.counter;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.db.TestStores;
import counterbench.people.Person;
import counterbench.people.Role;
import counterbench.people.store.JooqSites;
import counterbench.shared.Site;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.Status;
import java.time.ZoneId;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** By whose clock transit tells when something was sent. The demo's day begins at UTC minus 5. */
class TransitClockTest {
    private static final Site WEST =
            new Site(
                    3,
                    "WEST",
                    "West garage",
                    ZoneId.of("America/Los_Angeles"),
                    Larkmere.NORTH.currency(),
                    Site.Patience.USUAL);

    private static void done(FakeShell shell, String line) {
        FakeShell.Output output = shell.line(line);
        assertThat(output.status()).as(output.screen()).isEqualTo(Status.DONE);
    }

    @ParameterizedTest
    @CsvSource({
        "NORTH, 2026-04-10 09:00, 2026-04-10 10:30",
        "WEST, 2026-04-10 07:00, 2026-04-10 08:30",
        ", 2026-04-10 09:00, 2026-04-10 08:30"
    })
    void a_site_is_told_by_its_own_clock_and_without_one_each_by_its_senders(
            @Nullable String site, String fromNorth, String fromWest) {
        try (Larkmere larkmere = Larkmere.withPacks(TestStores.H2)) {
            larkmere.store().run(sql -> JooqSites.add(sql, WEST));
            FakeShell maren =
                    new FakeShell(
                                    new PartReceiveCommand(larkmere::store, larkmere.sites()),
                                    new PartSendCommand(larkmere::store, larkmere.sites()),
                                    new TransitCommand(larkmere::store, larkmere.sites()))
                            .at(Larkmere.AS_OF);
            maren.session().signIn(new Person("Maren", Set.of(Role.LEAD)));
            String early = " --at \"2026-04-09 09:00\"";
            done(maren, "part receive HB-3013 4 --site NORTH" + early);
            done(maren, "part receive HB-3013 4 --site WEST" + early);
            done(maren, "part send HB-3013 1 --to WEST --site NORTH --at \"2026-04-10 09:00\"");
            done(maren, "part send HB-3013 2 --to NORTH --site WEST --at \"2026-04-10 08:30\"");

            String of = site == null ? "" : " --site " + site;
            assertThat(maren.line("transit --longer-than 0 --format csv" + of).out())
                    .contains("NORTH,WEST,,HB-3013,1,," + fromNorth + ",")
                    .contains("WEST,NORTH,,HB-3013,2,," + fromWest + ",");
        }
    }
}
