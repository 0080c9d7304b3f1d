package counterbench.acts.store;

import counterbench.claims.store.CreditLines;
import counterbench.db.Store;
import counterbench.shared.Site;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;

/** Looks up the lines of remittances by name, whether they wait to be matched or not. */
public final class ReadCreditLines {
    private final Store store;
    private final Site site;

    public ReadCreditLines(Store store, Site site) {
        this.store = store;
        this.site = site;
    }

    /** The names of all lines that count. */
    public Set<String> names() {
        return store.read(sql -> new CreditLines(sql, site).names(DSL.trueCondition()));
    }

    /** The claims that a line was matched to, by the entry that did so; none if it was not. */
    public SortedMap<Long, SortedSet<String>> matches(String line) {
        return store.read(sql -> matches(sql, line));
    }

    private SortedMap<Long, SortedSet<String>> matches(DSLContext sql, String line) {
        SortedMap<Long, SortedSet<String>> claims = new TreeMap<>();
        new CreditLines(sql, site)
                .matches(DSL.trueCondition()).stream()
                        .filter(match -> match.line().equals(line))
                        .forEach(
                                match ->
                                        claims.computeIfAbsent(match.entry(), e -> new TreeSet<>())
                                                .add(match.claim()));
        return claims;
    }
}
