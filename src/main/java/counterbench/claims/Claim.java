package counterbench.claims;

import counterbench.shared.Address;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What the workshop asks for a job.
 *
 * @param currency what its amounts are counted in; the site's currency if not said
 * @param fallen the row that first says that it was withdrawn or denied; null where none does
 * @param replaces the claim that this one takes the place of, if it says so
 */
public record Claim(
        Address address,
        String claim,
        String job,
        LocalDate submittedOn,
        @Nullable BigDecimal labourHours,
        @Nullable BigDecimal labourAmount,
        @Nullable BigDecimal partsAmount,
        @Nullable BigDecimal coreCharge,
        @Nullable LocalDate withdrawnOn,
        @Nullable LocalDate deniedOn,
        @Nullable String reason,
        @Nullable String replaces,
        @Nullable String currency,
        @Nullable Address fallen) {
    /** How claims stand: by day of submission, then by row. */
    public static final Comparator<Claim> ORDER =
            Comparator.comparing(Claim::submittedOn).thenComparing(Claim::address);

    public Claim {
        Objects.requireNonNull(address, "address");
        Objects.requireNonNull(claim, "claim");
        Objects.requireNonNull(job, "job");
        Objects.requireNonNull(submittedOn, "submittedOn");
    }

    /** One in the site's currency. */
    public Claim(
            Address address,
            String claim,
            String job,
            LocalDate submittedOn,
            @Nullable BigDecimal labourHours,
            @Nullable BigDecimal labourAmount,
            @Nullable BigDecimal partsAmount,
            @Nullable BigDecimal coreCharge,
            @Nullable LocalDate withdrawnOn,
            @Nullable LocalDate deniedOn,
            @Nullable String reason,
            @Nullable String replaces) {
        this(
                address,
                claim,
                job,
                submittedOn,
                labourHours,
                labourAmount,
                partsAmount,
                coreCharge,
                withdrawnOn,
                deniedOn,
                reason,
                replaces,
                null,
                null);
    }

    /** The same with the row that says that it stands no more. */
    public Claim fallenBy(@Nullable Address row) {
        return new Claim(
                address,
                claim,
                job,
                submittedOn,
                labourHours,
                labourAmount,
                partsAmount,
                coreCharge,
                withdrawnOn,
                deniedOn,
                reason,
                replaces,
                currency,
                row);
    }

    /**
     * What the claim asks in all: labour, parts and core charge, as far as it states them; none
     * where it states no amount.
     */
    public Optional<BigDecimal> total() {
        return Stream.of(labourAmount, partsAmount, coreCharge)
                .filter(Objects::nonNull)
                .reduce(BigDecimal::add);
    }

    /** The day from whose start it no longer stands: withdrawn or denied, if it is to be. */
    public Optional<LocalDate> fallsOn() {
        return Stream.of(withdrawnOn, deniedOn)
                .filter(Objects::nonNull)
                .min(Comparator.naturalOrder());
    }
}
