package counterbench.shell.claims;

import counterbench.acts.desk.ClaimCase;
import counterbench.acts.desk.ClaimDraft;
import counterbench.acts.desk.ClaimLine;
import counterbench.acts.store.ReadClaims;
import counterbench.acts.store.ReadDrafts;
import counterbench.claims.Ageing;
import counterbench.claims.Money;
import counterbench.db.Store;
import counterbench.shared.Site;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Options;
import counterbench.shell.SiteChoice;
import counterbench.shell.Status;
import counterbench.shell.acts.LiveNames;
import counterbench.shell.month.ReadJobs;
import counterbench.shell.print.Column;
import counterbench.shell.print.Rows;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Says what is still to be claimed and by when, and what was claimed and is still to be paid. */
public final class ClaimAgeingCommand extends BaseCommand {
    private final Supplier<Store> store;
    private final SiteChoice sites;

    public ClaimAgeingCommand(Supplier<Store> store, SiteChoice sites) {
        super(
                Manual.of(
                                "claim ageing",
                                Group.WARRANTY_DESK,
                                "Say what is still to be claimed, and still to be paid")
                        .takes(
                                DeskOptions.AS_OF,
                                Options.SITE.completedBy(new LiveNames(store).sites()))
                        .printsRows()
                        .example("claim ageing")
                        .example("claim ageing --format csv")
                        .note(
                                "Jobs to claim stand first, by their last day; then claims that"
                                        + " wait for money, the oldest first; then those that were"
                                        + " paid too much, with what is too much below zero. What"
                                        + " is too much is no part of what is still to be paid."
                                        + " Days are counted from submission; the day in"
                                        + " the column until is the last for the claim, or the"
                                        + " last of the site's patience for its credit."));
        this.store = store;
        this.sites = sites;
    }

    @Override
    protected Status run(Invocation in) {
        Site site = sites.of(in);
        Instant asOf = DeskOptions.asOf(in, site);
        LocalDate today = site.dayOf(asOf);
        List<ClaimDraft> drafts =
                new ReadDrafts(store.get())
                        .run(site, asOf, ClaimCase::isUnclaimed, ReadJobs.shown(in, site));
        List<ClaimLine> open =
                new ReadClaims(store.get())
                        .list(site, asOf, ClaimLine::isOpen, ReadJobs.shown(in, site));
        List<ClaimLine> waiting = open.stream().filter(l -> l.overpaid().isEmpty()).toList();
        List<ClaimLine> overpaid = open.stream().filter(l -> l.overpaid().isPresent()).toList();
        try (Rows rows =
                in.rows(
                        Column.text("what"),
                        Column.text("claim"),
                        Column.text("job"),
                        Column.text("since"),
                        Column.number("days"),
                        Column.text("age"),
                        Column.text("until"),
                        Column.number("days_left"),
                        Column.number("open"))) {
            drafts.stream()
                    .sorted(Comparator.comparing(d -> until(d)))
                    .forEach(d -> add(rows, d, today));
            waiting.forEach(line -> add(rows, line, site, today));
            overpaid.forEach(line -> addOverpaid(rows, line, today));
        }
        DueSoon.words(drafts, today).forEach(in::tell);
        tellSums(in, site, waiting, today);
        tellOverpaid(in, site, overpaid);
        return Status.DONE;
    }

    private static LocalDate until(ClaimDraft draft) {
        LocalDate by = draft.draft().submitBy();
        return by == null ? LocalDate.MAX : by;
    }

    private static void add(Rows rows, ClaimDraft drafted, LocalDate today) {
        rows.add(
                "to claim",
                null,
                drafted.draft().job(),
                drafted.draft().completedOn(),
                ChronoUnit.DAYS.between(drafted.draft().completedOn(), today),
                null,
                drafted.draft().submitBy(),
                drafted.daysLeft(today).isPresent() ? drafted.daysLeft(today).getAsLong() : null,
                Money.text(drafted.draft().total()));
    }

    private static void add(Rows rows, ClaimLine line, Site site, LocalDate today) {
        rows.add(
                line.standing().state().words(),
                line.claim().claim(),
                line.claim().job(),
                line.claim().submittedOn(),
                line.age(today),
                Ageing.of(line.age(today)).words(),
                line.patience(site),
                ChronoUnit.DAYS.between(today, line.patience(site)),
                Money.text(line.standing().open().orElse(BigDecimal.ZERO)));
    }

    /** For one that was paid too much no credit is waited for. */
    private static void addOverpaid(Rows rows, ClaimLine line, LocalDate today) {
        rows.add(
                "paid too much",
                line.claim().claim(),
                line.claim().job(),
                line.claim().submittedOn(),
                line.age(today),
                Ageing.of(line.age(today)).words(),
                null,
                null,
                line.standing().open().map(Money::text).orElse(null));
    }

    private static void tellOverpaid(Invocation in, Site site, List<ClaimLine> overpaid) {
        if (!overpaid.isEmpty()) {
            BigDecimal sum =
                    Money.sum(overpaid.stream().flatMap(l -> l.overpaid().stream()).toList());
            in.tell(
                    "paid too much, in "
                            + site.currency().getCurrencyCode()
                            + ": "
                            + Money.text(sum)
                            + " for "
                            + (overpaid.size() == 1 ? "1 claim" : overpaid.size() + " claims"));
        }
    }

    private static void tellSums(Invocation in, Site site, List<ClaimLine> open, LocalDate today) {
        Map<Ageing, BigDecimal> sums = new EnumMap<>(Ageing.class);
        open.forEach(
                line ->
                        sums.merge(
                                Ageing.of(line.age(today)),
                                line.standing().waiting().orElse(BigDecimal.ZERO),
                                BigDecimal::add));
        in.tell(
                "still to be paid, in "
                        + site.currency().getCurrencyCode()
                        + ": "
                        + Arrays.stream(Ageing.values())
                                .map(
                                        age ->
                                                age.words()
                                                        + " "
                                                        + Money.text(
                                                                sums.getOrDefault(
                                                                        age, BigDecimal.ZERO)))
                                .collect(Collectors.joining(", ")));
    }
}
