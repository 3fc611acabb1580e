package tiewright.http.answers;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.TieId;
import tiewright.lineup.club.TriedNumbers;
import tiewright.rating.Evidence;
import tiewright.rating.Prior;
import tiewright.rating.Rating;
import tiewright.rating.Strengths;
import tiewright.standings.NeedsReport;
import tiewright.timetable.Expected;

/**
 * What takes a moment to work out. What is the same for everybody is kept as long as nothing has happened that everybody may
 * notice: in a hall full of phones, which all ask when something has changed, one works it out and the others wait for it. What
 * comes from the notes of a club is found again by these very notes, so that nobody else can come upon it.
 */
public final class Worked {
    private record Pool(long seq, String pool) {}

    /** @param minute the expected times move with the clock, once a minute */
    private record Moment(long seq, long minute) {}

    private final Recent<Pool, List<NeedsReport>> needs = new Recent<>(64);
    private final Recent<Moment, Map<TieId, Expected>> expected = new Recent<>(8);

    /**
     * What each club of the pool still needs, in draw order.
     *
     * @param now the last fact that everybody may notice
     * @param work how it is worked out, asked once for each {@code now}
     */
    List<NeedsReport> needs(long now, String pool, Supplier<List<NeedsReport>> work) {
        return needs.get(new Pool(now, pool), work);
    }

    /**
     * When ties are likely to begin: the same for everybody within a minute.
     *
     * @param now the last fact that everybody may notice
     */
    Map<TieId, Expected> expected(long now, Instant at, Supplier<Map<TieId, Expected>> work) {
        return expected.get(new Moment(now, at.getEpochSecond() / 60), work);
    }

    /** @param evidence what a club knows beside what everybody does, in games and film */
    private record Known(Prior prior, Evidence evidence, long seed) {}

    private final Recent<Known, Strengths> strengths = new Recent<>(32);

    /** The strengths that follow from this, to be drawn by this seed. */
    Strengths strengths(Prior prior, Evidence evidence, long seed) {
        return strengths.get(
                new Known(prior, evidence, seed),
                () -> Rating.fit(prior, evidence).drawnBy(seed));
    }

    private record Tried(List<PrivateNote.PastGame> games, Set<PlayerId> own) {}

    private final Recent<Tried, Optional<TriedNumbers>> tried = new Recent<>(16);

    /** How the numbers would have done on these games. */
    Optional<TriedNumbers> tried(List<PrivateNote.PastGame> games, Set<PlayerId> own) {
        return tried.get(new Tried(games, own), () -> TriedNumbers.of(games, own));
    }

    /** Once private data are deleted, nothing that came from them is kept. */
    public void forgetPrivate() {
        strengths.forget();
        tried.forget();
    }

    /** The answers asked for last. Each is worked out by whoever asks first; those who ask meanwhile wait, others do not. */
    private static final class Recent<K, V> {
        private final Map<K, Once<V>> kept;

        Recent(int most) {
            this.kept = new LinkedHashMap<>(16, 0.75f, true) {
                @Override
                protected boolean removeEldestEntry(Map.Entry<K, Once<V>> eldest) {
                    return size() > most;
                }
            };
        }

        void forget() {
            synchronized (kept) {
                kept.clear();
            }
        }

        V get(K key, Supplier<V> work) {
            Once<V> once;
            synchronized (kept) {
                once = kept.computeIfAbsent(key, unknown -> new Once<>());
            }
            return once.get(work);
        }
    }
}
