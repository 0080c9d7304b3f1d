package counterbench.cores;

import counterbench.campaign.Condition;
import counterbench.campaign.CoreTerms;
import counterbench.campaign.KitLine;
import counterbench.campaign.Pack;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a campaign wants back for one vehicle.
 *
 * @param pack the terms that hold for the job
 * @param attributes the vehicle's attributes; none where it is unlisted
 */
public record DueCores(Pack pack, Map<String, String> attributes) {
    public DueCores {
        Objects.requireNonNull(pack, "pack");
        attributes = Collections.unmodifiableMap(new TreeMap<>(attributes));
    }

    /** How many cores the job must return, by the lines that are known to apply. */
    public int wanted() {
        return applying(pack.cores()).mapToInt(CoreTerms::quantity).sum();
    }

    /** The terms of each core that is wanted and not among these, by the lines known to apply. */
    public List<CoreTerms> missing(Collection<CoreHistory> removed) {
        List<CoreTerms> missing = new ArrayList<>();
        applying(pack.cores())
                .forEach(line -> missing.addAll(Collections.nCopies(line.quantity(), line)));
        removed.forEach(core -> termsOf(core.part()).ifPresent(missing::remove));
        return missing;
    }

    /** What the cores that the job must return are charged with, by the lines known to apply. */
    public BigDecimal charge() {
        return applying(pack.cores())
                .map(line -> line.charge().multiply(BigDecimal.valueOf(line.quantity())))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /**
     * The terms of a core of the job: the first line that applies, of those that name its part; of
     * all lines where none names it or its part was not said. None where no such line applies, or
     * where one of them cannot be told to apply or not.
     */
    public Optional<CoreTerms> termsOf(@Nullable String part) {
        List<CoreTerms> lines = concerning(part);
        return lines.stream().anyMatch(line -> holds(line) == Condition.Holds.UNKNOWN)
                ? Optional.empty()
                : applying(lines).findFirst();
    }

    /** Whether a core of that part may be one of those wanted, by the lines that may apply. */
    public boolean mayTurnOutWanted(@Nullable String part) {
        return concerning(part).stream().anyMatch(line -> holds(line) != Condition.Holds.NO);
    }

    /** Whether a core of that part may be one of those wanted, by the lines known to apply. */
    public boolean mayBeWanted(@Nullable String part) {
        return applying(concerning(part)).findAny().isPresent();
    }

    private Stream<CoreTerms> applying(List<CoreTerms> lines) {
        return lines.stream().filter(line -> holds(line) == Condition.Holds.YES);
    }

    private List<CoreTerms> concerning(@Nullable String part) {
        List<CoreTerms> named = named(part);
        return named.isEmpty() ? pack.cores() : named;
    }

    private List<CoreTerms> named(@Nullable String part) {
        if (part == null) {
            return List.of();
        }
        String asNew = pack.line(part).map(KitLine::part).orElse(part);
        return pack.cores().stream()
                .filter(line -> line.part().equals(part) || line.part().equals(asNew))
                .toList();
    }

    private Condition.Holds holds(CoreTerms line) {
        return line.when().on(attributes);
    }
}
