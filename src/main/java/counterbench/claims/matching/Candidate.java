package counterbench.claims.matching;

import counterbench.claims.Claim;
import counterbench.claims.Credit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A claim that a credit may belong to.
 *
 * @param vin of its job's vehicle
 * @param cores of its job
 * @param credited what came for it already, core credits apart, by lines that need no match
 */
public record Candidate(Claim claim, @Nullable String vin, List<Core> cores, BigDecimal credited) {
    public Candidate {
        Objects.requireNonNull(claim, "claim");
        cores = List.copyOf(cores);
        Objects.requireNonNull(credited, "credited");
    }

    /** A removed unit by its names. */
    public record Core(String tag, @Nullable String serial) {}

    /** Its number. */
    public String name() {
        return claim.claim();
    }

    /** What is still to come; empty where the claim states no amount. */
    public Optional<BigDecimal> open() {
        return claim.total().map(total -> total.subtract(credited));
    }

    /** Whether a credit may still be for it: it is no payment, or the claim is not paid in full. */
    boolean mayTake(Credit credit) {
        return credit.kind() == Credit.Kind.CORE
                || credit.amount().signum() < 0
                || open().filter(open -> open.signum() <= 0).isEmpty();
    }

    /**
     * Whether it was there when a credit was paid: what was paid before a claim was submitted does
     * not pay it. A core's charge may be cleared before its job is claimed.
     */
    boolean isThereFor(Credit credit) {
        return credit.kind() == Credit.Kind.CORE || !credit.paidOn().isBefore(claim.submittedOn());
    }

    /** Whether a credit names it, its vehicle or one of its cores, to the letter. */
    boolean isNamedBy(Credit credit) {
        return same(credit.claim(), name())
                || same(credit.vin(), vin)
                || cores.stream()
                        .anyMatch(
                                core ->
                                        same(credit.core(), core.tag())
                                                || same(credit.serial(), core.serial()));
    }

    private static boolean same(@Nullable String said, @Nullable String known) {
        return said != null && known != null && Slips.plain(said).equals(Slips.plain(known));
    }

    /** The same when so much more has come for it. */
    Candidate withMore(BigDecimal more) {
        return new Candidate(claim, vin, cores, credited.add(more));
    }

    /** Whether it was neither withdrawn nor denied. */
    boolean stands() {
        return claim.fallsOn().isEmpty();
    }

    /** Whether an amount below zero takes back part of what came for it, not just what it asks. */
    boolean isTakenBackInPartBy(BigDecimal amount) {
        return amount.signum() < 0
                && credited.add(amount).signum() >= 0
                && claim.total().filter(total -> total.add(amount).signum() == 0).isEmpty();
    }

    /** Whether an amount is one of its lines, or all of them but one. */
    boolean hasLine(BigDecimal amount) {
        Optional<BigDecimal> total = claim.total();
        return Stream.of(claim.labourAmount(), claim.partsAmount(), claim.coreCharge())
                .filter(Objects::nonNull)
                .filter(line -> line.signum() != 0)
                .anyMatch(
                        line ->
                                line.compareTo(amount) == 0
                                        || total.get().subtract(line).compareTo(amount) == 0);
    }
}
