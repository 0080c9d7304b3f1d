package counterbench.stock.rules;

import counterbench.judgement.Finding;
import counterbench.judgement.Findings;
import counterbench.judgement.Judge;
import counterbench.judgement.Rule;
import counterbench.judgement.Subject;
import counterbench.judgement.SubjectKind;
import counterbench.shared.Address;
import counterbench.shared.Site;
import counterbench.stock.Count;
import counterbench.stock.StockEvent;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * A stock event or a count names a kit that the site never received. One finding for each such kit;
 * it has no month, since a kit's month is that of its receipt. Issues and uses are the job rules'
 * to judge.
 */
public final class KitUnknown implements Judge<StockFacts> {
    private static final Comparator<Row> BY_TIME =
            Comparator.comparing(Row::at).thenComparing(Row::fact);

    /** A row that names a kit. */
    private record Row(String act, Instant at, Address fact) {}

    @Override
    public Rule rule() {
        return Rule.KIT_UNKNOWN;
    }

    @Override
    public void judge(StockFacts facts, Findings findings) {
        Map<String, List<Row>> unknown = new TreeMap<>();
        for (StockEvent e : facts.events()) {
            note(unknown, facts, e.kit(), new Row(e.kind().word(), e.at(), e.address()));
        }
        for (Count c : facts.counts()) {
            note(unknown, facts, c.kit(), new Row("counted", c.countedAt(), c.address()));
        }
        unknown.forEach((kit, rows) -> findings.add(finding(facts.site(), kit, rows)));
    }

    private static void note(
            Map<String, List<Row>> unknown, StockFacts facts, @Nullable String kit, Row row) {
        if (kit != null && !facts.knownKits().contains(kit)) {
            unknown.computeIfAbsent(kit, k -> new ArrayList<>()).add(row);
        }
    }

    private Finding finding(Site site, String kit, List<Row> unsorted) {
        List<Row> rows = unsorted.stream().sorted(BY_TIME).toList();
        String acts = String.join(", ", rows.stream().map(Row::act).toList());
        return new Finding(
                rule(),
                site.site(),
                null,
                Subject.of(SubjectKind.KIT, kit),
                null,
                String.format(
                        "kit %s was never received at %s, but the paper says it was: %s",
                        kit, site.site(), acts),
                "never received; " + acts);
    }
}
