package tiewright.standings;

import java.util.List;
import tiewright.event.ClubId;

/** One step on the way to a place, with the facts that it used. */
public sealed interface Line permits Line.Compared, Line.ByLot, Line.LotNeeded {

    /** Which of the three a line is; to be switched on. */
    enum Kind {
        COMPARED,
        BY_LOT,
        LOT_NEEDED
    }

    Kind kind();

    /** The clubs that were level when this step came, at least one. */
    List<ClubId> level();

    /**
     * The clubs were compared by a criterion.
     *
     * @param values of every club compared, the best first
     * @param ties the ties among two clubs compared by the tie between them; else empty
     */
    record Compared(Criterion criterion, List<ClubValue> values, List<TieBetween> ties) implements Line {
        public Compared {
            values = List.copyOf(values);
            ties = List.copyOf(ties);
        }

        @Override
        public Kind kind() {
            return Kind.COMPARED;
        }

        @Override
        public List<ClubId> level() {
            return values.stream().map(ClubValue::club).toList();
        }

        public Value of(ClubId club) {
            return values.stream()
                    .filter(value -> value.club().equals(club))
                    .map(ClubValue::value)
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException(club + " was not compared here"));
        }

        /** Those with the same value as the club, without the club itself. */
        public List<ClubId> stillLevelWith(ClubId club) {
            return where(club, 0);
        }

        public List<ClubId> ahead(ClubId club) {
            return where(club, 1);
        }

        public List<ClubId> behind(ClubId club) {
            return where(club, -1);
        }

        private List<ClubId> where(ClubId club, int sign) {
            Value own = of(club);
            return values.stream()
                    .filter(value -> !value.club().equals(club)
                            && Integer.signum(value.value().compareTo(own)) == sign)
                    .map(ClubValue::club)
                    .toList();
        }
    }

    /** Everything was equal and a lot has been drawn among them. */
    record ByLot(LotDrawn lot) implements Line {
        @Override
        public Kind kind() {
            return Kind.BY_LOT;
        }

        @Override
        public List<ClubId> level() {
            return lot.order();
        }
    }

    /** Everything is equal and no lot has been drawn yet: they share the place. */
    record LotNeeded(List<ClubId> level) implements Line {
        public LotNeeded {
            level = List.copyOf(level);
        }

        @Override
        public Kind kind() {
            return Kind.LOT_NEEDED;
        }
    }
}
