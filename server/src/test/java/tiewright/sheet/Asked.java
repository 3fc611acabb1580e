package tiewright.sheet;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Decision;
import tiewright.event.ExchangeId;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;
import tiewright.event.SetUpFact;
import tiewright.event.Sheet;
import tiewright.event.TieId;
import tiewright.wording.Words;

/** What the tests of this room ask of the one tie A1 of clubs N and S, at 10:00 with the deadline at 09:45. */
final class Asked {
    static final ExchangeId SHEETS = ExchangeId.sheets(TieId.of("A1"));
    static final ExchangeId DECIDER = ExchangeId.decider(TieId.of("A1"));
    static final ClubId N = ClubId.of("N");
    static final ClubId S = ClubId.of("S");
    static final String SECRET = "0123456789abcdef".repeat(4);
    static final String OTHER_SECRET = "fedcba9876543210".repeat(4);

    private Asked() {}

    /** The codes of the refusal without their room; each reason can be said with its data. */
    static List<String> why(Days day, Decision decision) {
        return codes(day.refusals(decision));
    }

    static List<String> codes(List<Refusal> refusals) {
        return refusals.stream().map(Asked::code).toList();
    }

    static String code(Refusal refusal) {
        String sentence = Words.ofCodes(Days.ZONE).sentence(refusal);
        if (sentence.isBlank() || sentence.contains("{")) {
            throw new AssertionError(refusal + " reads \"" + sentence + "\"");
        }
        return refusal.code().substring("sheet.".length());
    }

    static Sheet straight(String club) {
        return Days.straight(club, 4);
    }

    /** Pairs such as {@code 12 34}, each two numbers of the squad; {@code -} for an empty rubber. */
    static Sheet sheet(String club, String pairs) {
        List<Optional<Pair>> inOrder = new ArrayList<>();
        for (String pair : pairs.split(" ")) {
            inOrder.add(
                    pair.equals("-")
                            ? Optional.empty()
                            : Optional.of(Pair.of(club + pair.charAt(0), club + pair.charAt(1))));
        }
        return Sheet.of(inOrder);
    }

    static SealSheet seal(String club, Sheet sheet) {
        return new SealSheet(SHEETS, ClubId.of(club), sheet, SECRET);
    }

    static SealSheet seal(String club) {
        return seal(club, straight(club));
    }

    static SealSheet sealDecider(String club, String one, String other) {
        return new SealSheet(DECIDER, ClubId.of(club), Sheet.decider(Pair.of(club + one, club + other)), SECRET);
    }

    /** Both clubs have sealed straight. */
    static Days bothSealed() {
        return Days.oneTie()
                .by(Days.captain("N"))
                .does(seal("N"))
                .by(Days.captain("S"))
                .does(seal("S"));
    }

    static Days opened() {
        return bothSealed().by(Exchanges.AUTOMATIC).at("09:45").does(new OpenSheets(SHEETS));
    }

    /** A tie opened straight and level 2-2 at 10:30: the decider pairs are due at 10:35. */
    static Days level() {
        return opened().by(Days.desk()).at("10:30").cards("A1", "11-5", "11-5", "5-11", "5-11");
    }

    /** Players who are not here, as the desk notes them. */
    static Days without(Days day, String... players) {
        day.by(Days.desk());
        for (String player : players) {
            day.fact(new SetUpFact.CheckedIn(PlayerId.of(player), false));
        }
        return day;
    }

    static SetUpFact.PlayerEntered player(String code, String club, OptionalInt rank, String from, String until) {
        return new SetUpFact.PlayerEntered(PlayerId.of(code), ClubId.of(club), rank, time(from), time(until), false);
    }

    private static Optional<LocalTime> time(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(LocalTime.parse(text));
    }
}
