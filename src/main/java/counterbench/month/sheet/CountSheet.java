package counterbench.month.sheet;

import counterbench.journal.Entry;
import counterbench.review.Component;
import counterbench.shared.Site;
import counterbench.sheets.report.Report;
import counterbench.sheets.report.ReportRows;
import counterbench.stock.Account;
import counterbench.stock.BalanceRow;
import counterbench.stock.Balances;
import counterbench.stock.Count;
import counterbench.stock.Kit;
import counterbench.stock.Ledger;
import counterbench.stock.LedgerFacts;
import counterbench.stock.Move;
import counterbench.stock.ReceivedKit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What is to be counted on a site's shelf: loose parts and kits. It does not say how many there are
 * by the book, so that nobody counts towards a number.
 */
public final class CountSheet {
    private static final Comparator<Kit> FIRST_EXPIRED_FIRST =
            Comparator.comparing(
                            (Kit kit) -> kit.expiresOn(),
                            Comparator.nullsLast(Comparator.naturalOrder()))
                    .thenComparing(Kit::kit);

    private final PartNames names;
    private final Set<String> parts = new TreeSet<>();
    private final List<Kit> kits = new ArrayList<>();

    public CountSheet(PartNames names) {
        this.names = names;
    }

    /** Adds what of a component may lie on the shelf. */
    public void add(Component component) {
        LedgerFacts facts = component.facts();
        List<Move> moves = Ledger.of(facts).moves();
        addLoose(moves);
        Set<Account> boxes = filledBoxes(moves);
        Stream.concat(facts.kits().stream(), facts.arriving().stream())
                .map(ReceivedKit::kit)
                .filter(kit -> boxes.contains(Account.kit(kit.kit())))
                .forEach(kits::add);
    }

    /** Adds what belongs to no job and no kit. */
    public void addStore(LedgerFacts storeOnly, Collection<Count> looseCounts) {
        addLoose(Ledger.of(storeOnly).moves());
        looseCounts.stream().map(Count::part).filter(Objects::nonNull).forEach(parts::add);
    }

    private void addLoose(List<Move> moves) {
        moves.stream().filter(m -> m.touches(Account.STORE)).map(Move::part).forEach(parts::add);
    }

    private static Set<Account> filledBoxes(List<Move> moves) {
        Balances boxes = new Balances(account -> account.kind() == Account.Kind.KIT);
        moves.forEach(boxes::add);
        return boxes.rows().stream()
                .filter(row -> row.quantity().isPositive())
                .map(BalanceRow::account)
                .collect(Collectors.toSet());
    }

    /** How many lines there are to count. */
    public int lines() {
        return parts.size() + kits.size();
    }

    /** The rows of each sheet, by what the program calls it. */
    public Map<String, ReportRows> rows() {
        return Map.of(
                "Store",
                ReportRows.of(parts.stream().map(this::part).toList()),
                "Kits",
                ReportRows.of(
                        kits.stream().sorted(FIRST_EXPIRED_FIRST).map(CountSheet::kit).toList()));
    }

    private Map<String, @Nullable Object> part(String part) {
        return new RowOf().part(part, names).values();
    }

    private static Map<String, @Nullable Object> kit(Kit kit) {
        return new RowOf()
                .with("kit", kit.kit())
                .with("kit_part", kit.kitPart())
                .with("lot", kit.lot())
                .with("expires_on", kit.expiresOn())
                .values();
    }

    /**
     * What the last sheet says first.
     *
     * @param newest the newest entry of the site's journal; null where there is none
     */
    public static List<Report.Note> notes(Site site, @Nullable Entry newest) {
        return List.of(
                new Report.Note(
                        "Workbook",
                        "What to count on the shelf. What the book says is left out on purpose:"
                                + " count what lies there, and nothing else."),
                new Report.Note(
                        "Site",
                        site.site() + ", " + site.name() + "; times of " + site.zone().getId()),
                new Report.Note(
                        "Known",
                        newest == null
                                ? "the journal has no entry yet"
                                : "journal entry "
                                        + newest.number()
                                        + ", recorded "
                                        + site.wallTime(newest.recordedAt())),
                new Report.Note("Hash", newest == null ? "none" : newest.hash()),
                new Report.Note(
                        "Not listed",
                        "What lies there and is on neither sheet is counted, too: add a line."),
                new Report.Note(
                        "Then",
                        "Record each line as it was counted: count PART QUANTITY, or count --kit KIT"
                                + " present (or missing); or import a sheet called counts with the"
                                + " headings counted_at, quantity, part, kit, by."));
    }
}
