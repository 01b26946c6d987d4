package io.github.heatswell.diagnosis;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/** Cache of the last results: a search comes back to places it has been, and a third of its runs repeated another. */
final class Recent<K, V> {

    /** So many are kept; four times as many would save few more runs. */
    private static final int MAX_KEPT = 64;

    private final Map<K, V> kept = new LinkedHashMap<>(2 * MAX_KEPT, 0.75f, true);

    /** What was made of a key, or is made now. */
    V get(K key, Function<K, V> maker) {
        V known = kept.get(key);
        if (known != null) {
            return known;
        }
        V made = maker.apply(key);
        kept.put(key, made);
        if (kept.size() > MAX_KEPT) {
            Iterator<K> oldest = kept.keySet().iterator();
            oldest.next();
            oldest.remove();
        }
        return made;
    }
}
