package counterbench.shell.campaign;

import counterbench.campaign.CoreTerms;
import counterbench.campaign.KitTerms;
import counterbench.campaign.Pack;
import counterbench.campaign.store.PackBook;
import counterbench.db.Store;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Status;
import counterbench.shell.print.Column;
import counterbench.shell.print.Rows;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Shows every loaded pack. */
public final class CampaignListCommand extends BaseCommand {
    private final Supplier<Store> store;

    public CampaignListCommand(Supplier<Store> store) {
        super(
                Manual.of("campaign list", Group.CAMPAIGNS, "Show the loaded campaigns")
                        .printsRows()
                        .note("A job is judged by the revision in force on its completion."));
        this.store = store;
    }

    @Override
    protected Status run(Invocation in) {
        List<Pack> packs = new PackBook(store.get()).all().all();
        try (Rows rows =
                in.rows(
                        Column.text("campaign"),
                        Column.text("revision"),
                        Column.text("in_force_from"),
                        Column.text("title"),
                        Column.text("kits"),
                        Column.text("cores"),
                        Column.number("steps"))) {
            packs.forEach(pack -> add(rows, pack));
        }
        return Status.DONE;
    }

    private static void add(Rows rows, Pack pack) {
        rows.add(
                pack.campaign(),
                pack.revision(),
                pack.inForceFrom(),
                pack.title(),
                pack.kits().stream().map(KitTerms::part).collect(Collectors.joining(", ")),
                pack.cores().stream().map(CoreTerms::part).collect(Collectors.joining(", ")),
                pack.procedure().size());
    }
}
