package counterbench.shell.bench;

import counterbench.acts.JobState;
import counterbench.acts.store.LastAct;
import counterbench.acts.store.ReadRaised;
import counterbench.care.ReversalRequest;
import counterbench.care.store.ReverseEntry;
import counterbench.db.Store;
import counterbench.journal.Entry;
import counterbench.judgement.Finding;
import counterbench.people.Person;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import counterbench.shell.acts.ActTold;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Takes back what a person did last on a job. */
final class BenchUndo {
    private final Store store;
    private final Site site;
    private final Person person;

    BenchUndo(Store store, Site site, Person person) {
        this.store = store;
        this.site = site;
        this.person = person;
    }

    /**
     * What came of it.
     *
     * @param told says what it was
     * @param raised findings that there were not before, or will be once the job is completed
     */
    record Undone(String told, List<Finding> raised) {}

    /** Takes it back. */
    Undone run(JobState job, @Nullable String reason, String source, Instant now, UUID entry) {
        Entry last =
                new LastAct(store, site)
                        .of(job, person)
                        .orElseThrow(
                                () ->
                                        new Refused(
                                                "undo",
                                                "nothing that you did on job "
                                                        + job.name()
                                                        + " is left to take back",
                                                "a lead takes back what others did: reverse"
                                                        + " ENTRY"));
        ReversalRequest request =
                new ReversalRequest(
                        last.number(),
                        OptionalInt.empty(),
                        Objects.requireNonNullElse(reason, "undone at the bench"));
        Entry made = new ReverseEntry(store).run(request, site, person, now, source, entry);
        String told =
                "taken back: entry "
                        + last.number()
                        + ", "
                        + last.source()
                        + ": "
                        + ActTold.where(site, made);
        return new Undone(
                told, store.again(() -> new ReadRaised(store, site).by(made)).orElse(List.of()));
    }
}
