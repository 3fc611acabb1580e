package tiewright.http.visit;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tiewright.desk.DoNext.Item;
import tiewright.desk.DoNext.Kind;
import tiewright.event.RubberNo;
import tiewright.event.TieId;
import tiewright.http.answers.Answers;
import tiewright.http.pieces.DoNext;
import tiewright.http.pieces.Mark;
import tiewright.http.pieces.State;

/** The list "do this next" of the desk and the organiser: each item a line with when, what, and the way to where it is done. */
public final class DoNextViews {
    /** Where the desk sees which sheets are in. */
    private static final String SHEETS = "/desk#sheets";

    private final Visit visit;

    public DoNextViews(Visit visit) {
        this.visit = visit;
    }

    public DoNext list() {
        List<DoNext.Item> lines = new ArrayList<>();
        clock().ifPresent(lines::add);
        lines.addAll(new LaptopNext(visit).all());
        List<Item> all = visit.ask(Answers::new).doNext();
        Set<Optional<Instant>> deadlines = new HashSet<>();
        for (Item item : all) {
            if (item.kind() == Kind.CONDITIONS_UNREAD) {
                lines.add(unread(item));
            } else if (item.kind() != Kind.SHEET_MISSING) {
                lines.add(line(item));
            } else if (deadlines.add(item.at())) {
                lines.add(missing(all.stream()
                        .filter(other ->
                                other.kind() == Kind.SHEET_MISSING && other.at().equals(item.at()))
                        .toList()));
            }
        }
        return new DoNext(say("page-visit.do-this-next"), lines, say("page-visit.nothing-waits-for-you-now"));
    }

    private Optional<DoNext.Item> clock() {
        return visit.hall()
                .clock()
                .doubt()
                .map(doubt -> new DoNext.Item(
                        say("page-visit.the-computers-clock-jumped-nothing"),
                        "",
                        "",
                        now(),
                        "/desk/clock",
                        say("page-visit.say-what-time-it-is")));
    }

    /** All sheets that are missing for one deadline, in one line. */
    private DoNext.Item missing(List<Item> same) {
        if (same.size() == 1) {
            return line(same.get(0));
        }
        int count = same.stream().mapToInt(DoNextViews::clubs).sum();
        return new DoNext.Item(
                say("page-visit.sheets-not-in", "count", count),
                "",
                when(same.get(0)),
                State.NONE,
                SHEETS,
                say("page-visit.do.sheets"));
    }

    private static int clubs(Item item) {
        return item.data().get("clubs") instanceof List<?> clubs ? clubs.size() : 0;
    }

    /** Who has not ticked them stands on the page of the conditions, which has room for a list. */
    private DoNext.Item unread(Item item) {
        return new DoNext.Item(
                say("page-visit.conditions-unread", "count", clubs(item)),
                "",
                say("page-visit.today"),
                State.NONE,
                href(item),
                say("page-visit.do.conditions-unread"));
    }

    private DoNext.Item line(Item item) {
        boolean urgent = isUrgent(item.kind());
        return new DoNext.Item(
                visit.ask(Answers::new).doNextWords(item),
                item.tie()
                        .flatMap(visit.event()::tie)
                        .map(new TieViews(visit.event())::title)
                        .orElse(""),
                urgent ? "" : when(item),
                urgent ? now() : State.NONE,
                mayOpen(item) ? href(item) : "",
                say("page-visit.do." + item.kind().code()));
    }

    private String when(Item item) {
        return item.at().map(at -> HallClock.said(visit.event().clock(at))).orElseGet(() -> say("page-visit.at-once"));
    }

    private State now() {
        return new State(Mark.HELD, say("page-visit.at-once"));
    }

    /** Tables and lots are signed by the organiser or the referee; the desk only reads that they wait. */
    private boolean mayOpen(Item item) {
        return switch (item.kind()) {
            case LOT_NEEDED, TABLE_TO_SIGN, EVENT_TO_SIGN, RULING_NEEDED, PROTEST_OPEN ->
                Door.OFFICIALS.opensFor(visit.role());
            case TIE_WITHOUT_TIME -> Door.ORGANISER.opensFor(visit.role());
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

    /** Somebody must decide something, or somebody waits. */
    private static boolean isUrgent(Kind kind) {
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
                    TIE_WITHOUT_TIME,
                    KNOCKOUT_LEVEL,
                    LOT_NEEDED -> true;
            case SHEETS_TO_OPEN,
                    DECIDER_TO_OPEN,
                    DECIDER_NEEDED,
                    SHEET_MISSING,
                    CARD_MISSING,
                    TIE_TO_CALL,
                    WALKOVER_TO_ENTER,
                    TABLE_TO_SIGN,
                    SLOT_TO_FILL,
                    EVENT_TO_SIGN,
                    CONDITIONS_UNREAD -> false;
        };
    }

    private static String href(Item item) {
        String tie = item.tie().map(TieId::code).orElse("");
        return switch (item.kind()) {
            case CARD_HELD -> "/cards/" + tie + "/" + rubber(item) + "/correct";
            case MEDICAL_OVER, MEDICAL_SOON, PLAY_STOPPED -> "/stop/" + tie + "/" + rubber(item);
            case CARD_MISSING -> "/cards/" + tie + "/" + rubber(item);
            case WALKOVER_TO_ENTER -> "/cards/" + tie;
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
            case TIE_WITHOUT_TIME -> "/organiser/times";
            case LOT_NEEDED, TABLE_TO_SIGN, EVENT_TO_SIGN -> "/organiser/tables";
            case RULING_NEEDED -> "/organiser/cases";
            case PROTEST_OPEN -> "/protests";
            case CONDITIONS_UNREAD -> "/conditions";
        };
    }

    private static String rubber(Item item) {
        return Optional.ofNullable((RubberNo) item.data().get("rubber"))
                .map(RubberNo::toString)
                .orElse("");
    }

    private String say(String code, Object... facts) {
        return visit.say(code, facts);
    }
}
