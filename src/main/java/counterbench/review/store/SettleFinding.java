package counterbench.review.store;

import counterbench.db.Store;
import counterbench.facts.ColumnType;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import counterbench.journal.Draft;
import counterbench.journal.Entry;
import counterbench.journal.store.JooqJournal;
import counterbench.judgement.Finding;
import counterbench.people.Person;
import counterbench.review.FindingId;
import counterbench.review.SettleRights;
import counterbench.review.Settlement;
import counterbench.review.Settlements;
import counterbench.shared.Refused;
import counterbench.shared.Site;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;

/** Records that a person lets a finding stand, with the reason. */
public final class SettleFinding {
    private static final String ENTRY_KIND = "finding settle";
    private static final int LONGEST = ColumnType.NOTE.maxLength();

    private final JooqJournal journal;

    public SettleFinding(Store store) {
        this.journal = new JooqJournal(store);
    }

    /**
     * Who settles, when, why and by which command.
     *
     * @param source the command as it was typed
     */
    public record By(Person person, Instant now, String reason, String source) {}

    /**
     * Settles a finding on the evidence that it has.
     *
     * @throws Refused if it is not the person's to settle, or is settled already
     */
    public Entry run(Site site, Finding finding, By by) {
        by.person().mustActAs(SettleRights.roleFor(finding), asked(finding));
        refuseIfLong(finding, by.reason());
        Draft draft = Draft.of(site, by.now(), by.person().name(), ENTRY_KIND, by.source());
        return journal.record(
                draft,
                sql -> {
                    refuseIfSettled(sql, site, finding);
                    return List.of(row(finding, by));
                });
    }

    private static void refuseIfLong(Finding finding, String reason) {
        if (reason.length() > LONGEST) {
            throw new Refused(
                    asked(finding),
                    "the reason has " + reason.length() + " characters",
                    "say it in " + LONGEST);
        }
    }

    private static void refuseIfSettled(DSLContext sql, Site site, Finding finding) {
        Optional<Settlement> last =
                new Settlements(SettlementReader.all(sql, site, ReviewSite.NEWEST)).of(finding);
        if (last.isPresent()) {
            Settlement settlement = last.get();
            throw new Refused(
                    asked(finding),
                    settlement.person()
                            + " has settled it already, in entry "
                            + settlement.address().entry()
                            + ": "
                            + settlement.reason(),
                    "nothing is left to do; to open it again, reverse that entry");
        }
    }

    private static String asked(Finding finding) {
        return "settling of finding " + FindingId.of(finding);
    }

    private static FactRow row(Finding finding, By by) {
        return new FactRow(
                FactKind.SETTLEMENTS,
                Arrays.asList(
                        finding.rule().word(),
                        finding.subject().kind().word(),
                        finding.subject().name(),
                        by.now(),
                        by.reason(),
                        Settlement.hashOf(finding),
                        cut(finding.evidence()),
                        finding.subject().part(),
                        finding.subject().step()),
                null);
    }

    /** For reading only, and the hash covers all of it; a pair of surrogates is not cut apart. */
    private static String cut(String evidence) {
        if (evidence.length() <= LONGEST) {
            return evidence;
        }
        boolean inPair = Character.isHighSurrogate(evidence.charAt(LONGEST - 1));
        return evidence.substring(0, inPair ? LONGEST - 1 : LONGEST);
    }
}
