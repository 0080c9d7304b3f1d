package counterbench.shell.month;

import counterbench.acts.store.ReadWorth;
import counterbench.acts.store.ReadWorth.StoreMonth;
import counterbench.campaign.PartUnit;
import counterbench.claims.Money;
import counterbench.db.Store;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Options;
import counterbench.shell.Readings;
import counterbench.shell.SiteChoice;
import counterbench.shell.Status;
import counterbench.shell.acts.LiveNames;
import counterbench.shell.print.Column;
import counterbench.shell.print.Rows;
import counterbench.stock.worth.CostMethod;
import counterbench.stock.worth.PartWorth;
import counterbench.stock.worth.Rounding;
import counterbench.stock.worth.Worth;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.YearMonth;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Says what the loose parts in the store were worth in a month, by a method of costing. */
public final class WorthCommand extends BaseCommand {
    private static final Option<YearMonth> MONTH =
            Option.of("month", "MONTH", Readings.MONTH, "which month, such as 2026-03")
                    .asRequired();
    private static final Option<CostMethod> METHOD =
            Option.of(
                    "method",
                    "METHOD",
                    Readings.oneOf(CostMethod.class),
                    "how the books cost the store; lots unless said");
    private static final Option<Boolean> WHOLE =
            Option.flag(
                    "whole",
                    "round unit costs to the cent, and every value to whole units of money");

    /** Unit costs of small parts are less than a cent now and then. */
    private static final int UNIT_COST_PLACES = 4;

    private final Supplier<Store> store;
    private final SiteChoice sites;

    public WorthCommand(Supplier<Store> store, SiteChoice sites) {
        super(
                Manual.of("worth", Group.MONTH, "Say what the loose parts in the store are worth")
                        .takes(
                                MONTH,
                                METHOD,
                                WHOLE,
                                Options.SITE.completedBy(new LiveNames(store).sites()))
                        .printsRows()
                        .example("worth --month 2026-03")
                        .example("worth --month 2026-03 --method moving-average --format csv")
                        .note(
                                "The methods: "
                                        + List.of(CostMethod.values()).stream()
                                                .map(m -> Readings.word(m) + " (" + m.words() + ")")
                                                .collect(Collectors.joining("; "))
                                        + ".")
                        .note(
                                "What came in counts at what its receipt says; parts out of kits"
                                        + " at the value that the campaign's terms give them; what"
                                        + " counting found at nothing. What jobs put back counts as"
                                        + " never gone out. Kits have costs of their own: the parts"
                                        + " workbook lists those on the shelf.")
                        .note(
                                "Claims always charge by lots. Which method your books may use is"
                                        + " for whoever keeps them to say."));
        this.store = store;
        this.sites = sites;
    }

    @Override
    protected Status run(Invocation in) {
        Site site = sites.of(in);
        refuseToCome(in, site);
        CostMethod method = in.find(METHOD).orElse(CostMethod.LOTS);
        Rounding rounding = in.has(WHOLE) ? Rounding.WHOLE : Rounding.EXACT;
        StoreMonth found =
                new ReadWorth(store.get(), site, method, rounding)
                        .of(in.get(MONTH), in.now(), ReadJobs.shown(in, site));
        print(in, site, method, found);
        tellSums(in, site, found.parts());
        return Status.DONE;
    }

    private static void refuseToCome(Invocation in, Site site) {
        YearMonth newest = site.monthOf(in.now());
        if (in.get(MONTH).isAfter(newest)) {
            throw new Refused(
                    "worth of \"" + in.get(MONTH) + "\"",
                    "that month has not begun",
                    "the newest is " + newest);
        }
    }

    private static void print(Invocation in, Site site, CostMethod method, StoreMonth found) {
        YearMonth month = in.get(MONTH);
        try (Rows rows =
                in.rows(
                        Column.text("site"),
                        Column.text("month"),
                        Column.text("method"),
                        Column.text("part"),
                        Column.text("unit"),
                        Column.number("opening").asSpare(),
                        Column.number("opening_value").asSpare(),
                        Column.number("in"),
                        Column.number("in_value"),
                        Column.number("out"),
                        Column.number("out_cost"),
                        Column.number("closing"),
                        Column.number("unit_cost").asDetail(),
                        Column.number("closing_value"))) {
            rows.section(
                    "Store of " + site.site() + ", " + month + ": " + method.words(),
                    "part",
                    "unit",
                    "opening",
                    "opening_value",
                    "in",
                    "in_value",
                    "out",
                    "out_cost",
                    "closing",
                    "unit_cost",
                    "closing_value");
            found.parts().forEach(part -> add(rows, in, site, part, found.unit(part.part())));
        }
    }

    private static void add(Rows rows, Invocation in, Site site, PartWorth part, PartUnit unit) {
        int places = in.has(WHOLE) ? 2 : UNIT_COST_PLACES;
        rows.add(
                site.site(),
                in.get(MONTH),
                Readings.word(in.find(METHOD).orElse(CostMethod.LOTS)),
                part.part(),
                unit.word(),
                part.opening().quantity(),
                money(part.opening()),
                part.in().quantity(),
                money(part.in()),
                part.out().quantity(),
                money(part.out()),
                part.closing().quantity(),
                part.unitCost()
                        .map(cost -> cost.setScale(places, RoundingMode.HALF_EVEN))
                        .map(Money::text)
                        .orElse(null),
                money(part.closing()));
    }

    private static @Nullable String money(Worth worth) {
        BigDecimal value = worth.value();
        return value == null ? null : Money.text(cents(value));
    }

    private static BigDecimal cents(BigDecimal value) {
        return value.setScale(2, RoundingMode.HALF_EVEN);
    }

    private static void tellSums(Invocation in, Site site, List<PartWorth> parts) {
        in.tell(
                "the store's loose parts, in "
                        + site.currency().getCurrencyCode()
                        + ": at the start "
                        + sum(parts, PartWorth::opening)
                        + ", in "
                        + sum(parts, PartWorth::in)
                        + ", out "
                        + sum(parts, PartWorth::out)
                        + ", at the end "
                        + sum(parts, PartWorth::closing));
        String unknown =
                parts.stream()
                        .filter(part -> !part.isKnown())
                        .map(PartWorth::part)
                        .collect(Collectors.joining(", "));
        if (!unknown.isEmpty()) {
            in.tell(
                    "not known for want of a cost, and so in none of the sums: "
                            + unknown
                            + "; import their receipts with unit_cost, or what is missing of them");
        }
    }

    private static String sum(List<PartWorth> parts, Function<PartWorth, Worth> which) {
        return Money.text(
                Money.sum(
                        parts.stream()
                                .filter(PartWorth::isKnown)
                                .map(which)
                                .map(Worth::value)
                                .filter(Objects::nonNull)
                                .map(WorthCommand::cents)
                                .toList()));
    }
}
