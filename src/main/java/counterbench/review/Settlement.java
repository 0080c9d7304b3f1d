package counterbench.review;

import counterbench.facts.Canonical;
import counterbench.journal.Sha256;
import counterbench.judgement.Finding;
import counterbench.shared.Address;
import java.time.Instant;
import java.util.Objects;

/**
 * A person's word that a finding may stand, on the evidence of that time.
 *
 * @param address where it stands in the site's journal
 * @param finding the finding's name
 * @param at when it was settled
 * @param person who settled it
 * @param evidenceHash the hash over the evidence, by which a change is noticed
 * @param evidence the evidence of that time, for reading; cut where it is very long
 * @param takenBack whether the fact was reversed
 */
public record Settlement(
        Address address,
        FindingId finding,
        Instant at,
        String person,
        String reason,
        String evidenceHash,
        String evidence,
        boolean takenBack) {
    public Settlement {
        Objects.requireNonNull(address, "address");
        Objects.requireNonNull(finding, "finding");
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(person, "person");
        Objects.requireNonNull(reason, "reason");
        Objects.requireNonNull(evidenceHash, "evidenceHash");
        Objects.requireNonNull(evidence, "evidence");
    }

    /** The hash over a finding's evidence: SHA-256 in 64 hexadecimal digits. */
    public static String hashOf(Finding finding) {
        return Sha256.hex(Canonical.normalised(finding.evidence()));
    }

    /** Whether it was given on the evidence that the finding has now. */
    public boolean isOnTheEvidenceOf(Finding found) {
        return evidenceHash.equals(hashOf(found));
    }
}
