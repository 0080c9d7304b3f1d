package counterbench.job.rules;

import counterbench.stock.Issue;
import counterbench.stock.Kit;
import counterbench.stock.Use;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The last usable day of what a use took: that of the kit it came from; else of the lot that the
 * row names; else, for loose stock, of the lot that all the job's loose issues of the part name.
 */
record LastUsableDay(LocalDate day, String source) {
    static Optional<LastUsableDay> of(HardwareFacts facts, Use use) {
        Optional<Kit> kit =
                facts.source()
                        .kitOf(use)
                        .flatMap(k -> Optional.ofNullable(facts.goods().kits().get(k)));
        Optional<LastUsableDay> ofKit = kit.flatMap(LastUsableDay::ofKit);
        return ofKit.isPresent() ? ofKit : ofLot(facts, use);
    }

    private static Optional<LastUsableDay> ofKit(Kit kit) {
        return Optional.ofNullable(kit.expiresOn())
                .map(day -> new LastUsableDay(day, "kit " + kit.kit()));
    }

    private static Optional<LastUsableDay> ofLot(HardwareFacts facts, Use use) {
        String lot = use.lot() != null ? use.lot() : issuedLot(facts, use);
        if (lot == null) {
            return Optional.empty();
        }
        return Optional.ofNullable(facts.goods().lotExpiry().get(new PartLot(use.part(), lot)))
                .map(day -> new LastUsableDay(day, "lot " + lot));
    }

    private static @Nullable String issuedLot(HardwareFacts facts, Use use) {
        if (facts.source().kitOf(use).isPresent()) {
            return null;
        }
        List<Issue> loose =
                facts.goods().issues().stream().filter(i -> use.part().equals(i.part())).toList();
        String lot = loose.isEmpty() ? null : loose.get(0).lot();
        boolean same = lot != null && loose.stream().allMatch(i -> lot.equals(i.lot()));
        return same ? lot : null;
    }
}
