package counterbench.stock;

import java.util.Comparator;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Where goods can lie, or come from, or go to. Every move takes a quantity out of one account and
 * puts it into another.
 *
 * @param kind what sort of place
 * @param name the kit serial, job, core tag or site, where the kind has one for each; else null
 */
public record Account(Kind kind, @Nullable String name) implements Comparable<Account> {
    /** Whoever the goods are bought from. */
    public static final Account SUPPLIER = new Account(Kind.SUPPLIER, null);

    /** Loose parts on the shelf. */
    public static final Account STORE = new Account(Kind.STORE, null);

    /** Damaged, dropped, expired or used up. */
    public static final Account SCRAP = new Account(Kind.SCRAP, null);

    /** Differences that counting found. */
    public static final Account COUNT = new Account(Kind.COUNT, null);

    /** Sent back to the supplier. */
    public static final Account RETURNED = new Account(Kind.RETURNED, null);

    /** Stands for a core or a site that the paper does not name. */
    public static final String NOT_SAID = "?";

    private static final Comparator<Account> ORDER =
            Comparator.comparing(Account::kind)
                    .thenComparing(a -> Objects.requireNonNullElse(a.name, ""));

    public Account {
        Objects.requireNonNull(kind, "kind");
        if (kind.isNamed() != (name != null)) {
            throw new IllegalArgumentException(
                    kind + (kind.isNamed() ? " needs a name" : " has no name"));
        }
    }

    /** What still lies in a kit's box. */
    public static Account kit(String serial) {
        return new Account(Kind.KIT, serial);
    }

    /** What a job has been given and has not yet fitted, put back or scrapped. */
    public static Account bench(String job) {
        return new Account(Kind.BENCH, job);
    }

    /** What a job has fitted new to its vehicle. */
    public static Account vehicle(String job) {
        return new Account(Kind.VEHICLE, job);
    }

    /** Plugs on a core; {@link #NOT_SAID} where the core is not known. */
    public static Account core(@Nullable String tag) {
        return new Account(Kind.CORE, Objects.requireNonNullElse(tag, NOT_SAID));
    }

    /** On the way to or from another site; {@link #NOT_SAID} where it is not known. */
    public static Account transit(@Nullable String otherSite) {
        return new Account(Kind.TRANSIT, Objects.requireNonNullElse(otherSite, NOT_SAID));
    }

    /** Whether goods in it are the workshop's own stock: on the shelf, in a kit or on a bench. */
    public boolean isStock() {
        return kind == Kind.KIT || kind == Kind.STORE || kind == Kind.BENCH;
    }

    /** Whether only the acts of one kit or job and of what is linked with it can touch it. */
    public boolean isLocal() {
        return kind == Kind.KIT || kind == Kind.BENCH || kind == Kind.VEHICLE || kind == Kind.CORE;
    }

    @Override
    public int compareTo(Account other) {
        return ORDER.compare(this, other);
    }

    /** As people write it: {@code STORE}, {@code KIT(K-2207)}. */
    @Override
    public String toString() {
        return name == null ? kind.name() : kind.name() + "(" + name + ")";
    }

    /** The sorts of accounts. */
    public enum Kind {
        SUPPLIER(false),
        KIT(true),
        STORE(false),
        BENCH(true),
        VEHICLE(true),
        CORE(true),
        SCRAP(false),
        COUNT(false),
        TRANSIT(true),
        RETURNED(false);

        private final boolean named;

        Kind(boolean named) {
            this.named = named;
        }

        /** Whether there is one account for each name. */
        public boolean isNamed() {
            return named;
        }
    }
}
