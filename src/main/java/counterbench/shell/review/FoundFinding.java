package counterbench.shell.review;

import counterbench.db.Store;
import counterbench.review.FindingId;
import counterbench.review.StatedFinding;
import counterbench.review.store.FindingBook;
import counterbench.shared.NearMatch;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import counterbench.shell.Argument;
import counterbench.shell.Invocation;
import counterbench.shell.Readings;
import counterbench.shell.Unreadable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The finding that a person names, where it holds now.
 *
 * @param site where it holds
 */
record FoundFinding(Site site, StatedFinding stated) {
    /** The argument by which findings are named. */
    static final Argument<FindingId> ID =
            Argument.of("FINDING", FoundFinding::read, "its name, such as F-7Q2M4C9XKD");

    private static FindingId read(String text) {
        return FindingId.read(Readings.TEXT.read(text))
                .orElseThrow(
                        () ->
                                new Unreadable(
                                        "is no finding's name; write it as review shows it, such"
                                                + " as F-7Q2M4C9XKD"));
    }

    /** Looks for it at the sites, as of now. */
    static Optional<FoundFinding> find(Invocation in, Store store, List<Site> sites) {
        FindingId wanted = in.get(ID);
        FindingBook book = new FindingBook(store);
        for (Site site : sites) {
            Optional<StatedFinding> stated =
                    book
                            .now(
                                    site,
                                    in.now(),
                                    finding -> FindingId.of(finding).equals(wanted),
                                    ReviewCommand.judged(in, "judging jobs"))
                            .stream()
                            .findFirst();
            if (stated.isPresent()) {
                return stated.map(f -> new FoundFinding(site, f));
            }
        }
        return Optional.empty();
    }

    /** The refusal of one that does not hold now. */
    static Refused unknown(Invocation in, Store store, List<Site> sites) {
        FindingBook book = new FindingBook(store);
        List<String> known = new ArrayList<>();
        for (Site site : sites) {
            book.eachNow(site, in.now(), jobs -> {}, stated -> known.add(stated.id().toString()));
        }
        return new Refused(
                "finding \"" + in.get(ID) + "\"",
                "there is no such finding now",
                NearMatch.of(in.get(ID).toString(), known)
                        .map(near -> "did you mean " + near + "?")
                        .orElse("review shows those there are"));
    }
}
