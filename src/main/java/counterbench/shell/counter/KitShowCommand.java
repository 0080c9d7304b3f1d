package counterbench.shell.counter;

import counterbench.acts.KitLife;
import counterbench.acts.KitState;
import counterbench.acts.Named;
import counterbench.acts.Situation;
import counterbench.acts.store.ReadSituation;
import counterbench.campaign.KitLine;
import counterbench.campaign.KitTerms;
import counterbench.db.Store;
import counterbench.judgement.SubjectKind;
import counterbench.review.StatedFinding;
import counterbench.review.store.FindingBook;
import counterbench.shared.Quantity;
import counterbench.shared.Site;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Options;
import counterbench.shell.SiteChoice;
import counterbench.shell.Status;
import counterbench.shell.acts.LiveNames;
import counterbench.shell.month.ReadJobs;
import counterbench.shell.print.Column;
import counterbench.shell.print.Rows;
import counterbench.stock.Account;
import counterbench.stock.Kit;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Shows a kit: what it holds, where it is, its life, and what was found about it. */
public final class KitShowCommand extends BaseCommand {
    private static final DateTimeFormatter LOCAL =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    private static final Set<SubjectKind> OF_KITS = Set.of(SubjectKind.KIT, SubjectKind.ACCOUNT);

    private final Supplier<Store> store;
    private final SiteChoice sites;

    public KitShowCommand(Supplier<Store> store, SiteChoice sites) {
        super(manual(new LiveNames(store)));
        this.store = store;
        this.sites = sites;
    }

    private static Manual manual(LiveNames names) {
        return Manual.of("kit show", Group.PARTS_COUNTER, "Show what a kit holds and its life")
                .takes(
                        CounterOptions.KIT.completedBy(names.kits()),
                        Options.SITE.completedBy(names.sites()))
                .example("kit show FP-1012");
    }

    @Override
    protected Status run(Invocation in) {
        Site site = sites.of(in);
        String serial = Scanned.kit(in, site, in.get(CounterOptions.KIT));
        Situation situation =
                new ReadSituation(store.get()).run(site, in.now(), Named.NOTHING.withKit(serial));
        KitState kit = situation.kit(serial);
        describe(in, site, kit);
        in.print("");
        contents(in, kit);
        in.print("");
        KitLife.of(kit).forEach(event -> in.print(line(site, event)));
        findings(in, site, serial);
        return Status.DONE;
    }

    private static void describe(Invocation in, Site site, KitState state) {
        Kit kit = state.received().kit();
        LocalDate until = kit.expiresOn();
        in.print("kit " + kit.kit() + " " + state.whereabouts());
        in.print("part      " + kit.kitPart() + said(", revision ", kit.revision()));
        in.print("lot       " + Objects.requireNonNullElse(kit.lot(), "not said"));
        in.print(
                "expires   "
                        + (until == null ? "not said" : until)
                        + (state.isExpired(site.dayOf(in.now())) ? ", which is past" : ""));
        in.print(
                "received  "
                        + local(site, kit.receivedAt())
                        + said(" on ", kit.receiving().document())
                        + said(" by ", kit.receiving().by()));
    }

    private static String said(String before, @Nullable String text) {
        return text == null ? "" : before + text;
    }

    /** What it should hold, came with, and has in its box now. */
    private static void contents(Invocation in, KitState kit) {
        Map<String, Quantity> came = kit.received().contents();
        Map<String, Quantity> held = kit.held();
        try (Rows rows =
                in.rows(
                        Column.text("part"),
                        Column.text("name"),
                        Column.number("should_hold"),
                        Column.number("came_with"),
                        Column.number("in_the_box"))) {
            lines(kit.received().terms())
                    .forEach(
                            (part, line) ->
                                    rows.add(
                                            part,
                                            line.name(),
                                            line.quantity(),
                                            came.getOrDefault(part, Quantity.ZERO),
                                            held.getOrDefault(part, Quantity.ZERO)));
        }
    }

    private record Line(String name, Quantity quantity) {}

    private static Map<String, Line> lines(@Nullable KitTerms terms) {
        Map<String, Line> lines = new LinkedHashMap<>();
        for (KitLine line : terms == null ? List.<KitLine>of() : terms.contents()) {
            lines.merge(
                    line.part(),
                    new Line(line.name(), line.quantity()),
                    (a, b) -> new Line(a.name(), a.quantity().plus(b.quantity())));
        }
        return lines;
    }

    private static String line(Site site, KitLife.Event event) {
        String goods =
                event.goods().entrySet().stream()
                        .map(item -> item.getValue() + " " + item.getKey())
                        .collect(Collectors.joining(", "));
        return local(site, event.at())
                + "  "
                + event.words()
                + (goods.isEmpty() ? "" : ": " + goods);
    }

    private static String local(Site site, Instant at) {
        return LOCAL.format(at.atZone(site.zone()));
    }

    private void findings(Invocation in, Site site, String serial) {
        Set<String> names = Set.of(serial, Account.kit(serial).toString());
        List<StatedFinding> found =
                new FindingBook(store.get())
                        .now(
                                site,
                                in.now(),
                                f ->
                                        names.contains(f.subject().name())
                                                && OF_KITS.contains(f.subject().kind()),
                                ReadJobs.shown(in, site));
        if (!found.isEmpty()) {
            in.print("");
        }
        found.forEach(
                f ->
                        in.print(
                                f.id()
                                        + " "
                                        + f.finding().rule().severity().word()
                                        + " "
                                        + f.finding().rule().word()
                                        + ": "
                                        + f.finding().message()));
    }
}
