package counterbench.month.store;

import counterbench.db.Store;
import counterbench.facts.Canonical;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.journal.Draft;
import counterbench.journal.Entry;
import counterbench.journal.SealedMonths;
import counterbench.journal.store.EntryReader;
import counterbench.journal.store.JooqJournal;
import counterbench.journal.store.SealReader;
import counterbench.people.Person;
import counterbench.people.Role;
import counterbench.people.store.JooqPeople;
import counterbench.review.StatedFinding;
import counterbench.shared.Problem;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import java.time.Instant;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;

/** Closes a month of a site, where its findings of severity stop and fix are settled or gone. */
public final class SealMonth {
    /** The kind of the entries that seals make, and the gate that an override opens. */
    public static final String GATE = "seal";

    private static final int TOLD = 20;

    private final Store store;

    public SealMonth(Store store) {
        this.store = store;
    }

    /**
     * Who seals what.
     *
     * @param override why the lead seals over open findings; null where nobody does
     * @param line the command as it was typed
     */
    public record Request(
            Site site,
            YearMonth month,
            Person person,
            Instant now,
            @Nullable String override,
            String line) {
        String asked() {
            return "seal \"" + month + "\"";
        }
    }

    /**
     * Seals it.
     *
     * @throws Refused if it is not over, is sealed already, comes before its turn, or has open
     *     findings
     */
    public Entry run(Request request) {
        Site site = request.site();
        Draft draft = Draft.of(site, request.now(), request.person().name(), GATE, request.line());
        while (true) {
            Looked looked = look(request);
            try {
                return new JooqJournal(store).record(draft, sql -> facts(sql, request, looked));
            } catch (Overtaken e) {
                // Another shell recorded meanwhile: what was judged no longer holds.
            }
        }
    }

    /**
     * What the month looks like, judged before the head is locked, so that nobody waits for it.
     *
     * @param known the newest entry then
     */
    private record Looked(long known, Instant at, List<StatedFinding> open) {}

    private static final class Overtaken extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    private Looked look(Request request) {
        Site site = request.site();
        long known = store.read(sql -> newest(sql, site));
        Instant at =
                Canonical.cut(
                        store.read(sql -> EntryReader.latestRecording(sql, site.no()))
                                .filter(request.now()::isBefore)
                                .orElse(request.now()));
        request.person().mustActAs(Role.LEAD, request.asked());
        SealedMonths sealed = store.read(sql -> SealReader.of(sql, site.no()));
        refuseUnlessOpen(request, sealed, at);
        refuseUnlessItsTurn(request, sealed, store.read(sql -> FirstMonth.of(sql, site)));
        List<StatedFinding> open =
                new MonthFindings(store, site)
                        .ofOpen(request.month(), at).stream()
                                .filter(StatedFinding::mustBeSettled)
                                .toList();
        return new Looked(known, at, open);
    }

    private static long newest(DSLContext sql, Site site) {
        return EntryReader.newest(sql, site.no(), 1).stream()
                .mapToLong(Entry::number)
                .findFirst()
                .orElse(0);
    }

    private static List<FactRow> facts(DSLContext sql, Request request, Looked looked) {
        JooqPeople.mustActAsOneOf(sql, request.person(), EnumSet.of(Role.LEAD), GATE);
        if (newest(sql, request.site()) != looked.known()) {
            throw new Overtaken();
        }
        List<FactRow> rows = new ArrayList<>();
        if (!looked.open().isEmpty()) {
            rows.add(opened(request, looked.open(), looked.at()));
        }
        rows.add(
                FactRow.of(FactKind.SEALS)
                        .with("sealed_month", request.month().toString())
                        .with("at", looked.at()));
        return rows;
    }

    private static void refuseUnlessOpen(Request request, SealedMonths sealed, Instant at) {
        YearMonth month = request.month();
        Site site = request.site();
        if (at.isBefore(site.endOf(month.atEndOfMonth()))) {
            throw new Refused(
                    request.asked(), "the month is not over", "seal it when its last day is over");
        }
        sealed.of(month)
                .ifPresent(
                        seal -> {
                            throw new Refused(
                                    request.asked(),
                                    "entry " + seal.entry() + " has sealed it",
                                    "nothing is left to do");
                        });
    }

    private static void refuseUnlessItsTurn(
            Request request, SealedMonths sealed, Optional<YearMonth> firstOfAll) {
        YearMonth month = request.month();
        Optional<YearMonth> first =
                sealed.last().map(seal -> seal.month().plusMonths(1)).or(() -> firstOfAll);
        first.filter(month::isAfter)
                .ifPresent(
                        earlier -> {
                            throw new Refused(
                                    request.asked(),
                                    earlier + " is still open, and months are sealed in order",
                                    "seal " + earlier + " first");
                        });
        sealed.last()
                .filter(seal -> seal.month().isAfter(month))
                .ifPresent(
                        seal -> {
                            throw new Refused(
                                    request.asked(),
                                    "it lies before " + seal.month() + ", which is sealed",
                                    "nothing is booked in it any more");
                        });
    }

    private static FactRow opened(Request request, List<StatedFinding> open, Instant at) {
        if (request.override() == null) {
            throw new Refused(problems(request, open));
        }
        String findings =
                open.stream()
                        .map(f -> f.finding().rule().word() + " " + f.id())
                        .collect(Collectors.joining(", "));
        return FactRow.of(FactKind.OVERRIDES)
                .with("gate", GATE)
                .with("subject", request.month().toString())
                .with("at", at)
                .with("reason", request.override())
                .with("findings", findings.substring(0, Math.min(findings.length(), 1000)));
    }

    /** The first few, and how many more there are. */
    private static List<Problem> problems(Request request, List<StatedFinding> open) {
        List<Problem> told = new ArrayList<>();
        open.stream().limit(TOLD).forEach(f -> told.add(problem(request, f)));
        if (open.size() > TOLD) {
            told.add(
                    new Problem(
                            request.asked(),
                            "so much is open that only the first %d of %d are told"
                                    .formatted(TOLD, open.size()),
                            "review --month %s --state open lists all".formatted(request.month())));
        }
        return told;
    }

    private static Problem problem(Request request, StatedFinding stated) {
        return new Problem(
                request.asked(),
                stated.finding().rule().severity().word()
                        + " "
                        + stated.finding().rule().word()
                        + " is open, "
                        + stated.finding().message(),
                "put it right, or finding settle " + stated.id() + " --reason TEXT");
    }
}
