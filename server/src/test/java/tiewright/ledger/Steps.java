package tiewright.ledger;

import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import tiewright.event.Actor;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Decision;
import tiewright.event.DrawFact;
import tiewright.event.Event;
import tiewright.event.ExchangeId;
import tiewright.event.Fact;
import tiewright.event.How;
import tiewright.event.OfficialFact.RulingGiven;
import tiewright.event.PlayFact;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.Recorded;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.event.Slot;
import tiewright.event.Stage;
import tiewright.event.TieId;
import tiewright.scoring.Score;
import tiewright.sheet.Exchanges;
import tiewright.sheet.OpenSheets;
import tiewright.sheet.SealSheet;

/**
 * An endless afternoon in steps, the same for the same number, so that whoever reads a folder knows what must be in it. A round of
 * eight: a tie is arranged, both sheets are sealed, film is kept, both sheets are opened, notes are written over and deleted, cards
 * come in. Each step leaves a ruling with its number, by which it is found again.
 */
final class Steps {
    static final ClubId HOME = ClubId.of("N");
    private static final ClubId AWAY = ClubId.of("S");
    private static final int ROUND = 8;
    private static final int RUBBERS = 4;
    private static final int FILMS = 3;

    private Steps() {}

    /** Clubs and courts, before the first step. */
    static void begin(Ledger ledger) {
        List<Fact> facts = Days.aDay().clubs(HOME.code(), AWAY.code()).courts("1").facts().stream()
                .map(Recorded::fact)
                .toList();
        ledger.decide(Asked.request("begin"), Asked.facts(facts));
    }

    /** How many steps are there: their numbers must be 0, 1, 2, … with none missing and none twice. */
    static List<Integer> in(Ledger ledger) {
        return ledger.facts(0).stream()
                .map(Recorded::fact)
                .filter(RulingGiven.class::isInstance)
                .map(fact -> ((RulingGiven) fact).number() - 1)
                .toList();
    }

    /** Before the deadline for all but the opening. */
    static Instant at(int number) {
        return Days.moment(number % ROUND < 4 ? "09:00" : "10:00");
    }

    static Request request(int number) {
        Actor by =
                switch (number % ROUND) {
                    case 1 -> Days.captain(HOME.code());
                    case 2 -> Days.captain(AWAY.code());
                    default -> Exchanges.AUTOMATIC;
                };
        return Request.of("step-" + number, by);
    }

    static Decision step(int number) {
        TieId tie = tie(number);
        return switch (number % ROUND) {
            case 0 -> given(number, List.of(arranged(number), timed(tie)), List.of());
            case 1 -> new Marked(number, new SealSheet(sheets(number), HOME, sheet(HOME, number), secret(number)));
            case 2 -> new Marked(number, new SealSheet(sheets(number), AWAY, sheet(AWAY, number), secret(number)));
            case 3 -> given(number, List.of(), List.of(film(number)));
            case 4 -> new Marked(number, new OpenSheets(sheets(number)));
            case 5 -> given(number, List.of(), List.of(named(number)));
            case 6 ->
                given(
                        number,
                        List.of(),
                        List.of(new PrivateNote.FilmDropped(HOME, game(number + ROUND)), form(number)));
            default -> given(number, cards(tie), List.of());
        };
    }

    /** What the ledger must hold after so many steps, beside their facts; empty if it does, else what is wrong. */
    static List<String> wrong(Ledger ledger, int steps) {
        List<String> wrong = new ArrayList<>();
        Map<String, String> films = new TreeMap<>();
        String name = "Player N1";
        for (int number = 0; number < steps; number++) {
            switch (number % ROUND) {
                case 3 -> films.put(game(number), text(number));
                case 5 -> name = named(number).person().name();
                case 6 -> films.remove(game(number + ROUND));
                default -> {}
            }
        }
        Map<String, String> found = new TreeMap<>();
        ledger.filmsOf(HOME).stream()
                .filter(film -> film.game().startsWith("g"))
                .forEach(film -> found.put(film.game(), film.rallies()));
        if (!found.equals(films)) {
            wrong.add("the films are " + found.keySet() + ", not " + films.keySet() + ", or say something else");
        }
        String kept = ledger.directory()
                .person(PlayerId.of("N1"))
                .map(person -> person.name())
                .orElse("Player N1");
        if (!kept.equals(name)) {
            wrong.add("the name is " + kept + ", not " + name);
        }
        for (int first = 0; first < steps; first += ROUND) {
            wrong.addAll(pair(ledger, first, steps));
        }
        return wrong;
    }

    /** Both sheets of a tie are sealed and can be read by their club, or both are open and nothing of them is left sealed. */
    private static List<String> pair(Ledger ledger, int first, int steps) {
        List<String> wrong = new ArrayList<>();
        ExchangeId sheets = sheets(first);
        boolean opened = steps > first + 4;
        if (ledger.event().exchange(sheets).isOpened() != opened) {
            wrong.add(sheets + " opened: " + !opened);
        }
        for (ClubId club : Set.of(HOME, AWAY)) {
            int sealing = first + (club.equals(HOME) ? 1 : 2);
            Optional<Decision.Sealed> expected = steps > sealing && !opened
                    ? Optional.of(new Decision.Sealed(sheet(club, sealing), secret(sealing)))
                    : Optional.empty();
            if (!ledger.ownSheet(sheets, club).equals(expected)) {
                wrong.add("the sheet of " + club + " for " + sheets + " kept: " + expected.isEmpty());
            }
        }
        return wrong;
    }

    /** A decision of the sheets room with the number of its step beside it. */
    private record Marked(int number, Decision decision) implements Decision {
        @Override
        public Outcome decide(Event event, Given given) {
            Outcome outcome = decision.decide(event, given);
            if (outcome instanceof Accepted accepted) {
                List<Fact> facts = new ArrayList<>(accepted.facts());
                facts.add(marker(number));
                return new Accepted(facts, accepted.notes());
            }
            return outcome;
        }

        @Override
        public Set<SealedRef> needs(Event event) {
            return decision.needs(event);
        }
    }

    private static Decision given(int number, List<Fact> facts, List<PrivateNote> notes) {
        return new Marked(number, (event, given) -> new Decision.Accepted(facts, notes));
    }

    private static RulingGiven marker(int number) {
        return new RulingGiven(number + 1, "step", "given", "a step of the afternoon", "nobody");
    }

    private static TieId tie(int number) {
        return TieId.of("T" + number / ROUND);
    }

    private static ExchangeId sheets(int number) {
        return ExchangeId.sheets(tie(number));
    }

    private static Fact arranged(int number) {
        return new DrawFact.TieArranged(
                tie(number), Stage.POOL, Optional.of("A"), 1 + number / ROUND, Slot.of(HOME), Slot.of(AWAY));
    }

    private static Fact timed(TieId tie) {
        return new DrawFact.TieTimed(tie, Optional.of(LocalTime.of(10, 0)), Optional.of("1"));
    }

    private static List<Fact> cards(TieId tie) {
        List<Fact> cards = new ArrayList<>();
        for (int rubber = 1; rubber <= RUBBERS; rubber++) {
            cards.add(new PlayFact.CardEntered(
                    tie, RubberNo.of(rubber), List.of(Score.of(11, rubber), Score.of(11, 9)), How.PLAYED));
        }
        return cards;
    }

    private static Sheet sheet(ClubId club, int number) {
        return Days.straight(club.code(), RUBBERS);
    }

    private static String secret(int number) {
        return String.format(Locale.ROOT, "%064x", number + 1);
    }

    private static String game(int number) {
        return "g" + number / ROUND % FILMS;
    }

    /** As long as the film of a game of some two hundred rallies. */
    private static String text(int number) {
        return ("rally " + number + "; ").repeat(1500);
    }

    private static PrivateNote film(int number) {
        return new PrivateNote.FilmKept(HOME, game(number), "step " + number, text(number));
    }

    private static PrivateNote.PersonNamed named(int number) {
        return new PrivateNote.PersonNamed(PlayerId.of("N1"), "Name " + number, OptionalInt.empty());
    }

    private static PrivateNote form(int number) {
        return new PrivateNote.FormJudged(
                PlayerId.of("N" + (1 + number % 8)), OptionalDouble.of(number % 10), OptionalDouble.empty());
    }
}
