package tiewright.http.answers;

import java.util.Optional;
import java.util.function.Supplier;

/** Something that the first who asks works out, while others who ask wait for it. */
public final class Once<V> {
    private Optional<V> value = Optional.empty();

    /** Work that fails is tried again by whoever asks next. */
    public synchronized V get(Supplier<V> work) {
        if (value.isEmpty()) {
            value = Optional.of(work.get());
        }
        return value.get();
    }
}
