package counterbench.shell.campaign;

import counterbench.campaign.ClaimTerms;
import counterbench.campaign.Condition;
import counterbench.campaign.CoreTerms;
import counterbench.campaign.KitLine;
import counterbench.campaign.Step;
import counterbench.campaign.StepText;
import counterbench.shared.Minutes;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Single terms of a pack, in words. */
public final class TermsText {
    private TermsText() {}

    /** A content line of a kit. */
    public static String of(KitLine line) {
        List<String> words = new ArrayList<>();
        words.add(line.quantity() + unit(line) + " " + line.part() + " " + line.name());
        addIf(words, !line.atLeast().equals(line.quantity()), "at least " + line.atLeast());
        addIf(words, line.singleUse(), "new each time");
        addIf(words, line.matched(), "matched");
        addIf(words, line.shelfLife(), "shelf life");
        addIf(words, line.onCore(), "goes on the core");
        addIf(words, !line.replaces().isEmpty(), "replaces " + String.join(", ", line.replaces()));
        return String.join(", ", words) + when(line.when());
    }

    private static String unit(KitLine line) {
        return line.unit().isMeasured() ? " " + line.unit().word() : "";
    }

    private static void addIf(List<String> words, boolean holds, String word) {
        if (holds) {
            words.add(word);
        }
    }

    /** A step with what it asks. */
    public static String of(Step step) {
        String asked = StepText.asked(step);
        return step.what() + when(step.when()) + (asked.isEmpty() ? "" : ": " + asked);
    }

    /** What is asked of a core, and what it costs until it is accepted, term by term. */
    public static List<String> of(CoreTerms core) {
        List<String> words = new ArrayList<>();
        words.add(
                "drain at least "
                        + Minutes.text(core.drainMinutes())
                        + ", then "
                        + core.plugs()
                        + " plugs");
        if (core.packaging() != null) {
            words.add("packaging: " + core.packaging());
        }
        if (core.returnWithinDays() != null) {
            words.add("ship within " + core.returnWithinDays() + " days of completion");
        }
        words.add("charge until accepted: " + core.charge().toPlainString());
        return words;
    }

    /** What a claim may ask for, term by term. */
    public static List<String> amounts(ClaimTerms claim) {
        List<String> words = new ArrayList<>();
        claim.operations().forEach(operation -> words.add(of(operation)));
        words.add("parts allowance " + plain(claim.partsAllowancePercent()) + " %");
        return words;
    }

    private static String of(ClaimTerms.Operation operation) {
        return "labour "
                + operation.operation()
                + ", "
                + plain(operation.hours())
                + " hours"
                + when(operation.when());
    }

    private static String plain(BigDecimal value) {
        BigDecimal bare = value.stripTrailingZeros();
        return (bare.scale() < 0 ? bare.setScale(0) : bare).toPlainString();
    }

    /** Until when a claim must be submitted, if that is limited. */
    public static Optional<String> limit(ClaimTerms claim) {
        return Optional.ofNullable(claim.submitWithinDays())
                .map(days -> "submit within " + days + " days of completion");
    }

    /** What the cores must have reached. */
    public static String needs(ClaimTerms claim) {
        return "needs: " + claim.needs().word();
    }

    static String when(Condition condition) {
        return condition.answers().isEmpty()
                ? ""
                : condition.answers().entrySet().stream()
                        .map(e -> e.getKey() + " " + e.getValue())
                        .collect(Collectors.joining(", ", " (", " only)"));
    }
}
