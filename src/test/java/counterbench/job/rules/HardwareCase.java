package counterbench.job.rules;

import counterbench.campaign.KitTerms;
import counterbench.campaign.Pack;
import counterbench.campaign.PackDraft;
import counterbench.campaign.PartUnit;
import counterbench.job.JudgedJob;
import counterbench.job.Requirements;
import counterbench.job.TestJobs;
import counterbench.judgement.Finding;
import counterbench.judgement.Findings;
import counterbench.judgement.Judge;
import counterbench.shared.Address;
import counterbench.shared.Quantity;
import counterbench.stock.Issue;
import counterbench.stock.Kit;
import counterbench.stock.PartQuantity;
import counterbench.stock.Use;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One job's hardware for tests: what was issued and fitted, in the order of the calls, half past
 * eight unless said otherwise.
 */
final class HardwareCase {
    private final Pack pack;
    private final List<Issue> issues = new ArrayList<>();
    private final List<Use> uses = new ArrayList<>();
    private final Map<String, Kit> kits = new HashMap<>();
    private final Map<String, KitTerms> contents = new HashMap<>();
    private final Map<PartLot, LocalDate> lots = new HashMap<>();
    private final Map<String, Quantity> bench = new HashMap<>();
    private final Map<String, PartUnit> units = new HashMap<>();
    private Map<String, String> attributes = Map.of();
    private JudgedJob judged = TestJobs.completed();
    private Instant now = TestJobs.at("2026-03-05T08:30");
    private int line = 1;

    HardwareCase(PackDraft pack) {
        this.pack = pack.pack();
    }

    HardwareCase on(JudgedJob job) {
        judged = job;
        return this;
    }

    HardwareCase vehicle(String attribute, String answer) {
        attributes = Map.of(attribute, answer);
        return this;
    }

    /** What follows happens at this time of the wall clock. */
    HardwareCase at(String local) {
        now = TestJobs.at(local);
        return this;
    }

    /** A kit came, with the contents of the pack's first kit, less what was missing. */
    HardwareCase received(String kit, @Nullable String expiresOn, PartQuantity... missing) {
        KitTerms terms = pack.kits().get(0);
        LocalDate last = expiresOn == null ? null : LocalDate.parse(expiresOn);
        List<PartQuantity> without = Arrays.asList(missing);
        kits.put(kit, new Kit(next(), kit, terms.part(), now, null, last, null, null, without));
        contents.put(kit, terms);
        return this;
    }

    HardwareCase issued(String kit) {
        issues.add(new Issue(next(), "J-118", now, kit, null, null, null));
        return this;
    }

    HardwareCase issuedLoose(String part, @Nullable String lot) {
        issues.add(new Issue(next(), "J-118", now, null, part, Quantity.ONE, lot));
        return this;
    }

    HardwareCase fitted(String part, String quantity) {
        return use(part, quantity, Use.Condition.NEW, null, null, null);
    }

    HardwareCase fittedFrom(String kit, String part) {
        return use(part, "1", Use.Condition.NEW, kit, null, null);
    }

    HardwareCase fittedOfLot(String lot, String part) {
        return use(part, "1", Use.Condition.NEW, null, lot, null);
    }

    HardwareCase refitted(String part, String quantity) {
        return use(part, quantity, Use.Condition.REUSED, null, null, null);
    }

    HardwareCase newTakenOff(String part, String quantity, @Nullable String kit) {
        return use(part, quantity, Use.Condition.TAKEN_OFF, kit, null, Use.Condition.NEW);
    }

    HardwareCase oldTakenOff(String part, String quantity) {
        return use(part, quantity, Use.Condition.TAKEN_OFF, null, null, Use.Condition.REUSED);
    }

    HardwareCase use(
            String part,
            String quantity,
            Use.Condition condition,
            @Nullable String kit,
            @Nullable String lot,
            Use.@Nullable Condition was) {
        uses.add(
                new Use(
                        next(),
                        "J-118",
                        part,
                        Quantity.of(quantity),
                        condition,
                        now,
                        kit,
                        lot,
                        null,
                        was,
                        null,
                        null));
        return this;
    }

    HardwareCase lot(String part, String lot, String expiresOn) {
        lots.put(new PartLot(part, lot), LocalDate.parse(expiresOn));
        return this;
    }

    HardwareCase onBench(String part, String quantity) {
        bench.put(part, Quantity.of(quantity));
        return this;
    }

    HardwareCase unit(String part, PartUnit unit) {
        units.put(part, unit);
        return this;
    }

    List<Finding> findings(Judge<HardwareFacts> judge) {
        JobGoods goods = new JobGoods(issues, uses, kits, contents, lots, bench, units);
        HardwareFacts facts = new HardwareFacts(judged, Requirements.of(pack, attributes), goods);
        Findings findings = new Findings();
        judge.judge(facts, findings);
        return findings.found();
    }

    /** The parts of what is found. */
    List<String> parts(Judge<HardwareFacts> judge) {
        return findings(judge).stream().map(f -> String.valueOf(f.subject().part())).toList();
    }

    private Address next() {
        return new Address(1, line++);
    }
}
