package counterbench.shell.claims;

import counterbench.acts.Act;
import counterbench.acts.Stamp;
import counterbench.acts.desk.WithdrawClaim;
import counterbench.acts.store.ReadClaims;
import counterbench.acts.store.RecordAct;
import counterbench.db.Store;
import counterbench.shared.Site;
import counterbench.shell.Argument;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Option;
import counterbench.shell.Readings;
import counterbench.shell.SiteChoice;
import counterbench.shell.acts.ActCommand;
import java.time.LocalDate;
import java.util.function.Supplier;

/** Takes a claim back. */
public final class ClaimWithdrawCommand extends ActCommand {
    private static final Argument<String> CLAIM =
            Argument.of("CLAIM", Readings.TEXT, "the claim's number");
    private static final Option<String> REASON =
            Option.of("reason", "TEXT", Readings.TEXT, "why").asRequired();

    private final Supplier<Store> store;

    public ClaimWithdrawCommand(Supplier<Store> store, SiteChoice sites) {
        super(
                Manual.of("claim withdraw", Group.WARRANTY_DESK, "Take a claim back")
                        .takes(CLAIM, REASON, DeskOptions.ON)
                        .example("claim withdraw CN-030 --reason \"claimed before by CN-017\"")
                        .note(
                                "Its job can be claimed again afterwards; the new claim says which"
                                        + " one it replaces.")
                        .note(
                                "That it was submitted stays a fact: a claim that came before its"
                                        + " job or core allowed it stays claim-ungrounded until the"
                                        + " lead settles that. Where only its day is wrong, reverse"
                                        + " its row and record the right one."),
                store,
                sites);
        this.store = store;
    }

    @Override
    protected Act act(Invocation in, Site site, Stamp stamp) {
        String claim = in.get(CLAIM);
        ReadClaims claims = new ReadClaims(store.get());
        String job =
                claims.jobOf(site, claim)
                        .orElseThrow(() -> UnknownClaim.refused(in, site, claim, claims));
        LocalDate on = DeskOptions.on(in, site.dayOf(stamp.at()), "withdraw");
        return new WithdrawClaim(claim, job, on, in.get(REASON), stamp);
    }

    @Override
    protected String done(Invocation in, RecordAct.Recorded recorded) {
        return "claim "
                + in.get(CLAIM)
                + " for job "
                + recorded.facts().get(0).text("job")
                + " withdrawn on "
                + recorded.facts().get(0).date("withdrawn_on");
    }
}
