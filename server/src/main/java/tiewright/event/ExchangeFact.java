package tiewright.event;

import java.time.LocalTime;
import java.util.Optional;

/** Facts of the blind exchange. None of them names anybody before the sheets are opened. */
public sealed interface ExchangeFact extends Fact {
    ExchangeId exchange();

    /**
     * A club sealed a sheet; a later one of the same club replaces it.
     *
     * @param receipt SHA-256 over secret and canonical text, lower-case hex
     * @param keptOnPhone the sheet itself stays with the captain until it is handed in
     */
    record SheetSealed(ExchangeId exchange, ClubId club, String receipt, boolean keptOnPhone) implements ExchangeFact {
        @Override
        public FactKind kind() {
            return FactKind.SHEET_SEALED;
        }
    }

    /** A sealed sheet went back to its captain unseen. */
    record SheetReturned(ExchangeId exchange, ClubId club, String reason) implements ExchangeFact {
        @Override
        public FactKind kind() {
            return FactKind.SHEET_RETURNED;
        }
    }

    /** The sheet kept on the phone came to the desk, still sealed, and its receipt is right. */
    record SheetHandedIn(ExchangeId exchange, ClubId club) implements ExchangeFact {
        @Override
        public FactKind kind() {
            return FactKind.SHEET_HANDED_IN;
        }
    }

    /** A captain asks that both sheets be opened before the deadline. */
    record OpeningAsked(ExchangeId exchange, ClubId club) implements ExchangeFact {
        @Override
        public FactKind kind() {
            return FactKind.OPENING_ASKED;
        }
    }

    /** A ruling stood in for a club without a sheet: supplied a sheet, or forfeited its rubbers. */
    record SideRuled(ExchangeId exchange, ClubId club, boolean forfeited, int ruling) implements ExchangeFact {
        @Override
        public FactKind kind() {
            return FactKind.SIDE_RULED;
        }
    }

    /**
     * Both sheets were opened at once.
     *
     * @param homeSecret the secret of the receipt, 64 lower-case hex digits; empty for a side that was ruled
     * @param openedAt the time on the day, where it was not the moment of receipt: an event brought in with its files
     */
    record SheetsOpened(
            ExchangeId exchange,
            Sheet home,
            Optional<String> homeSecret,
            Sheet away,
            Optional<String> awaySecret,
            Optional<LocalTime> openedAt)
            implements ExchangeFact {

        /** Opened now. */
        public SheetsOpened(
                ExchangeId exchange, Sheet home, Optional<String> homeSecret, Sheet away, Optional<String> awaySecret) {
            this(exchange, home, homeSecret, away, awaySecret, Optional.empty());
        }

        @Override
        public FactKind kind() {
            return FactKind.SHEETS_OPENED;
        }
    }

    /**
     * After the opening a pair was changed through a named door.
     *
     * @param door injury, illness, no-show, disqualified, clerical
     */
    record PairReplaced(
            ExchangeId exchange, ClubId club, RubberNo rubber, Optional<Pair> pair, String door, String approvedBy)
            implements ExchangeFact {
        /** The same without why. */
        PairReplaced unsaid() {
            return new PairReplaced(exchange, club, rubber, pair, "unavailable", approvedBy);
        }

        @Override
        public FactKind kind() {
            return FactKind.PAIR_REPLACED;
        }
    }

    /** The captain lets the own club's personal links see who plays and who rests. */
    record ClubTold(ExchangeId exchange, ClubId club, boolean told) implements ExchangeFact {
        public ClubTold(ExchangeId exchange, ClubId club) {
            this(exchange, club, true);
        }

        @Override
        public FactKind kind() {
            return FactKind.CLUB_TOLD;
        }
    }
}
