package counterbench.review.store;

import static counterbench.db.generated.Tables.ACKNOWLEDGEMENTS_FACT;
import static counterbench.db.generated.Tables.CORE_TAG;

import counterbench.cores.ShipmentFacts;
import counterbench.db.Store;
import counterbench.judgement.Findings;
import counterbench.review.Component;
import counterbench.review.JobFile;
import counterbench.review.JudgeComponent;
import counterbench.review.JudgeSite;
import counterbench.review.JudgedComponent;
import counterbench.shared.Site;
import counterbench.stock.Account;
import counterbench.stock.Ledger;
import counterbench.stock.Move;
import counterbench.stock.StoreTimeline;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.function.LongConsumer;
import org.jooq.Condition;
import org.jooq.DSLContext;

/** Judges all of a site or a part of it, and sorts what is found by where it is kept. */
final class Judging {
    private static final int MOST_JOBS_OF_A_PART = 2_000;

    private final Store store;
    private final Site site;
    private final Instant asOf;
    private final LongConsumer progress;
    private final Outcome outcome;
    private final Consumer<JudgedComponent> after;
    private final List<Move> storeMoves = new ArrayList<>();
    private final Set<String> doubtful = new TreeSet<>();
    private long judgedJobs;

    /**
     * @param outcome takes what is found
     * @param progress is told how many jobs have been judged
     */
    Judging(Store store, Site site, Instant asOf, Outcome outcome, LongConsumer progress) {
        this(store, site, asOf, outcome, judged -> {}, progress);
    }

    /**
     * @param after is given each component once its findings were taken
     */
    Judging(
            Store store,
            Site site,
            Instant asOf,
            Outcome outcome,
            Consumer<JudgedComponent> after,
            LongConsumer progress) {
        this.store = store;
        this.site = site;
        this.asOf = asOf;
        this.outcome = outcome;
        this.after = after;
        this.progress = progress;
    }

    long judgedJobs() {
        return judgedJobs;
    }

    /** Judges everything as of the moment and as known now. */
    void all() {
        try (SiteScan scan = new SiteScan(store, site, asOf, ReviewSite.NEWEST)) {
            all(scan);
        }
    }

    /** Judges everything that a scan gives. */
    void all(SiteScan scan) {
        begin();
        outcome.replaceAll();
        JudgeComponent judge = new JudgeComponent(site, scan.terms(), asOf);
        scan.all(judge::judge, this::take);
        storeMoves.addAll(Ledger.of(scan.storeOnly()).moves());
        StoreTimeline.ofAll(storeMoves, scan.looseCounts()).values().forEach(this::takePart);
        credits(scan);
        doubtful.addAll(scan.shipmentsWithUnknownCores());
        shipments(scan, doubtful);
        scan.nextSiteFact().ifPresent(moment -> outcome.changesAt(0, moment));
    }

    private void begin() {
        storeMoves.clear();
        doubtful.clear();
        judgedJobs = 0;
    }

    private void take(JudgedComponent judged) {
        storeMoves.addAll(
                judged.ledger().moves().stream().filter(m -> m.touches(Account.STORE)).toList());
        doubtful.addAll(judged.doubtfulShipments());
        Component component = judged.component();
        if (component.jobs().isEmpty()) {
            takeLooseKit(judged);
        } else {
            takeJobs(judged);
        }
        after.accept(judged);
    }

    private void takeJobs(JudgedComponent judged) {
        Component component = judged.component();
        int first = component.jobs().get(0).no();
        for (JobFile file : component.jobs()) {
            outcome.replaceJob(file.no());
            outcome.add(file.no(), judged.findings().getOrDefault(file.name(), List.of()));
        }
        outcome.add(first, judged.ofKits());
        judged.changesAt().ifPresent(moment -> outcome.changesAt(first, moment));
        judgedJobs += component.jobs().size();
        progress.accept(judgedJobs);
    }

    private void takeLooseKit(JudgedComponent judged) {
        Component component = judged.component();
        component.kits().forEach(kit -> outcome.add("kit:" + kit, judged.ofKits()));
        judged.changesAt().ifPresent(moment -> outcome.changesAt(0, moment));
    }

    private void takePart(StoreTimeline timeline) {
        Findings findings = new Findings();
        JudgeSite.store(site, List.of(timeline), findings);
        outcome.add("part:" + timeline.part(), findings.found());
    }

    private void credits(SiteScan scan) {
        Findings findings = new Findings();
        scan.eachCreditOfNoClaim(credit -> JudgeSite.credit(credit, findings));
        outcome.add("credits", findings.found());
    }

    private void shipments(SiteScan scan, Collection<String> names) {
        for (ShipmentFacts facts : scan.shipments(names)) {
            Findings findings = new Findings();
            JudgeSite.shipment(facts, findings);
            outcome.add("shipment:" + facts.shipment(), findings.found());
        }
    }

    /**
     * Judges some jobs, and what else was touched.
     *
     * @return false if so many jobs share a touched part that all should be judged
     */
    boolean some(Set<Integer> dirty, TouchedThings touched) {
        begin();
        Set<Integer> ofParts =
                store.read(sql -> JobsOfParts.touching(sql, site.no(), touched.names("part")));
        if (ofParts.size() > MOST_JOBS_OF_A_PART) {
            return false;
        }
        Set<Integer> wanted = new TreeSet<>(dirty);
        wanted.addAll(ofParts);
        try (SiteScan scan = SiteScan.ofJobs(store, site, asOf, wanted)) {
            JudgeComponent judge = new JudgeComponent(site, scan.terms(), asOf);
            wanted.forEach(outcome::replaceJob);
            scan.of(wanted, c -> take(judge.judge(c)));
            someParts(scan, touched.names("part"));
            looseKits(scan, judge, touched.names("kit"));
            if (!touched.names("credit").isEmpty() || !touched.names("claim").isEmpty()) {
                outcome.replaceSection("credits");
                credits(scan);
            }
            someShipments(scan, touched);
        }
        return true;
    }

    private void someParts(SiteScan scan, Set<String> parts) {
        if (parts.isEmpty()) {
            return;
        }
        parts.forEach(part -> outcome.replaceSection("part:" + part));
        storeMoves.addAll(Ledger.of(scan.storeOnly()).moves());
        StoreTimeline.ofAll(storeMoves, scan.looseCounts()).values().stream()
                .filter(timeline -> parts.contains(timeline.part()))
                .forEach(this::takePart);
    }

    private void looseKits(SiteScan scan, JudgeComponent judge, Set<String> kits) {
        kits.forEach(kit -> outcome.replaceSection("kit:" + kit));
        scan.looseKits(kits, c -> take(judge.judge(c)));
    }

    private void someShipments(SiteScan scan, TouchedThings touched) {
        Set<String> shipments = new TreeSet<>(touched.names("shipment"));
        shipments.addAll(doubtful);
        touched.names("core").forEach(core -> shipments.addAll(shipmentsNaming(scan.sql(), core)));
        shipments.forEach(s -> outcome.replaceSection("shipment:" + s));
        shipments(scan, shipments);
    }

    private Set<String> shipmentsNaming(DSLContext sql, String core) {
        List<String> serials =
                sql.select(CORE_TAG.SERIAL)
                        .from(CORE_TAG)
                        .where(CORE_TAG.SITE_NO.eq((short) site.no()), CORE_TAG.CORE.eq(core))
                        .fetch(CORE_TAG.SERIAL);
        Set<String> shipments = new TreeSet<>(naming(sql, ACKNOWLEDGEMENTS_FACT.CORE.eq(core)));
        serials.forEach(
                serial -> shipments.addAll(naming(sql, ACKNOWLEDGEMENTS_FACT.SERIAL.eq(serial))));
        return shipments;
    }

    private List<String> naming(DSLContext sql, Condition which) {
        return sql.select(ACKNOWLEDGEMENTS_FACT.SHIPMENT)
                .from(ACKNOWLEDGEMENTS_FACT)
                .where(ACKNOWLEDGEMENTS_FACT.SITE_NO.eq((short) site.no()).and(which))
                .fetch(ACKNOWLEDGEMENTS_FACT.SHIPMENT);
    }
}
