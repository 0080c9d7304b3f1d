package counterbench.acts.scan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What is kept in mind between two scans, and may be forgotten without harm.
 *
 * @param pending the beginning of a line that waits for its end
 * @param focus the step that was named last, while readings of it may come
 * @param kit the kit that was scanned last
 * @param core the core that was scanned last
 * @param instruments those that were scanned, the last one first
 */
public record Mind(
        @Nullable String pending,
        @Nullable Focus focus,
        @Nullable String kit,
        @Nullable String core,
        List<String> instruments) {
    /** Nothing. */
    public static final Mind EMPTY = new Mind(null, null, null, null, List.of());

    public Mind {
        instruments = List.copyOf(instruments);
    }

    /**
     * A step that was named.
     *
     * @param again whether it is read again; else readings of a marked step are only compared
     * @param fastener the fastener whose reading comes next, where it is read again or compared
     * @param last the last fastener that is read again
     */
    public record Focus(String step, boolean again, int fastener, int last) {
        /** A step whose readings come, or are compared from one on. */
        static Focus of(String step, int fastener) {
            return new Focus(step, false, fastener, fastener);
        }

        /** What is read again next; nothing once the last one was. */
        @Nullable Focus next() {
            return fastener < last ? new Focus(step, again, fastener + 1, last) : null;
        }
    }

    /** The beginning of a line that waits for its end. */
    public Optional<String> begun() {
        return Optional.ofNullable(pending);
    }

    /** A line behind the beginning that waits for it, if any does. */
    public String whole(String line) {
        return pending == null ? line : pending + " " + line;
    }

    /** The same with no line begun. */
    public Mind answered() {
        return waitingAfter(null);
    }

    /** The same with no step named. */
    public Mind unfocused() {
        return on(null);
    }

    Optional<Focus> focused() {
        return Optional.ofNullable(focus);
    }

    Mind waitingAfter(@Nullable String beginning) {
        return new Mind(beginning, focus, kit, core, instruments);
    }

    Mind on(@Nullable Focus step) {
        return new Mind(pending, step, kit, core, instruments);
    }

    Mind withKit(String serial) {
        return new Mind(pending, focus, serial, core, instruments);
    }

    Mind withCore(String tag) {
        return new Mind(pending, focus, kit, tag, instruments);
    }

    Mind withInstrument(String name) {
        List<String> more = new ArrayList<>(List.of(name));
        instruments.stream().filter(other -> !other.equals(name)).forEach(more::add);
        return new Mind(pending, focus, kit, core, more);
    }
}
