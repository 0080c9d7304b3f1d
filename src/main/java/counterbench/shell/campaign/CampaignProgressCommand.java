package counterbench.shell.campaign;

import counterbench.campaign.Packs;
import counterbench.campaign.store.PackBook;
import counterbench.db.Store;
import counterbench.month.CampaignVehicles.Progress;
import counterbench.month.CampaignVehicles.State;
import counterbench.month.store.ReadVehicles;
import counterbench.shell.Argument;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Readings;
import counterbench.shell.Status;
import counterbench.shell.acts.LiveNames;
import counterbench.shell.print.Column;
import counterbench.shell.print.Rows;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.List;
import java.util.function.Supplier;

/** Says how far campaigns are. */
public final class CampaignProgressCommand extends BaseCommand {
    private static final Argument<String> CAMPAIGN =
            Argument.of("CAMPAIGN", Readings.TEXT, "which campaign; all unless said").asOptional();
    private static final Option<LocalDate> ON =
            Option.of("on", "DAY", Readings.DAY, "at the end of which day; today unless said");

    private final Supplier<Store> store;

    public CampaignProgressCommand(Supplier<Store> store) {
        super(
                Manual.of("campaign progress", Group.CAMPAIGNS, "Say how far campaigns are")
                        .takes(CAMPAIGN.completedBy(new LiveNames(store).campaigns()), ON)
                        .printsRows()
                        .example("campaign progress")
                        .example("campaign progress HB-0417 --on 2026-03-31")
                        .note(
                                "Over all sites, cumulative: listed vehicles are completed,"
                                        + " inspected and found not to need it, exported, stolen,"
                                        + " scrapped, unreachable, or outstanding. Those that"
                                        + " declined so far are among the outstanding. Without a"
                                        + " list, the vehicles that were done are counted."));
        this.store = store;
    }

    @Override
    protected Status run(Invocation in) {
        Packs packs = new PackBook(store.get()).all();
        Collection<String> campaigns =
                in.find(CAMPAIGN)
                        .<Collection<String>>map(c -> List.of(KnownCampaign.of(c, packs)))
                        .orElseGet(packs::campaigns);
        LocalDate day =
                in.find(ON).orElseGet(() -> in.now().atOffset(ZoneOffset.UTC).toLocalDate());
        ReadVehicles vehicles = new ReadVehicles(store.get());
        try (Rows rows =
                in.rows(
                        Column.text("campaign"),
                        Column.number("involved"),
                        Column.number("completed"),
                        Column.number("not_needed"),
                        Column.number("exported"),
                        Column.number("stolen"),
                        Column.number("scrapped"),
                        Column.number("unreachable"),
                        Column.number("outstanding"),
                        Column.number("declined"),
                        Column.number("unlisted"))) {
            campaigns.forEach(campaign -> add(rows, vehicles.of(campaign).progress(day)));
        }
        return Status.DONE;
    }

    private static void add(Rows rows, Progress progress) {
        rows.add(
                progress.campaign(),
                progress.involved(),
                progress.of(State.COMPLETED),
                progress.of(State.NOT_NEEDED),
                progress.of(State.EXPORTED),
                progress.of(State.STOLEN),
                progress.of(State.SCRAPPED),
                progress.of(State.UNREACHABLE),
                progress.outstanding(),
                progress.of(State.DECLINED),
                progress.unlisted());
    }
}
