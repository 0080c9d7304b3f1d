package counterbench.claims.matching;

import counterbench.claims.Credit;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** For which core a core credit is that belongs to a claim of the core's job. */
public final class CreditedCore {
    private CreditedCore() {}

    /**
     * The tag of the core that the line names, by its tag, or by its serial where it bears no tag.
     * Where it names none of the job's and was matched to the claim, it is the job's only core, or
     * the only one of which tag or serial is at most a slip away.
     *
     * @param cores those of the claim's job
     */
    public static Optional<String> of(Credit credit, Collection<Candidate.Core> cores) {
        Optional<String> named =
                cores.stream()
                        .filter(core -> isNamed(credit, core))
                        .map(Candidate.Core::tag)
                        .findFirst();
        return named.isPresent() || !credit.matched() ? named : meant(credit, cores);
    }

    private static boolean isNamed(Credit credit, Candidate.Core core) {
        return credit.core() == null
                ? credit.serial() != null && credit.serial().equals(core.serial())
                : credit.core().equals(core.tag());
    }

    private static Optional<String> meant(Credit credit, Collection<Candidate.Core> cores) {
        return only(cores, core -> true).or(() -> only(cores, core -> isNear(credit, core)));
    }

    private static Optional<String> only(
            Collection<Candidate.Core> cores, Predicate<Candidate.Core> wanted) {
        List<String> found = cores.stream().filter(wanted).map(Candidate.Core::tag).toList();
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    private static boolean isNear(Credit credit, Candidate.Core core) {
        return isNear(credit.core(), core.tag()) || isNear(credit.serial(), core.serial());
    }

    private static boolean isNear(@Nullable String said, @Nullable String known) {
        return said != null && known != null && Slips.between(said, known) <= 1;
    }
}
