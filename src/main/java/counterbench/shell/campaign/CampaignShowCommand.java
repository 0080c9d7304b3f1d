package counterbench.shell.campaign;

import counterbench.campaign.Pack;
import counterbench.campaign.Packs;
import counterbench.campaign.store.PackBook;
import counterbench.db.Store;
import counterbench.shared.NearMatch;
import counterbench.shared.Refused;
import counterbench.shell.Argument;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Readings;
import counterbench.shell.Status;
import java.util.List;
import java.util.function.Supplier;

/** Shows the terms of a campaign. */
public final class CampaignShowCommand extends BaseCommand {
    private static final Option<String> REVISION =
            Option.of("revision", "REVISION", Readings.TEXT, "which one; the newest unless said");

    private final Argument<String> campaign;
    private final Supplier<Store> store;

    public CampaignShowCommand(Supplier<Store> store) {
        this(store, campaign(store));
    }

    private CampaignShowCommand(Supplier<Store> store, Argument<String> campaign) {
        super(
                Manual.of("campaign show", Group.CAMPAIGNS, "Show the terms of a campaign")
                        .takes(campaign, REVISION)
                        .example("campaign show QM-26-014 --revision B")
                        .note(
                                "The maker's own procedure, local codes and licensed practice come"
                                        + " first; the pack only records that they were followed."));
        this.store = store;
        this.campaign = campaign;
    }

    private static Argument<String> campaign(Supplier<Store> store) {
        return Argument.of("CAMPAIGN", Readings.TEXT, "the campaign's number")
                .completedBy(begun -> List.copyOf(new PackBook(store.get()).all().campaigns()));
    }

    @Override
    protected Status run(Invocation in) {
        Packs packs = new PackBook(store.get()).all();
        String wanted = in.get(campaign);
        List<Pack> revisions = packs.revisions(wanted);
        if (revisions.isEmpty()) {
            throw KnownCampaign.refusal(wanted, packs);
        }
        CampaignPage.of(chosen(in, revisions)).forEach(in::print);
        return Status.DONE;
    }

    private static Pack chosen(Invocation in, List<Pack> revisions) {
        String wanted = in.find(REVISION).orElse(revisions.get(revisions.size() - 1).revision());
        List<String> known = revisions.stream().map(Pack::revision).toList();
        return revisions.stream()
                .filter(pack -> pack.revision().equals(wanted))
                .findFirst()
                .orElseThrow(
                        () ->
                                new Refused(
                                        "revision \"" + wanted + "\"",
                                        "the campaign has no such revision",
                                        NearMatch.of(wanted, known)
                                                .map(near -> "did you mean " + near + "?")
                                                .orElse("there are " + String.join(", ", known))));
    }
}
