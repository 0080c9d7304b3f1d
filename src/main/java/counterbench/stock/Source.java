package counterbench.stock;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Where goods came from. It travels with them, so that cost, expiry and origin are known wherever
 * they lie.
 *
 * @param kind what sort of origin
 * @param name the kit's serial or the lot; null for loose parts whose lot nobody wrote down
 */
public record Source(Kind kind, @Nullable String name) {
    /** Loose parts without a lot. */
    public static final Source LOOSE = new Source(Kind.LOOSE, null);

    public Source {
        Objects.requireNonNull(kind, "kind");
        if ((kind == Kind.LOOSE) != (name == null)) {
            throw new IllegalArgumentException(kind + " with the name " + name);
        }
    }

    /** Out of a kit. */
    public static Source kit(String serial) {
        return new Source(Kind.KIT, serial);
    }

    /** A loose part of that lot, or of none that is known. */
    public static Source lot(@Nullable String lot) {
        return lot == null ? LOOSE : new Source(Kind.LOT, lot);
    }

    /** As people read it: {@code kit K-2207}, {@code lot 7C}, {@code loose}. */
    @Override
    public String toString() {
        return switch (kind) {
            case KIT -> "kit " + name;
            case LOT -> "lot " + name;
            case LOOSE -> "loose";
        };
    }

    /** The sorts of origin. */
    public enum Kind {
        KIT,
        LOT,
        LOOSE
    }
}
