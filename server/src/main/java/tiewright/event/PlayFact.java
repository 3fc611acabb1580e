package tiewright.event;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import tiewright.scoring.Score;

/** Facts from the courts. */
public sealed interface PlayFact extends Fact {
    TieId tie();

    /** A rubber, or the whole tie when no rubber is named, was called to a court. */
    record CourtCalled(TieId tie, Optional<RubberNo> rubber, String court) implements PlayFact {
        @Override
        public FactKind kind() {
            return FactKind.COURT_CALLED;
        }
    }

    record CallTakenBack(TieId tie, Optional<RubberNo> rubber, String reason) implements PlayFact {
        @Override
        public FactKind kind() {
            return FactKind.CALL_TAKEN_BACK;
        }
    }

    /**
     * What somebody read off a card. A second, equal entry confirms; a different one holds the rubber.
     *
     * @param games points of each game in order, home first, as the table counts them
     * @param asItStood what the card says of a retired rubber where the table counts something else; else empty
     */
    record CardEntered(TieId tie, RubberNo rubber, List<Score> games, How how, List<Score> asItStood)
            implements PlayFact {
        public CardEntered {
            games = List.copyOf(games);
            asItStood = List.copyOf(asItStood);
        }

        public CardEntered(TieId tie, RubberNo rubber, List<Score> games, How how) {
            this(tie, rubber, games, how, List.of());
        }

        @Override
        public FactKind kind() {
            return FactKind.CARD_ENTERED;
        }
    }

    /**
     * A person settled or corrected the rubber from the card; everything entered before stays in the log.
     *
     * @param ruling the ruling that it rests on; before version 18 of the tables it stands in the reason, see {@link #because}
     */
    record CardCorrected(
            TieId tie,
            RubberNo rubber,
            List<Score> games,
            How how,
            List<Score> asItStood,
            String reason,
            OptionalInt ruling)
            implements PlayFact {
        public CardCorrected {
            games = List.copyOf(games);
            asItStood = List.copyOf(asItStood);
        }

        public CardCorrected(TieId tie, RubberNo rubber, List<Score> games, How how, String reason) {
            this(tie, rubber, games, how, List.of(), reason, OptionalInt.empty());
        }

        public Because because() {
            return Because.of(reason, ruling);
        }

        @Override
        public FactKind kind() {
            return FactKind.CARD_CORRECTED;
        }
    }

    /** Somebody is hurt or ill: the rubber and its clock stand still. Nobody's name stands here, and never why. */
    record PlayStopped(TieId tie, RubberNo rubber) implements PlayFact {
        @Override
        public FactKind kind() {
            return FactKind.PLAY_STOPPED;
        }
    }

    /** Play goes on. */
    record PlayResumed(TieId tie, RubberNo rubber) implements PlayFact {
        @Override
        public FactKind kind() {
            return FactKind.PLAY_RESUMED;
        }
    }

    /**
     * The rubber was never played: its entries no longer count.
     *
     * @param ruling as in {@link CardCorrected}
     */
    record CardTakenBack(TieId tie, RubberNo rubber, String reason, OptionalInt ruling) implements PlayFact {
        public CardTakenBack(TieId tie, RubberNo rubber, String reason) {
            this(tie, rubber, reason, OptionalInt.empty());
        }

        public Because because() {
            return Because.of(reason, ruling);
        }

        @Override
        public FactKind kind() {
            return FactKind.CARD_TAKEN_BACK;
        }
    }
}
