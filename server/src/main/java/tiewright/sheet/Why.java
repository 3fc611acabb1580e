package tiewright.sheet;

import java.util.Locale;
import tiewright.event.Refusal;

/** Every reason this room refuses with; {@code sheet.properties} has a sentence for each. */
enum Why {
    // who asks
    NOT_YOURS,
    NEWER_LINK,
    OFFICIALS_ONLY,
    RULERS_ONLY,
    NEUTRAL_ONLY,
    AUTOMATIC_ONLY,
    REFEREE_ONLY,
    // the tie
    NO_TIE,
    NOT_IN_TIE,
    OTHER_CLUB_UNKNOWN,
    TIE_FINISHED,
    WITHDRAWN,
    NO_DECIDER,
    DECIDER_NEEDS_PAIRS,
    NOT_LEVEL,
    // how far the exchange has come
    OPENED,
    NOT_OPENED,
    RULED,
    IS_IN,
    NOT_IN,
    ON_PHONE,
    NOT_ON_PHONE,
    ALREADY_ASKED,
    ALREADY_TOLD,
    NOT_TOLD,
    SIDE_MISSING,
    NOT_KEPT,
    RECEIPT_WRONG,
    // the clock
    NO_DEADLINE,
    TOO_EARLY,
    STILL_TIME,
    GRACE_RUNS,
    REPLACE_CLOSED,
    LATE_GRACE,
    LATE_DESK_RECEIPT,
    LATE_SHOWN_RECEIPT,
    LATE_LAST_LEGAL,
    LATE_STRENGTH_ORDER,
    LATE_REFEREE_FILLS,
    LATE_FORFEIT,
    // what was typed
    SECRET,
    RECEIPT,
    RECEIPT_DIFFERS,
    REASON,
    NAME,
    // the sheet
    RUBBERS,
    NOT_IN_SQUAD,
    OTHER_SQUAD,
    PLAYED_FOR_OTHER,
    ABSENT,
    NOT_YET,
    LEAVES,
    RANK_MISSING,
    TOO_FEW_TIES,
    OWN_PARTNER,
    PLAYER_TWICE,
    TOO_OFTEN,
    NOT_OF_KIND,
    NOT_MIXED,
    RANK_SUM,
    STRONGEST_FIRST,
    GAP,
    NOT_FULL,
    DECIDER_EMPTY,
    SAME_RUBBER,
    NO_RUBBER_PLAYED,
    DEAD_END,
    // after the opening
    NO_RUBBER,
    DOOR,
    DOOR_CLOSED,
    RUBBER_OVER,
    RUBBER_BEGAN,
    SAME_PAIR;

    String code() {
        return "sheet." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    Refusal refusal() {
        return Refusal.of(code());
    }
}
