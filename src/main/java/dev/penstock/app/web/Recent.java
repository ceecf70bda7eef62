package dev.penstock.app.web;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The things that were used last, by key. Safe for many threads.
 *
 * @param <K> kind of key
 * @param <V> kind of thing
 */
final class Recent<K, V> {

    private static final float LOAD = 0.75f;

    private final int most;
    private final Map<K, V> things = new LinkedHashMap<>(16, LOAD, true);

    /** @param most how many are kept */
    Recent(int most) {
        this.most = most;
    }

    synchronized Optional<V> get(K key) {
        return Optional.ofNullable(things.get(key));
    }

    synchronized void put(K key, V thing) {
        things.put(key, thing);
        while (things.size() > most) {
            things.remove(things.keySet().iterator().next());
        }
    }
}
