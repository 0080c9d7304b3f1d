package counterbench.shell.acts;

import counterbench.acts.store.BenchNames;
import counterbench.acts.store.QuickNames;
import counterbench.db.Store;
import counterbench.people.Person;
import counterbench.people.store.StaffBook;
import counterbench.review.FindingId;
import counterbench.review.store.FindingBook;
import counterbench.shared.Site;
import counterbench.shell.Completing;
import counterbench.shell.Options;
import counterbench.shell.Proposals;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Names that completion offers as they are in the store now: of the site that the line names, or
 * that was chosen, or of all. They come fast, are two hundred at most, and none where the store
 * cannot be asked.
 */
public final class LiveNames {
    private static final int MOST = 200;

    /** Words on a line that names a job and a step, with the begun one. */
    private static final int STEP_PLACE = 3;

    private final Supplier<Store> store;

    public LiveNames(Supplier<Store> store) {
        this.store = store;
    }

    /** Jobs that have not ended. */
    public Proposals openJobs() {
        return of(QuickNames::openJobs);
    }

    /** All jobs. */
    public Proposals jobs() {
        return of(QuickNames::jobs);
    }

    /** Kits on the shelf, first to expire first. */
    public Proposals kitsOnShelf() {
        return of(QuickNames::kitsOnShelf);
    }

    /** All kits. */
    public Proposals kits() {
        return of(QuickNames::kits);
    }

    /** Kits that other sites sent here. */
    public Proposals kitsUnderWay() {
        return of(QuickNames::kitsUnderWay);
    }

    /** Campaigns of which a pack is loaded. */
    public Proposals campaigns() {
        return of(QuickNames::campaigns);
    }

    /** Loose parts. */
    public Proposals parts() {
        return of(QuickNames::parts);
    }

    /** Parts that are kits. */
    public Proposals kitParts() {
        return of(QuickNames::kitParts);
    }

    /** Core tags. */
    public Proposals cores() {
        return of(QuickNames::cores);
    }

    /** Tags of cores that were sent here. */
    public Proposals coresUnderWay() {
        return of(QuickNames::coresUnderWay);
    }

    /** Tags of cores that stand open to drain. */
    public Proposals coresDraining() {
        return of(QuickNames::coresDraining);
    }

    /** Parts that lie on the bench of the job that the line begins with. */
    public Proposals partsOnBench() {
        return ofJob(BenchNames::partsOnBench);
    }

    /** Parts that the job that the line begins with asks for, or has on its vehicle. */
    public Proposals partsOfJob() {
        return ofJob(BenchNames::parts);
    }

    /** Kits that were issued to the job that the line begins with. */
    public Proposals kitsOfJob() {
        return ofJob(BenchNames::kits);
    }

    /** Steps of the procedure of the job that the line begins with, the open ones first. */
    public Proposals stepsOfJob() {
        return ofJob(BenchNames::steps);
    }

    /** Fasteners of the step that the line names after its job. */
    public Proposals fastenersOfStep() {
        return guarded(
                completing ->
                        completing.words().size() < STEP_PLACE
                                ? List.of()
                                : benchNames(completing).fasteners(completing.words().get(1)));
    }

    /** Instruments. */
    public Proposals instruments() {
        return of(QuickNames::instruments);
    }

    private Proposals ofJob(Function<BenchNames, List<String>> names) {
        return guarded(
                completing ->
                        names.apply(benchNames(completing)).stream()
                                .filter(name -> name.startsWith(completing.begun()))
                                .limit(MOST)
                                .toList());
    }

    private BenchNames benchNames(Completing completing) {
        Optional<String> named = site(completing);
        Site site =
                new StaffBook(store.get())
                        .sites().stream()
                                .filter(s -> named.isEmpty() || named.get().equals(s.site()))
                                .findFirst()
                                .orElseThrow();
        return new BenchNames(store.get(), site, completing.words().get(0));
    }

    /** Shipments. */
    public Proposals shipments() {
        return of(QuickNames::shipments);
    }

    /** Sites. */
    public Proposals sites() {
        return of(QuickNames::sites);
    }

    /** Findings as they were last found. */
    public Proposals findings() {
        return guarded(
                completing -> {
                    Optional<String> named = site(completing);
                    return new StaffBook(store.get())
                            .sites().stream()
                                    .filter(s -> named.isEmpty() || named.get().equals(s.site()))
                                    .flatMap(s -> lastFound(s).stream())
                                    .filter(name -> name.startsWith(completing.begun()))
                                    .limit(MOST)
                                    .toList();
                });
    }

    private List<String> lastFound(Site site) {
        return new FindingBook(store.get())
                .lastFound(site, MOST).stream().map(FindingId::toString).toList();
    }

    /** People who act. */
    public Proposals people() {
        return guarded(
                completing ->
                        new StaffBook(store.get())
                                .people().stream()
                                        .filter(Person::isActive)
                                        .map(Person::name)
                                        .toList());
    }

    private Proposals of(Function<QuickNames, List<String>> names) {
        return guarded(
                completing ->
                        names.apply(
                                new QuickNames(store.get(), site(completing), completing.begun())));
    }

    /** A begun line is no place for a complaint: whatever is wrong, nothing is offered. */
    private static Proposals guarded(Proposals names) {
        return completing -> {
            try {
                return names.apply(completing);
            } catch (RuntimeException e) {
                return List.of();
            }
        };
    }

    private static Optional<String> site(Completing completing) {
        List<String> words = completing.words();
        int said = words.lastIndexOf(Options.SITE.label());
        return said >= 0 && said < words.size() - 2
                ? Optional.of(words.get(said + 1))
                : completing.site();
    }
}
