package counterbench.acts.desk;

import counterbench.acts.CoreCase;
import counterbench.acts.JobState;
import counterbench.acts.rack.NextStep;
import counterbench.campaign.ClaimTerms.Needs;
import counterbench.cores.CoreHistory;
import counterbench.cores.CoreStatus;
import counterbench.cores.DueCores;
import counterbench.cores.JobCoresFacts;
import counterbench.cores.Placement;
import counterbench.shared.Site;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which cores of a completed job do not meet what its claim needs, each with the way there.
 *
 * @param day the day of submission, at whose end they must meet it
 */
record CoresNeeded(JobState job, DueCores due, Needs needs, LocalDate day) {
    List<Against> against() {
        JobCoresFacts facts = new JobCoresFacts(site(), job.job(), due, job.cores());
        if (facts.meet(needs, site().endOf(day))) {
            return List.of();
        }
        List<Against> against = new ArrayList<>();
        int missing = due.wanted() - facts.counted().size();
        if (missing > 0) {
            against.add(missing(missing));
        }
        facts.counted().stream()
                .filter(core -> !isMetBy(core))
                .map(this::against)
                .forEach(against::add);
        return against;
    }

    private Site site() {
        return job.site();
    }

    private Against missing(int missing) {
        return new Against(
                (missing == 1 ? "1 core of it was" : missing + " cores of it were")
                        + " never removed, and the claim needs "
                        + needs.word(),
                "find the unit and record it: core remove TAG --job " + job.name());
    }

    private boolean isMetBy(CoreHistory core) {
        return metAt(core).filter(site().endOf(day)::isAfter).isPresent();
    }

    /** When the core met what the claim needs. */
    private Optional<Instant> metAt(CoreHistory core) {
        return needs == Needs.CORE_ACKNOWLEDGED
                ? core.answers().stream().map(answer -> answer.at()).findFirst()
                : core.firstShipped();
    }

    private Against against(CoreHistory core) {
        String tag = "core " + core.core();
        String did = needs == Needs.CORE_ACKNOWLEDGED ? "acknowledged" : "shipped";
        return metAt(core)
                .map(site()::dayOf)
                .map(
                        met ->
                                new Against(
                                        "%s was %s on %s, after the day of submission"
                                                .formatted(tag, did, met),
                                        "say that day or a later one with --on"))
                .orElseGet(
                        () ->
                                new Against(
                                        tag
                                                + " is "
                                                + CoreStatus.of(core, null).state().word()
                                                + ", and the claim needs "
                                                + needs.word(),
                                        wayOf(core)));
    }

    private String wayOf(CoreHistory core) {
        String tag = core.core();
        String shipment = core.placement().map(Placement::shipment).orElse("SHIPMENT");
        List<String> way =
                List.of(
                        "drain begin " + tag,
                        "drain end " + tag,
                        "plug " + tag,
                        "pack " + tag,
                        "shipment add " + shipment + " " + tag,
                        "ship " + shipment);
        return switch (NextStep.of(new CoreCase(job, core), job.now())) {
            case DRAIN -> from(way, 0);
            case WAIT, END_DRAIN -> from(way, 1);
            case PLUG -> from(way, 2);
            case PACK -> from(way, 3);
            case ADD -> from(way, 4);
            case SHIP -> from(way, 5);
            case ARRIVE -> "take it in, then send it: core arrive " + tag + ", " + from(way, 4);
            default ->
                    core.firstShipped().isPresent()
                            ? "record the answer of the return centre: acknowledge "
                                    + shipment
                                    + " accepted "
                                    + tag
                            : "import the row of cores that says when it was shipped";
        };
    }

    private static String from(List<String> way, int step) {
        return String.join(", ", way.subList(step, way.size()));
    }
}
