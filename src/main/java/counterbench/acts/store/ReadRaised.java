package counterbench.acts.store;

import static counterbench.db.generated.Tables.MATCHES_FACT;

import counterbench.acts.Foresight;
import counterbench.acts.Named;
import counterbench.acts.NamedByFacts;
import counterbench.db.OneByOne;
import counterbench.db.Store;
import counterbench.journal.Entry;
import counterbench.journal.store.EntryReader;
import counterbench.journal.store.JournalBook;
import counterbench.journal.store.ReversedFacts;
import counterbench.judgement.Finding;
import counterbench.judgement.Findings;
import counterbench.review.JudgeSite;
import counterbench.review.store.SiteScan;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * Which findings a reversal has raised. It is read once the reversal is recorded: what was known
 * just before it can be read at any time, so nobody waits for that at a locked head.
 */
public final class ReadRaised {
    /** Of more facts than these, too much is concerned to be looked up while somebody waits. */
    private static final int MOST_FACTS = 200;

    private final Store store;
    private final Site site;

    public ReadRaised(Store store, Site site) {
        this.store = store;
        this.site = site;
    }

    /**
     * Those that there were not before, or will be once their jobs are completed; empty where so
     * much is concerned that the review should say it.
     */
    public Optional<List<Finding>> by(Entry reversal) {
        ReversedFacts facts = ReversedFacts.by(reversal, store);
        if (facts.count() > MOST_FACTS) {
            return Optional.empty();
        }
        NamedByFacts names = names(reversal, facts);
        if (names.concernAll()) {
            return Optional.empty();
        }
        return Optional.of(names.isNothing() ? List.of() : raised(reversal, names));
    }

    private NamedByFacts names(Entry reversal, ReversedFacts facts) {
        JournalBook book = new JournalBook(store);
        long number = Objects.requireNonNull(reversal.reverses(), "no reversal");
        NamedByFacts names = new NamedByFacts();
        book.facts(
                book.find(site, number).orElseThrow().entry(),
                facts.range(),
                line ->
                        line.reversedBy()
                                .filter(by -> by == reversal.number())
                                .ifPresent(by -> names.add(line.row())));
        return names;
    }

    private List<Finding> raised(Entry reversal, NamedByFacts names) {
        Instant now =
                store.read(sql -> EntryReader.latestRecording(sql, site.no()))
                        .orElse(reversal.recordedAt());
        Named named = withClaims(names);
        return Foresight.before(found(now, reversal.number() - 1, named, names))
                .raised(found(now, reversal.number(), named, names));
    }

    private List<Finding> found(Instant now, long known, Named named, NamedByFacts names) {
        List<Finding> found =
                new ArrayList<>(
                        Foresight.ahead(new ReadSituation(store).run(site, now, known, named)));
        if (!names.credits().isEmpty()) {
            found.addAll(strays(now, known));
        }
        return found;
    }

    /** On the lines of remittances that belong to no claim. */
    private List<Finding> strays(Instant now, long known) {
        Findings findings = new Findings();
        try (SiteScan scan = SiteScan.ofJobs(store, site, now, known, Set.of())) {
            scan.eachCreditOfNoClaim(credit -> JudgeSite.credit(credit, findings));
        }
        return findings.found();
    }

    /** With the jobs of the claims that are named, or that a named line was matched to. */
    private Named withClaims(NamedByFacts names) {
        Set<String> claims = new HashSet<>(names.claims());
        claims.addAll(OneByOne.fetch(names.credits(), this::matchedTo));
        ReadClaims read = new ReadClaims(store);
        return names.named()
                .withJobs(
                        claims.stream()
                                .flatMap(claim -> read.jobOf(site, claim).stream())
                                .toList());
    }

    private List<String> matchedTo(String remittance) {
        return store.read(
                sql ->
                        sql.selectDistinct(MATCHES_FACT.CLAIM)
                                .from(MATCHES_FACT)
                                .where(
                                        MATCHES_FACT.SITE_NO.eq((short) site.no()),
                                        MATCHES_FACT.REMITTANCE.eq(remittance))
                                .fetch(MATCHES_FACT.CLAIM));
    }
}
