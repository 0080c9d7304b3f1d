package counterbench.people.store;

import counterbench.people.Pin;
import counterbench.people.PinRule;
import counterbench.shared.Refused;
import java.util.Objects;
import org.springframework.security.crypto.bcrypt.BCryptPasswordEncoder;

/**
 * A PIN as the store keeps it: a slow salted hash (bcrypt, at its library's usual strength: a tenth
 * of a second a try, which a person who signs in does not feel).
 */
public final class PinHash {
    private static final BCryptPasswordEncoder HASHES = new BCryptPasswordEncoder();

    private final String hash;

    private PinHash(String hash) {
        this.hash = hash;
    }

    /**
     * Hashes a new PIN, with a salt of its own.
     *
     * @throws Refused if it does not look like one
     */
    public static PinHash of(Pin pin) {
        PinRule.check(pin);
        return new PinHash(Objects.requireNonNull(HASHES.encode(pin.typed()), "hash"));
    }

    static PinHash kept(String hash) {
        return new PinHash(hash);
    }

    boolean isOf(Pin pin) {
        return HASHES.matches(pin.typed(), hash);
    }

    String toKeep() {
        return hash;
    }

    @Override
    public String toString() {
        return "the hash of a PIN";
    }
}
