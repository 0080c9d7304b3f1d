package counterbench.shell.care;

import counterbench.db.Store;
import counterbench.facts.FactKind;
import counterbench.journal.Entry;
import counterbench.journal.store.JournalBook;
import counterbench.journal.store.ReversedFacts;
import counterbench.review.FindingId;
import counterbench.review.FindingState;
import counterbench.review.Settlement;
import counterbench.review.StatedFinding;
import counterbench.review.store.FindingBook;
import counterbench.shared.Address;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;

/** What has become of the findings whose settlements a reversal took back. */
final class OpenedAgain {
    private final Store store;
    private final Site site;

    OpenedAgain(Store store, Site site) {
        this.store = store;
        this.site = site;
    }

    /** A line for each, by name. */
    List<String> lines(Entry reversal, Instant now) {
        ReversedFacts facts = ReversedFacts.by(reversal, store);
        if (!facts.kinds().containsKey(FactKind.SETTLEMENTS)) {
            return List.of();
        }
        Set<FindingId> unsettled = new TreeSet<>();
        FindingBook book = new FindingBook(store);
        book.saidAt(site, addresses(reversal, facts)).stream()
                .map(Settlement::finding)
                .forEach(unsettled::add);
        Map<FindingId, FindingState> states = new HashMap<>();
        for (StatedFinding stated :
                book.now(
                        site,
                        now,
                        finding -> unsettled.contains(FindingId.of(finding)),
                        jobs -> {})) {
            states.put(stated.id(), stated.state());
        }
        return unsettled.stream().map(id -> line(id, states)).toList();
    }

    private Set<Address> addresses(Entry reversal, ReversedFacts facts) {
        JournalBook book = new JournalBook(store);
        long number = Objects.requireNonNull(reversal.reverses(), "no reversal");
        Set<Address> addresses = new HashSet<>();
        book.facts(
                EntryTold.find(book, site, number).entry(),
                facts.range(),
                line ->
                        line.reversedBy()
                                .filter(by -> by == reversal.number())
                                .ifPresent(by -> addresses.add(line.address())));
        return addresses;
    }

    private static String line(FindingId finding, Map<FindingId, FindingState> states) {
        FindingState state = states.get(finding);
        if (state == null) {
            return "finding " + finding + " does not hold any more, so nothing is open again";
        }
        return state == FindingState.OPEN
                ? "finding " + finding + " is open again"
                : "finding " + finding + " stays settled by what was said of it before";
    }
}
