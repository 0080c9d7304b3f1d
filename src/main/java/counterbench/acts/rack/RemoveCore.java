package counterbench.acts.rack;

import counterbench.acts.Act;
import counterbench.acts.CoreCase;
import counterbench.acts.Decision;
import counterbench.acts.JobState;
import counterbench.acts.Named;
import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.cores.CoreEvent;
import counterbench.cores.DueCores;
import counterbench.facts.FactKind;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Takes a unit off the vehicle and hangs a tag on it.
 *
 * @param part its part number, where the plate shows one
 */
public record RemoveCore(String tag, String job, String serial, @Nullable String part, Stamp stamp)
        implements Act {
    @Override
    public FactKind makes() {
        return FactKind.CORES;
    }

    @Override
    public Named named() {
        return Named.job(job).withCores(List.of(tag));
    }

    @Override
    public Decision decide(Situation situation) {
        JobState from = situation.job(job);
        situation.findCore(tag).ifPresent(known -> refuseKnown(situation.site(), known));
        if (from.job().openedAt().isAfter(stamp.at())) {
            throw new Refused(
                    "core \"" + tag + "\"",
                    "job "
                            + job
                            + " was opened later, at "
                            + situation.site().wallTime(from.job().openedAt()),
                    "say when the core was removed with --at");
        }
        return new Decision(
                List.of(
                        stamp.row(FactKind.CORES)
                                .with("core", tag)
                                .with("event", CoreEvent.Kind.REMOVED.word())
                                .with("job", job)
                                .with("serial", serial)
                                .with("part", part)),
                remarks(from));
    }

    private void refuseKnown(Site site, CoreCase known) {
        throw new Refused(
                "core \"" + tag + "\"",
                "a core of that tag was removed on job "
                        + known.job().name()
                        + " at "
                        + known.core().removedAt().map(site::wallTime).orElse("some time"),
                "give this one a tag of its own");
    }

    private List<String> remarks(JobState from) {
        List<String> remarks = new ArrayList<>();
        Optional<DueCores> due = from.pack().map(pack -> new DueCores(pack, from.attributes()));
        if (due.filter(d -> !d.mayTurnOutWanted(part)).isPresent()) {
            remarks.add(
                    "campaign "
                            + from.job().campaign()
                            + " wants no such core back from this vehicle");
        } else if (due.filter(d -> d.termsOf(part).isEmpty()).isPresent()) {
            remarks.add(
                    "what campaign "
                            + from.job().campaign()
                            + " asks of this core cannot be told, since its vehicle lacks an answer"
                            + " that the terms ask for; complete the campaign's list of vehicles");
        }
        return remarks;
    }
}
