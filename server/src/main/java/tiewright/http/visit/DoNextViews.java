package tiewright.http.visit;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tiewright.event.RubberNo;
import tiewright.event.TieId;
import tiewright.http.answers.Answers;
import tiewright.http.pieces.DoNext;
import tiewright.http.pieces.Mark;
import tiewright.http.pieces.State;

/** The list "do this next" of the desk and the organiser: each item a sentence and the way to where it is done. */
public final class DoNextViews {
    private final Visit visit;

    public DoNextViews(Visit visit) {
        this.visit = visit;
    }

    public DoNext list() {
        List<DoNext.Item> items = Stream.concat(
                        clock().stream(),
                        visit.ask(Answers::new).doNext().stream().map(this::item))
                .toList();
        return new DoNext(
                visit.words().say("page-visit.do-this-next"),
                items,
                visit.words().say("page-visit.nothing-waits-for-you-now"));
    }

    private Optional<DoNext.Item> clock() {
        return visit.hall()
                .clock()
                .doubt()
                .map(doubt -> new DoNext.Item(
                        visit.words().say("page-visit.the-computers-clock-jumped-nothing"),
                        "",
                        "",
                        new State(Mark.HELD, visit.words().say("page-visit.needs-a-person")),
                        "/desk/clock",
                        visit.words().say("page-visit.say-what-time-it-is")));
    }

    private DoNext.Item item(tiewright.desk.DoNext.Item item) {
        String tie = item.tie()
                .flatMap(visit.event()::tie)
                .map(new TieViews(visit.event())::title)
                .orElse("");
        return new DoNext.Item(
                visit.ask(Answers::new).doNextWords(item),
                tie,
                "",
                state(item.kind()),
                mayOpen(item) ? href(item) : "",
                action(item.kind()));
    }

    /** Tables and lots are signed by the organiser or the referee; the desk only reads that they wait. */
    private boolean mayOpen(tiewright.desk.DoNext.Item item) {
        return switch (item.kind()) {
            case LOT_NEEDED, TABLE_TO_SIGN, EVENT_TO_SIGN, RULING_NEEDED, PROTEST_OPEN ->
                Door.OFFICIALS.opensFor(visit.role());
            case MEDICAL_OVER,
                    MEDICAL_SOON,
                    PLAY_STOPPED,
                    CARD_HELD,
                    SLOT_DISPUTED,
                    SHEETS_TO_OPEN,
                    DECIDER_TO_OPEN,
                    SHEET_LATE,
                    SHEET_ON_PHONE,
                    DECIDER_NEEDED,
                    SHEET_MISSING,
                    CARD_MISSING,
                    TIE_LATE,
                    TIE_TO_CALL,
                    KNOCKOUT_LEVEL,
                    WALKOVER_TO_ENTER,
                    SLOT_TO_FILL,
                    CONDITIONS_UNREAD -> true;
        };
    }

    private static State state(tiewright.desk.DoNext.Kind kind) {
        return switch (kind) {
            case MEDICAL_OVER,
                    MEDICAL_SOON,
                    PLAY_STOPPED,
                    CARD_HELD,
                    RULING_NEEDED,
                    PROTEST_OPEN,
                    SLOT_DISPUTED,
                    SHEET_LATE,
                    SHEET_ON_PHONE,
                    TIE_LATE,
                    KNOCKOUT_LEVEL,
                    LOT_NEEDED -> new State(Mark.HELD, "needs a person");
            case SHEETS_TO_OPEN, DECIDER_TO_OPEN, DECIDER_NEEDED, SHEET_MISSING -> new State(Mark.SEALED, "sheets");
            case CARD_MISSING,
                    TIE_TO_CALL,
                    WALKOVER_TO_ENTER,
                    TABLE_TO_SIGN,
                    SLOT_TO_FILL,
                    EVENT_TO_SIGN,
                    CONDITIONS_UNREAD -> State.NONE;
        };
    }

    private static String href(tiewright.desk.DoNext.Item item) {
        String tie = item.tie().map(TieId::code).orElse("");
        return switch (item.kind()) {
            case CARD_HELD -> "/cards/" + tie + "/" + rubber(item) + "/correct";
            case MEDICAL_OVER, MEDICAL_SOON, PLAY_STOPPED -> "/stop/" + tie + "/" + rubber(item);
            case CARD_MISSING, WALKOVER_TO_ENTER -> "/cards/" + tie;
            case SHEETS_TO_OPEN,
                    DECIDER_TO_OPEN,
                    SHEET_LATE,
                    SHEET_ON_PHONE,
                    DECIDER_NEEDED,
                    SHEET_MISSING,
                    TIE_LATE,
                    TIE_TO_CALL,
                    KNOCKOUT_LEVEL,
                    SLOT_DISPUTED,
                    SLOT_TO_FILL -> "/desk/tie/" + tie;
            case LOT_NEEDED, TABLE_TO_SIGN, EVENT_TO_SIGN -> "/organiser/tables";
            case RULING_NEEDED -> "/organiser/cases";
            case PROTEST_OPEN -> "/protests";
            case CONDITIONS_UNREAD -> "/conditions";
        };
    }

    private static String rubber(tiewright.desk.DoNext.Item item) {
        return Optional.ofNullable((RubberNo) item.data().get("rubber"))
                .map(RubberNo::toString)
                .orElse("");
    }

    private static String action(tiewright.desk.DoNext.Kind kind) {
        return switch (kind) {
            case MEDICAL_OVER, MEDICAL_SOON, PLAY_STOPPED -> "Look at the clock";
            case CARD_HELD -> "Settle it from the card";
            case CARD_MISSING, WALKOVER_TO_ENTER -> "Enter the card";
            case SHEETS_TO_OPEN, DECIDER_TO_OPEN -> "Open both";
            case SHEET_LATE,
                    SHEET_ON_PHONE,
                    DECIDER_NEEDED,
                    SHEET_MISSING,
                    KNOCKOUT_LEVEL,
                    SLOT_DISPUTED,
                    SLOT_TO_FILL -> "Look at the tie";
            case TIE_LATE, TIE_TO_CALL -> "Call it";
            case RULING_NEEDED, PROTEST_OPEN -> "Give the ruling";
            case LOT_NEEDED -> "Draw the lot";
            case TABLE_TO_SIGN, EVENT_TO_SIGN -> "Sign";
            case CONDITIONS_UNREAD -> "Who has read them";
        };
    }
}
