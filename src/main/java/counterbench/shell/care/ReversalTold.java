package counterbench.shell.care;

import counterbench.db.Store;
import counterbench.journal.Entry;
import counterbench.journal.store.JournalBook;
import counterbench.journal.store.ReversedFacts;
import counterbench.shared.Site;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/** What a reversal took back, so that a wrong number is seen at once. */
final class ReversalTold {
    /** Of more facts than these, only their kinds are told. */
    private static final int MOST_FACTS = 5;

    private final Store store;
    private final Site site;

    ReversalTold(Store store, Site site) {
        this.store = store;
        this.site = site;
    }

    /** The entry that it took back, and which of its facts. */
    List<String> lines(Entry reversal) {
        JournalBook book = new JournalBook(store);
        long number = Objects.requireNonNull(reversal.reverses(), "no reversal");
        Entry reversed = EntryTold.find(book, site, number).entry();
        ReversedFacts facts = ReversedFacts.by(reversal, store);
        List<String> lines = new ArrayList<>();
        lines.add(EntryTold.words(site, reversed));
        if (facts.count() > MOST_FACTS) {
            lines.add("taken back: " + words(facts, reversed));
        } else {
            book.facts(
                    reversed,
                    facts.range(),
                    line ->
                            line.reversedBy()
                                    .filter(by -> by == reversal.number())
                                    .ifPresent(by -> lines.add("taken back: " + fact(line))));
        }
        return lines;
    }

    private String fact(JournalBook.Line line) {
        return line.address()
                + " "
                + line.row().kind().word()
                + ": "
                + FactText.said(site, line.row()).replace('\n', ' ');
    }

    private static String words(ReversedFacts facts, Entry reversed) {
        String kinds =
                facts.kinds().entrySet().stream()
                        .map(kind -> kind.getValue() + " " + kind.getKey().word())
                        .collect(Collectors.joining(", "));
        int count = facts.count();
        return (count == reversed.factCount()
                        ? "all its " + count + " facts"
                        : count + " of its " + reversed.factCount() + " facts")
                + " ("
                + kinds
                + "); journal show "
                + reversed.number()
                + " lists them";
    }
}
