package counterbench.review;

import counterbench.facts.Canonical;
import counterbench.journal.Sha256;
import counterbench.judgement.Finding;
import counterbench.judgement.Subject;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The short name by which people call a finding: {@code F-} and ten characters, the first 50 bits
 * of the SHA-256 over its identity in base 32. The same finding has the same name whenever it is
 * computed. The letters I, L, O and U are left out, since they are easily misread.
 */
public record FindingId(String text) implements Comparable<FindingId> {
    private static final String DIGITS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    private static final Pattern FORM = Pattern.compile("F-[0-9A-HJKMNP-TV-Z]{10}");
    private static final String PREFIX = "F-";
    private static final char UNIT_SEPARATOR = '\u001f';
    private static final int LENGTH = 10;
    private static final int BITS = 5;

    public FindingId {
        if (!FORM.matcher(text).matches()) {
            throw new IllegalArgumentException("no finding's name: " + text);
        }
    }

    /** The name of a finding. */
    public static FindingId of(Finding finding) {
        return of(finding.site(), finding.rule().word(), finding.subject());
    }

    /** The name of whatever a rule says of a subject at a site. */
    public static FindingId of(String site, String rule, Subject subject) {
        String identity =
                String.join(
                        String.valueOf(UNIT_SEPARATOR),
                        site,
                        rule,
                        subject.kind().word(),
                        subject.name(),
                        Objects.toString(subject.part(), ""),
                        Objects.toString(subject.step(), ""));
        return new FindingId(PREFIX + inBase32(new Sha256().of(Canonical.normalised(identity))));
    }

    /** The name that a person typed, in any letter case; empty if it is none. */
    public static Optional<FindingId> read(String typed) {
        String upper = typed.strip().toUpperCase(Locale.ROOT);
        return FORM.matcher(upper).matches() ? Optional.of(new FindingId(upper)) : Optional.empty();
    }

    private static String inBase32(byte[] digest) {
        long bits = 0;
        for (int i = 0; i < Long.BYTES; i++) {
            bits = (bits << Byte.SIZE) | (digest[i] & 0xffL);
        }
        StringBuilder text = new StringBuilder(LENGTH);
        for (int i = 1; i <= LENGTH; i++) {
            text.append(DIGITS.charAt((int) (bits >>> (Long.SIZE - BITS * i)) & 31));
        }
        return text.toString();
    }

    @Override
    public int compareTo(FindingId other) {
        return text.compareTo(other.text);
    }

    @Override
    public String toString() {
        return text;
    }
}
