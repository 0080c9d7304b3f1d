package counterbench.oracle;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** One revision of a campaign's terms, as far as rules read it. */
record Pack(
        String campaign,
        String revision,
        LocalDate inForceFrom,
        boolean checkDigit,
        List<KitItem> kits,
        List<Step> steps,
        List<CoreItem> cores,
        List<When> otherWhens,
        int submitWithinDays,
        String needs,
        Map<String, Map<String, String>> vehicles) {

    record KitItem(String part, BigDecimal quantity, When when, List<Content> contents) {}

    record Content(
            String part,
            Amount quantity,
            BigDecimal atLeast,
            boolean matched,
            boolean singleUse,
            boolean shelfLife,
            boolean onCore,
            List<String> replaces,
            When when) {}

    record Step(
            String id,
            String kind,
            List<String> after,
            int fasteners,
            Amount low,
            Amount high,
            String unit,
            String riseFrom,
            BigDecimal minutes,
            When when) {}

    record CoreItem(
            String part,
            BigDecimal quantity,
            When when,
            BigDecimal drainMinutes,
            BigDecimal plugs,
            String packaging,
            int returnWithinDays) {}

    /** The number under which a part counts against what is required: the one that replaces it. */
    String counted(String part) {
        for (KitItem kit : kits) {
            for (Content content : kit.contents()) {
                if (content.replaces().contains(part) && !content.part().equals(part)) {
                    return counted(content.part());
                }
            }
        }
        return part;
    }

    /** The content lines that count as this part. */
    List<Content> lines(String part) {
        return kits.stream()
                .flatMap(k -> k.contents().stream())
                .filter(c -> counted(c.part()).equals(counted(part)))
                .toList();
    }

    boolean onlyOnCore(String part) {
        List<Content> lines = lines(part);
        return !lines.isEmpty() && lines.stream().allMatch(Content::onCore);
    }

    Set<String> parts() {
        Set<String> parts = new LinkedHashSet<>();
        kits.forEach(k -> k.contents().forEach(c -> parts.add(c.part())));
        return parts;
    }

    List<When> whens() {
        List<When> whens = new ArrayList<>(otherWhens);
        kits.forEach(k -> whens.add(k.when()));
        kits.forEach(k -> k.contents().forEach(c -> whens.add(c.when())));
        steps.forEach(s -> whens.add(s.when()));
        cores.forEach(c -> whens.add(c.when()));
        return whens;
    }
}
