package counterbench.review;

import static org.assertj.core.api.Assertions.assertThat;

import counterbench.judgement.Subject;
import counterbench.judgement.SubjectKind;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class FindingIdTest {
    private static final Subject WASHER = Subject.ofPart(SubjectKind.JOB, "J-118", "QM-4473");

    /**
     * The first 50 bits of a SHA-256 (FIPS 180-4), here by plain arithmetic on the whole digest.
     */
    @Test
    void the_name_is_the_first_fifty_bits_of_the_hash_over_the_identity() throws Exception {
        String identity =
                String.join("\u001f", "NORTH", "reused-hardware", "job", "J-118", "QM-4473", "");
        byte[] digest =
                MessageDigest.getInstance("SHA-256")
                        .digest(identity.getBytes(StandardCharsets.UTF_8));
        String binary =
                IntStream.range(0, 256)
                        .mapToObj(i -> new BigInteger(1, digest).testBit(255 - i) ? "1" : "0")
                        .reduce("", String::concat);
        StringBuilder expected = new StringBuilder("F-");
        for (int i = 0; i < 10; i++) {
            int digit = Integer.parseInt(binary.substring(5 * i, 5 * i + 5), 2);
            expected.append("0123456789ABCDEFGHJKMNPQRSTVWXYZ".charAt(digit));
        }
        assertThat(FindingId.of("NORTH", "reused-hardware", WASHER))
                .hasToString(expected.toString());
    }

    @Test
    void whatever_differs_in_the_identity_gives_another_name() {
        FindingId name = FindingId.of("NORTH", "reused-hardware", WASHER);
        assertThat(name).isEqualTo(FindingId.of("NORTH", "reused-hardware", WASHER));
        assertThat(
                        new FindingId[] {
                            FindingId.of("SOUTH", "reused-hardware", WASHER),
                            FindingId.of("NORTH", "hardware-short", WASHER),
                            FindingId.of(
                                    "NORTH",
                                    "reused-hardware",
                                    Subject.ofPart(SubjectKind.CORE, "J-118", "QM-4473")),
                            FindingId.of(
                                    "NORTH",
                                    "reused-hardware",
                                    new Subject(SubjectKind.JOB, "J-118", null, "QM-4473")),
                            FindingId.of(
                                    "NORTH",
                                    "reused-hardware",
                                    Subject.of(SubjectKind.JOB, "J-118QM-4473")),
                        })
                .doesNotContain(name)
                .doesNotHaveDuplicates();
    }

    @Test
    void a_name_is_read_in_any_letter_case_and_nothing_else_is() {
        FindingId name = FindingId.of("NORTH", "reused-hardware", WASHER);
        assertThat(FindingId.read(" " + name.text().toLowerCase(java.util.Locale.ROOT)))
                .contains(name);
        assertThat(FindingId.read("F-123")).isEmpty();
        assertThat(FindingId.read("F-IIIIIIIIII")).as("letters left out").isEmpty();
        assertThat(FindingId.read("")).isEmpty();
    }
}
