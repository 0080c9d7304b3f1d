package counterbench.journal;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4) over text in UTF-8. */
public final class Sha256 {
    private final MessageDigest digest;

    public Sha256() {
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** The digest of a text. */
    public byte[] of(String text) {
        return digest.digest(text.getBytes(StandardCharsets.UTF_8));
    }

    /** The digest of a text in 64 lower-case hexadecimal digits. */
    public static String hex(String text) {
        return HexFormat.of().formatHex(new Sha256().of(text));
    }
}
