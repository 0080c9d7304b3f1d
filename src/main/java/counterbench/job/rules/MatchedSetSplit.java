package counterbench.job.rules;

import counterbench.judgement.Findings;
import counterbench.judgement.Rule;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Parts that belong together, new on the vehicle, did not come from the same kits, or one came from
 * no kit. A part of which nothing new is there is not compared. One finding for the job.
 */
public final class MatchedSetSplit extends HardwareJudge {
    public MatchedSetSplit() {
        super(Rule.MATCHED_SET_SPLIT);
    }

    @Override
    protected void judgeCompleted(HardwareFacts facts, Findings findings) {
        List<NavigableSet<String>> sets = MatchedSets.of(facts.requirements());
        if (sets.isEmpty()) {
            return;
        }
        KitsOnVehicle kits = new KitsOnVehicle(facts);
        Map<String, SortedSet<String>> split = new TreeMap<>();
        sets.stream()
                .map(parts -> kitsByPart(parts, kits))
                .filter(byPart -> isSplit(byPart.values()))
                .forEach(split::putAll);
        if (!split.isEmpty()) {
            judge(facts, split, findings);
        }
    }

    private static Map<String, SortedSet<String>> kitsByPart(
            SortedSet<String> parts, KitsOnVehicle kits) {
        Map<String, SortedSet<String>> found = new TreeMap<>();
        for (String part : parts) {
            SortedSet<String> gave = kits.kitsOf(part);
            if (!gave.isEmpty()) {
                found.put(part, gave);
            }
        }
        return found;
    }

    private static boolean isSplit(Collection<SortedSet<String>> kits) {
        return kits.stream().distinct().count() > 1 || kits.stream().anyMatch(k -> k.contains(""));
    }

    private void judge(
            HardwareFacts facts, Map<String, SortedSet<String>> split, Findings findings) {
        String message =
                split.entrySet().stream()
                        .map(e -> facts.named(e.getKey()) + " from " + words(e.getValue()))
                        .collect(Collectors.joining("; ", "matched parts are split: ", ""));
        String evidence =
                split.entrySet().stream()
                        .map(e -> e.getKey() + " from " + words(e.getValue()))
                        .collect(Collectors.joining("; "));
        find(facts, findings, null, message, evidence);
    }

    private static String words(SortedSet<String> kits) {
        return kits.stream()
                .map(kit -> kit.isEmpty() ? "no kit" : "kit " + kit)
                .collect(Collectors.joining(" and "));
    }
}
