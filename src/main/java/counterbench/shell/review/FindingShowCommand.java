package counterbench.shell.review;

import counterbench.campaign.Pack;
import counterbench.campaign.store.PackBook;
import counterbench.db.Store;
import counterbench.judgement.Finding;
import counterbench.judgement.SubjectKind;
import counterbench.review.FindingId;
import counterbench.review.FindingState;
import counterbench.review.SettleRights;
import counterbench.review.Settlement;
import counterbench.review.StatedFinding;
import counterbench.review.store.FindingBook;
import counterbench.shared.Site;
import counterbench.shell.BaseCommand;
import counterbench.shell.Group;
import counterbench.shell.Invocation;
import counterbench.shell.Manual;
import counterbench.shell.Options;
import counterbench.shell.SiteChoice;
import counterbench.shell.Status;
import counterbench.shell.acts.LiveNames;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/** Shows a finding with all that is known of it. */
public final class FindingShowCommand extends BaseCommand {
    private static final DateTimeFormatter LOCAL =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    /** Findings about these come from work that can hurt somebody. */
    private static final Set<SubjectKind> BENCH_WORK = Set.of(SubjectKind.JOB, SubjectKind.CORE);

    private final Supplier<Store> store;
    private final SiteChoice sites;

    public FindingShowCommand(Supplier<Store> store, SiteChoice sites) {
        super(
                Manual.of("finding show", Group.MONTH, "Show a finding and what was said of it")
                        .takes(
                                FoundFinding.ID.completedBy(new LiveNames(store).findings()),
                                Options.SITE.completedBy(new LiveNames(store).sites()))
                        .example("finding show F-7Q2M4C9XKD"));
        this.store = store;
        this.sites = sites;
    }

    @Override
    protected Status run(Invocation in) {
        List<Site> asked = sites.named(in);
        Optional<FoundFinding> found = FoundFinding.find(in, store.get(), asked);
        if (found.isPresent()) {
            Finding finding = found.get().stated().finding();
            TermsOfFinding terms =
                    TermsOfFinding.of(finding, store.get(), found.get().site(), in.now());
            show(in, found.get().stated(), terms);
            history(in, found.get().site());
            cautions(in, finding, terms);
            return Status.DONE;
        }
        FindingId wanted = in.get(FoundFinding.ID);
        Site bearing =
                asked.stream()
                        .filter(site -> !said(site, wanted).isEmpty())
                        .findFirst()
                        .orElseThrow(() -> FoundFinding.unknown(in, store.get(), asked));
        in.print("finding " + wanted + " does not hold any more");
        history(in, bearing);
        return Status.DONE;
    }

    private static void show(Invocation in, StatedFinding stated, TermsOfFinding terms) {
        Finding finding = stated.finding();
        in.print("finding " + stated.id() + ", " + finding.rule().severity().word());
        in.print(finding.message());
        in.print("rule      " + finding.rule().word() + ": " + finding.rule().meaning());
        in.print("subject   " + FindingRows.subject(finding.subject()));
        in.print("site      " + finding.site());
        if (finding.campaign() != null) {
            in.print("campaign  " + finding.campaign());
        }
        if (finding.month() != null) {
            in.print("month     " + finding.month());
        }
        terms.words().ifPresent(words -> in.print("terms     " + words));
        in.print("evidence  " + finding.evidence());
        in.print("state     " + state(stated));
    }

    private static String state(StatedFinding stated) {
        String settles = SettleRights.roleFor(stated.finding()).word();
        return stated.state() == FindingState.SETTLED
                ? "settled"
                : "open until it is put right, or the role "
                        + settles
                        + " settles it with a reason";
    }

    private List<Settlement> said(Site site, FindingId finding) {
        return new FindingBook(store.get()).history(site, finding);
    }

    private void history(Invocation in, Site site) {
        for (Settlement settlement : said(site, in.get(FoundFinding.ID))) {
            in.print(
                    "settled   "
                            + LOCAL.format(settlement.at().atZone(site.zone()))
                            + " by "
                            + settlement.person()
                            + ", entry "
                            + settlement.address().entry()
                            + (settlement.takenBack() ? ", taken back" : "")
                            + ": "
                            + settlement.reason());
            in.print("          on the evidence: " + settlement.evidence());
        }
    }

    private void cautions(Invocation in, Finding finding, TermsOfFinding terms) {
        String campaign = finding.campaign();
        if (campaign == null || !BENCH_WORK.contains(finding.subject().kind())) {
            return;
        }
        in.print("");
        in.print("Before anybody works on it again");
        terms.pack()
                .or(() -> newest(campaign))
                .map(Pack::cautions)
                .orElse(List.of())
                .forEach(c -> in.print("  " + c));
        in.print("  The maker's own procedure, local codes and licensed practice come first.");
    }

    private Optional<Pack> newest(String campaign) {
        List<Pack> revisions = new PackBook(store.get()).all().revisions(campaign);
        return revisions.isEmpty()
                ? Optional.empty()
                : Optional.of(revisions.get(revisions.size() - 1));
    }
}
