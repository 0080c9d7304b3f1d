package counterbench.acts.rack;

import counterbench.acts.CoreCase;
import counterbench.campaign.CoreTerms;
import counterbench.cores.CoreEvent;
import counterbench.cores.CoreFacts;
import counterbench.cores.CoreHistory;
import counterbench.cores.CoreState;
import counterbench.cores.CoreStatus;
import counterbench.cores.Placement;
import counterbench.cores.Whereabouts;
import counterbench.judgement.Finding;
import counterbench.judgement.Severity;
import counterbench.shared.Site;
import counterbench.shared.units.Weight;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One core on the living board.
 *
 * @param drained the longest drain period that counts
 * @param drainsUntil when the drain that runs will have been long enough
 * @param plugsRequired what its terms ask, where they can be told
 * @param completedOn the day on which its job was completed
 * @param shipBy the day by whose end it must be shipped
 * @param charge owed from its job's completion until it is accepted; zero where its terms cannot be
 *     told
 * @param where in which yard it lies, or to which it is on the way
 * @param weight what it weighs as it was packed
 * @param findings what is found about it and open, the heaviest first
 */
public record BoardLine(
        String core,
        String job,
        String campaign,
        CoreStatus status,
        NextStep next,
        @Nullable Duration drained,
        @Nullable Instant drainsUntil,
        int plugs,
        @Nullable Integer plugsRequired,
        @Nullable LocalDate completedOn,
        @Nullable LocalDate shipBy,
        @Nullable String shipment,
        Whereabouts where,
        @Nullable Weight weight,
        BigDecimal charge,
        List<Finding> findings) {
    /**
     * What needs a hand first: what somebody can do now stands before what drains, that before what
     * is away, that before what is done with. Within these, a core with an open stop stands first,
     * then whichever time presses first: the end of the drain of what drains, the shipping of what
     * is away (the oldest first), the day to ship by of all others (none comes last). Of equal ones
     * the dearer, then the tag; so the order is total.
     */
    public static final Comparator<BoardLine> MOST_URGENT_FIRST =
            Comparator.comparingInt(BoardLine::group)
                    .thenComparing(line -> !line.isStopped())
                    .thenComparing(
                            BoardLine::pressing, Comparator.nullsLast(Comparator.naturalOrder()))
                    .thenComparing(
                            BoardLine::shipBy, Comparator.nullsLast(Comparator.naturalOrder()))
                    .thenComparing(BoardLine::charge, Comparator.reverseOrder())
                    .thenComparing(BoardLine::core);

    public BoardLine {
        Objects.requireNonNull(core, "core");
        Objects.requireNonNull(job, "job");
        Objects.requireNonNull(campaign, "campaign");
        Objects.requireNonNull(status, "status");
        Objects.requireNonNull(next, "next");
        Objects.requireNonNull(where, "where");
        Objects.requireNonNull(charge, "charge");
        findings =
                findings.stream()
                        .sorted(
                                Comparator.comparing((Finding f) -> f.rule().severity())
                                        .thenComparing(Finding::rule))
                        .toList();
    }

    /**
     * A core as it stands.
     *
     * @param creditedAt when its charge was credited, if it was
     * @param open the open findings about it
     */
    public static BoardLine of(
            CoreCase core,
            Site site,
            Instant now,
            @Nullable Instant creditedAt,
            List<Finding> open) {
        CoreHistory history = core.core();
        CoreStatus status = CoreStatus.of(history, creditedAt);
        @Nullable CoreTerms terms = core.terms().orElse(null);
        CoreFacts facts = new CoreFacts(site, history, core.job().job(), terms, List.of(), now);
        Whereabouts where = core.where();
        boolean drains = status.state() == CoreState.DRAINING;
        return new BoardLine(
                history.core(),
                core.job().name(),
                core.job().job().campaign(),
                status,
                NextStep.of(core, status, where, hasStop(open), now),
                history.drainPeriods().longest().orElse(null),
                drains ? core.drainOver(now).orElse(null) : null,
                history.plugs(),
                terms == null ? null : terms.plugs(),
                completedOn(core, site),
                facts.shipBy().orElse(null),
                history.placement().map(Placement::shipment).orElse(null),
                where,
                history.lastPacked().map(CoreEvent::weight).orElse(null),
                terms == null ? BigDecimal.ZERO : terms.charge(),
                open);
    }

    private static @Nullable LocalDate completedOn(CoreCase core, Site site) {
        @Nullable Instant at = core.job().job().completedAt();
        return core.job().job().isCompleted() && at != null ? site.dayOf(at) : null;
    }

    private static boolean hasStop(List<Finding> findings) {
        return findings.stream().anyMatch(f -> f.rule().severity() == Severity.STOP);
    }

    /** Whether an open finding of severity stop stands against it. */
    public boolean isStopped() {
        return hasStop(findings);
    }

    /** Whether it was never shipped, and is not acknowledged either. */
    public boolean isAtSite() {
        return status.state().compareTo(CoreState.SHIPPED) < 0;
    }

    /** Whether its charge is owed: from its job's completion until it is accepted or credited. */
    public boolean isOwed() {
        boolean cleared =
                status.state() == CoreState.ACCEPTED || status.state() == CoreState.CREDITED;
        return completedOn != null && !cleared;
    }

    /** Days that remain to ship it, below zero where it is late; none for what has left. */
    public Optional<Long> daysLeft(LocalDate today) {
        return isAtSite()
                ? Optional.ofNullable(shipBy).map(day -> ChronoUnit.DAYS.between(today, day))
                : Optional.empty();
    }

    /** Whole minutes for which it must still drain, the last one begun counted whole. */
    public Optional<Long> minutesLeft(Instant now) {
        return Optional.ofNullable(drainsUntil)
                .map(until -> Duration.between(now, until))
                .map(left -> left.isNegative() ? 0 : left.plusSeconds(59).toMinutes());
    }

    private int group() {
        return switch (next) {
            case WAIT -> 1;
            case ARRIVE, ANSWER -> 2;
            case NOTHING -> 3;
            default -> 0;
        };
    }

    private @Nullable Instant pressing() {
        return switch (next) {
            case WAIT -> drainsUntil;
            case ARRIVE -> where.since();
            case ANSWER, NOTHING -> status.since();
            default -> null;
        };
    }
}
