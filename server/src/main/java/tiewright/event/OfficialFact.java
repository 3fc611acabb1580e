package tiewright.event;

import java.util.List;
import java.util.Optional;
import tiewright.conditions.Withdrawal;
import tiewright.scoring.Score;

/** Facts that an official signs. */
public sealed interface OfficialFact extends Fact {

    /** @param afterTie the last tie that the club played; empty = none counts as its last */
    record ClubWithdrawn(ClubId club, Optional<TieId> afterTie, Withdrawal treatment, int ruling)
            implements OfficialFact {
        @Override
        public FactKind kind() {
            return FactKind.CLUB_WITHDRAWN;
        }
    }

    /** Lots parted clubs that nothing else could; first drawn ranks first. */
    record LotDrawn(String pool, List<ClubId> order, String witness) implements OfficialFact {
        public LotDrawn {
            order = List.copyOf(order);
        }

        @Override
        public FactKind kind() {
            return FactKind.LOT_DRAWN;
        }
    }

    /** A pool's table is final, by name. */
    record TableSigned(String pool, List<ClubId> order, String by) implements OfficialFact {
        public TableSigned {
            order = List.copyOf(order);
        }

        @Override
        public FactKind kind() {
            return FactKind.TABLE_SIGNED;
        }
    }

    /** The final standings of the event, champion first, by name. */
    record EventSigned(List<ClubId> order, String by) implements OfficialFact {
        public EventSigned {
            order = List.copyOf(order);
        }

        @Override
        public FactKind kind() {
            return FactKind.EVENT_SIGNED;
        }
    }

    /** @param about what it concerns, in the official's words */
    record RulingGiven(int number, String about, String ruling, String reason, String by) implements OfficialFact {
        @Override
        public FactKind kind() {
            return FactKind.RULING_GIVEN;
        }

        /** The same as a ruling that happens to be all typed. */
        public RulingStated stated() {
            return new RulingStated(number, Saying.typed(about), Saying.typed(ruling), reason, by);
        }
    }

    /**
     * A ruling that a decision puts into words: what it concerns and what was ruled, as facts.
     *
     * @param reason in the official's words
     * @param by who signs, as it will be printed
     */
    record RulingStated(int number, Saying about, Saying ruling, String reason, String by) implements OfficialFact {
        @Override
        public FactKind kind() {
            return FactKind.RULING_STATED;
        }
    }

    /**
     * What becomes of a wrong score, by a ruling.
     *
     * @param games what the card shows, home first, as the table would count it
     */
    record CorrectionDecided(
            TieId tie, RubberNo rubber, List<Score> games, How how, CorrectionChoice choice, int ruling, String reason)
            implements OfficialFact {
        public CorrectionDecided {
            games = List.copyOf(games);
        }

        @Override
        public FactKind kind() {
            return FactKind.CORRECTION_DECIDED;
        }
    }

    /** By a ruling a signature holds no longer: of a pool's table, or without a pool of the final standings. */
    record SignatureWithdrawn(Optional<String> pool, int ruling) implements OfficialFact {
        @Override
        public FactKind kind() {
            return FactKind.SIGNATURE_WITHDRAWN;
        }
    }

    /**
     * What becomes of a side that was not as it should be, by a ruling.
     *
     * @param what the code of what was found, such as {@code ineligible}
     */
    record CaseRuled(String what, TieId tie, ClubId club, Penalty penalty, int ruling) implements OfficialFact {
        @Override
        public FactKind kind() {
            return FactKind.CASE_RULED;
        }
    }

    /** Two players whose names are the same, or nearly, are two people: a question that is answered once. */
    record TwoPeople(PlayerId one, PlayerId other) implements OfficialFact {
        @Override
        public FactKind kind() {
            return FactKind.TWO_PEOPLE;
        }

        public boolean isOf(PlayerId player, PlayerId second) {
            return one.equals(player) && other.equals(second) || one.equals(second) && other.equals(player);
        }
    }

    /**
     * A club protests, in writing.
     *
     * @param tie what it is about, if one tie
     * @param deposit what was paid, in the words of the desk; empty = nothing
     * @param by who signed it
     */
    record ProtestMade(int number, ClubId club, Optional<TieId> tie, String text, Optional<String> deposit, String by)
            implements OfficialFact {
        @Override
        public FactKind kind() {
            return FactKind.PROTEST_MADE;
        }
    }

    /** @param upheld the club is right; a deposit goes back to it */
    record ProtestDecided(int number, boolean upheld, boolean depositReturned, int ruling) implements OfficialFact {
        @Override
        public FactKind kind() {
            return FactKind.PROTEST_DECIDED;
        }
    }

    /**
     * Something everybody must know, numbered, in the words of a person.
     *
     * @param tie the tie it changes, if one
     * @param before the old value, shown struck; empty when nothing was published before
     * @param after the new value
     */
    record NoticePosted(
            int number,
            String text,
            Optional<TieId> tie,
            Optional<String> before,
            Optional<String> after,
            String reason)
            implements OfficialFact {
        @Override
        public FactKind kind() {
            return FactKind.NOTICE_POSTED;
        }

        /** The same as a notice that happens to be all typed. */
        public NoticeStated stated() {
            return new NoticeStated(
                    number,
                    Saying.typed(text),
                    tie,
                    before.map(Saying::typed),
                    after.map(Saying::typed),
                    Saying.typed(reason));
        }
    }

    /**
     * A notice that a decision puts into words: numbered, all of it as facts, so that it can be said in any language and
     * says the same for ever. The components are those of {@link NoticePosted}.
     *
     * @param clubs whom it concerns beside the clubs of the ties whose times it changes
     */
    record NoticeStated(
            int number,
            Saying text,
            Optional<TieId> tie,
            Optional<Saying> before,
            Optional<Saying> after,
            Saying reason,
            List<ClubId> clubs)
            implements OfficialFact {
        public NoticeStated {
            clubs = List.copyOf(clubs);
        }

        /** Whom it concerns follows from the times that change with it. */
        public NoticeStated(
                int number,
                Saying text,
                Optional<TieId> tie,
                Optional<Saying> before,
                Optional<Saying> after,
                Saying reason) {
            this(number, text, tie, before, after, reason, List.of());
        }

        public NoticeStated concerning(List<ClubId> whom) {
            return new NoticeStated(number, text, tie, before, after, reason, whom);
        }

        @Override
        public FactKind kind() {
            return FactKind.NOTICE_STATED;
        }
    }

    /** The desk told a club of a notice that concerns it, or takes that tick back. */
    record NoticeTold(int notice, ClubId club, boolean told) implements OfficialFact {
        @Override
        public FactKind kind() {
            return FactKind.NOTICE_TOLD;
        }
    }

    /**
     * A person decided how to go on in heat. It is a record: play is stopped, called and resumed by people.
     *
     * @param measure {@code wbgt} or {@code air}
     * @param tenths what was read, in tenths of a degree Celsius
     * @param tier where the conditions of that moment put it: {@code below}, {@code caution} or {@code stop}
     * @param decision in the person's words
     */
    record HeatDecided(String measure, int tenths, String tier, String decision, String by) implements OfficialFact {
        @Override
        public FactKind kind() {
            return FactKind.HEAT_DECIDED;
        }
    }
}
