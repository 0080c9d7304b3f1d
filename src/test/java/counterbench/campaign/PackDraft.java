package counterbench.campaign;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Builds packs for tests: an invented campaign with what the test puts into it. */
public final class PackDraft {
    public static final String CAMPAIGN = "QM-26-014";

    private final List<KitTerms> kits = new ArrayList<>();
    private final List<Step> steps = new ArrayList<>();
    private final List<CoreTerms> cores = new ArrayList<>();
    private @Nullable ClaimTerms claim;
    private boolean checkDigit = true;

    /** Adds a kit that every job needs once. */
    public PackDraft kit(String part, LineDraft... lines) {
        return kit(part, 1, Map.of(), lines);
    }

    /** Adds a kit that a job needs so often, on vehicles with these answers. */
    public PackDraft kit(String part, int quantity, Map<String, String> when, LineDraft... lines) {
        List<KitLine> contents = Arrays.stream(lines).map(LineDraft::line).toList();
        kits.add(new KitTerms(part, quantity, new Condition(when), contents));
        return this;
    }

    public PackDraft step(StepDraft step) {
        steps.add(step.step());
        return this;
    }

    public PackDraft core(CoreTerms core) {
        cores.add(core);
        return this;
    }

    public PackDraft claim(ClaimTerms terms) {
        claim = terms;
        return this;
    }

    public PackDraft withoutCheckDigit() {
        checkDigit = false;
        return this;
    }

    public Pack pack() {
        return new Pack(
                CAMPAIGN,
                "Transfer pump and metering bolt",
                "A",
                LocalDate.parse("2026-02-02"),
                checkDigit,
                new TreeMap<>(Map.of("transmission", List.of("automatic", "manual"))),
                kits,
                List.of(),
                steps,
                cores,
                claim);
    }
}
