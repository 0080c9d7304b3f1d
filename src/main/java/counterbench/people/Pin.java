package counterbench.people;

import java.util.Objects;

/** A PIN as it was typed. Shows itself to nobody, so that it cannot slip into a message. */
public final class Pin {
    private final String typed;

    public Pin(String typed) {
        this.typed = Objects.requireNonNull(typed, "typed");
    }

    /** What was typed, for checking or hashing only. */
    public CharSequence typed() {
        return typed;
    }

    @Override
    public String toString() {
        return "a PIN";
    }
}
