package counterbench.shell.counter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import counterbench.db.TestStores;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.journal.Draft;
import counterbench.journal.store.JooqJournal;
import counterbench.journal.store.Verification;
import counterbench.month.MonthAccount;
import counterbench.month.store.ReconcileMonth;
import counterbench.month.store.SiteBalances;
import counterbench.people.Person;
import counterbench.people.Role;
import counterbench.review.store.ReviewSite;
import counterbench.shared.Quantity;
import counterbench.shared.Site;
import counterbench.shell.BaseCommand;
import counterbench.shell.FakeShell;
import counterbench.shell.Larkmere;
import counterbench.shell.month.BalanceCommand;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** The parts counters of the invented garage's two yards; what must hold is checked at the end. */
final class Counter implements AutoCloseable {
    private static final Person INES = new Person("Ines", Set.of(Role.PARTS, Role.WARRANTY));

    private final Larkmere larkmere;

    Counter(TestStores stores) {
        this.larkmere = Larkmere.full(stores);
    }

    Larkmere larkmere() {
        return larkmere;
    }

    /** Hal's shell in the north. */
    FakeShell north() {
        return larkmere.shellOf(Larkmere.HAL, commands());
    }

    /** Ines's shell in the south. */
    FakeShell south() {
        FakeShell shell = larkmere.shellOf(INES, commands());
        shell.session().choose(Larkmere.SOUTH.site());
        return shell;
    }

    private BaseCommand[] commands() {
        return new BaseCommand[] {
            new KitReceiveCommand(larkmere::store, larkmere.sites()),
            new KitIssueCommand(larkmere::store, larkmere.sites()),
            new KitListCommand(larkmere::store, larkmere.sites()),
            new KitShowCommand(larkmere::store, larkmere.sites()),
            new ExpiryCommand(larkmere::store, larkmere.sites()),
            new NeedCommand(larkmere::store, larkmere.sites()),
            new KitShortCommand(larkmere::store, larkmere.sites()),
            new KitSendCommand(larkmere::store, larkmere.sites()),
            new KitArriveCommand(larkmere::store, larkmere.sites()),
            new KitReturnCommand(larkmere::store, larkmere.sites()),
            new KitScrapCommand(larkmere::store, larkmere.sites()),
            new PartReceiveCommand(larkmere::store, larkmere.sites()),
            new PartIssueCommand(larkmere::store, larkmere.sites()),
            new PartSendCommand(larkmere::store, larkmere.sites()),
            new PartArriveCommand(larkmere::store, larkmere.sites()),
            new PartReturnCommand(larkmere::store, larkmere.sites()),
            new PartScrapCommand(larkmere::store, larkmere.sites()),
            new CountCommand(larkmere::store, larkmere.sites()),
            new BalanceCommand(larkmere::store, larkmere.sites())
        };
    }

    /** Opens a job of the campaign HB-0417 that has no kit yet. */
    void open(String job) {
        FactRow row =
                FactRow.of(FactKind.JOBS)
                        .with("job", job)
                        .with("campaign", "HB-0417")
                        .with("vin", "0LKSP5D27RA002587")
                        .with("opened_at", Larkmere.AS_OF.minusSeconds(3600));
        new JooqJournal(larkmere.store())
                .record(
                        Draft.of(Larkmere.NORTH, Larkmere.AS_OF, "Otis", "job open", "job open"),
                        List.of(row));
    }

    /** What an account holds of a part by the book. */
    String balance(Site site, String account, String part) {
        StringBuilder found = new StringBuilder();
        new SiteBalances(larkmere.store())
                .each(
                        site,
                        Larkmere.AS_OF,
                        ReviewSite.NEWEST,
                        a -> a.toString().equals(account),
                        row -> found.append(row.part().equals(part) ? row.quantity() : ""));
        return found.isEmpty() ? "0" : found.toString();
    }

    /** The number of the newest entry of a site. */
    long head(Site site) {
        return larkmere.store().read(sql -> Verification.of(sql, site)).entries();
    }

    @Override
    public void close() {
        List.of(Larkmere.NORTH, Larkmere.SOUTH).forEach(this::mustHold);
        larkmere.close();
    }

    /** The journal verifies, every part adds up to zero, and the month's goods add up. */
    private void mustHold(Site site) {
        assertThat(larkmere.store().read(sql -> Verification.of(sql, site)).broken()).isEmpty();
        Map<String, Quantity> sums = new TreeMap<>();
        new SiteBalances(larkmere.store())
                .each(
                        site,
                        Larkmere.AS_OF,
                        ReviewSite.NEWEST,
                        account -> true,
                        row -> sums.merge(row.part(), row.quantity(), Quantity::plus));
        assertThat(sums.values()).allMatch(Quantity::isZero);
        MonthAccount april =
                new ReconcileMonth(larkmere.store())
                        .run(
                                site,
                                YearMonth.of(2026, 4),
                                Larkmere.AS_OF,
                                ReviewSite.NEWEST,
                                jobs -> {});
        assertThatCode(() -> april.goods("HB-0417")).doesNotThrowAnyException();
    }
}
