package tiewright.film;

import java.util.Optional;
import tiewright.event.PlayerId;
import tiewright.scoring.Score;

/**
 * A rally that cannot have been as it is noted.
 *
 * @param rally its number
 * @param score before it, as the rallies before give it, side one first
 * @param noted who is noted as server, where that is what cannot be
 * @param derived who served as the rallies before give it; empty after an unsure rally
 */
public record Impossible(Kind kind, int rally, Score score, Optional<PlayerId> noted, Optional<PlayerId> derived) {
    /** What is wrong with it. */
    public enum Kind {
        /** The game was over. */
        AFTER_END("after-end"),
        /** Somebody else served. */
        OTHER_SERVER("other-server");

        private final String code;

        Kind(String code) {
            this.code = code;
        }

        public String code() {
            return code;
        }
    }
}
