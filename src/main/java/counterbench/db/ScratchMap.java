package counterbench.db;

import java.util.AbstractMap;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** One map of a {@link Scratch}. */
final class ScratchMap<K, V> extends AbstractMap<K, V> {
    private final Supplier<Map<K, V>> opening;

    /** All pairs at first; once there are too many, those that were told or looked for last. */
    private final Map<K, V> near;

    /** All pairs, once memory does not hold them. */
    private @Nullable Map<K, V> all;

    /**
     * @param most how many pairs memory holds
     * @param opening opens a map in the file
     */
    ScratchMap(int most, Supplier<Map<K, V>> opening) {
        this.opening = opening;
        this.near =
                new LinkedHashMap<>() {
                    private static final long serialVersionUID = 1L;

                    @Override
                    protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
                        return size() > most && isInFile(this);
                    }
                };
    }

    private boolean isInFile(Map<K, V> pairs) {
        if (all == null) {
            all = opening.get();
            Map<K, V> filled = all;
            pairs.forEach((key, value) -> Scratch.attempt(() -> filled.put(key, value)));
        }
        return true;
    }

    @Override
    @SuppressWarnings("unchecked") // Nobody asks for a key of another class.
    public @Nullable V get(@Nullable Object key) {
        V value = near.get(key);
        if (value != null || all == null) {
            return value;
        }
        Map<K, V> filled = all;
        V found = Scratch.attempt(() -> filled.get(key));
        if (found != null) {
            near.put((K) key, found);
        }
        return found;
    }

    @Override
    public @Nullable V put(K key, V value) {
        Map<K, V> filled = all;
        if (filled == null) {
            return near.put(key, value);
        }
        near.put(key, value);
        return Scratch.attempt(() -> filled.put(key, value));
    }

    @Override
    public boolean containsKey(@Nullable Object key) {
        return get(key) != null;
    }

    @Override
    public void clear() {
        near.clear();
        if (all != null) {
            Map<K, V> filled = all;
            Scratch.attempt(
                    () -> {
                        filled.clear();
                        return true;
                    });
        }
    }

    @Override
    public Set<Map.Entry<K, V>> entrySet() {
        return Collections.unmodifiableSet((all == null ? near : all).entrySet());
    }
}
