package counterbench.stock.rules;

import counterbench.judgement.Finding;
import counterbench.judgement.Findings;
import counterbench.judgement.Judge;
import counterbench.judgement.Rule;
import counterbench.judgement.Subject;
import counterbench.judgement.SubjectKind;
import counterbench.shared.Site;
import counterbench.stock.CountDifference;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What was counted is not what the book says. One finding for each account and part that names all
 * counts which differ, in the month of the latest: a new difference opens a settled one again.
 */
public final class CountDiffers implements Judge<StockFacts> {
    private static final Comparator<CountDifference> BY_TIME =
            Comparator.comparing(CountDifference::at).thenComparing(CountDifference::fact);

    @Override
    public Rule rule() {
        return Rule.COUNT_DIFFERENCE;
    }

    @Override
    public void judge(StockFacts facts, Findings findings) {
        Map<String, List<CountDifference>> bySubject = new TreeMap<>();
        for (CountDifference d : facts.differences()) {
            bySubject.computeIfAbsent(d.account() + " " + d.part(), s -> new ArrayList<>()).add(d);
        }
        bySubject.values().forEach(all -> findings.add(finding(facts.site(), all)));
    }

    private Finding finding(Site site, List<CountDifference> unsorted) {
        List<CountDifference> all = unsorted.stream().sorted(BY_TIME).toList();
        CountDifference last = all.get(all.size() - 1);
        String account = last.account().toString();
        String what = last.part() == null ? account : account + ", part " + last.part();
        return new Finding(
                rule(),
                site.site(),
                null,
                Subject.ofPart(SubjectKind.ACCOUNT, account, last.part()),
                site.monthOf(last.at()),
                what + ": " + joined(all, d -> inWords(site, d)),
                joined(all, CountDiffers::evidence));
    }

    private static String joined(
            List<CountDifference> all, java.util.function.Function<CountDifference, String> words) {
        return all.stream().map(words).collect(Collectors.joining("; "));
    }

    private static String inWords(Site site, CountDifference d) {
        return String.format(
                "counted %s on %s where the book says %s (%s)",
                d.counted(), site.dayOf(d.at()), d.book(), signed(d));
    }

    private static String signed(CountDifference d) {
        return d.difference().isPositive() ? "+" + d.difference() : d.difference().toString();
    }

    private static String evidence(CountDifference d) {
        return String.format("counted %s, book %s at %s", d.counted(), d.book(), d.at());
    }
}
