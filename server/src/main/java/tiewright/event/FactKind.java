package tiewright.event;

import java.util.Arrays;

/** Every kind of fact, with the code under which the ledger keeps it; the code is also the name of its table. */
public enum FactKind {
    EVENT_DESCRIBED,
    CONDITIONS_PUBLISHED,
    CONDITIONS_READ,
    CLUB_ENTERED,
    CLUB_REMOVED,
    PLAYER_ENTERED,
    PLAYER_REMOVED,
    COURT_SET,
    CHECKED_IN,
    LINK_ISSUED,
    LINK_REVOKED,
    LINK_LET_IN,
    OPENING_CHOSEN,
    SAFETY_DESCRIBED,
    DELETION_DATED,
    DATA_ERASED,
    POOLS_DRAWN,
    KNOCKOUT_DRAWN,
    TIE_ARRANGED,
    TIE_TIMED,
    PLAN_PUBLISHED,
    RUBBER_TIMED,
    TIE_CALLED_OFF,
    SLOT_FILLED,
    TIE_RESTARTED,
    SLOT_KEPT,
    SHEET_SEALED,
    SHEET_RETURNED,
    SHEET_HANDED_IN,
    OPENING_ASKED,
    SIDE_RULED,
    SHEETS_OPENED,
    PAIR_REPLACED,
    CLUB_TOLD,
    COURT_CALLED,
    CALL_TAKEN_BACK,
    CARD_ENTERED,
    CARD_CORRECTED,
    CARD_TAKEN_BACK,
    PLAY_STOPPED,
    PLAY_RESUMED,
    CLUB_WITHDRAWN,
    LOT_DRAWN,
    TABLE_SIGNED,
    EVENT_SIGNED,
    RULING_GIVEN,
    NOTICE_POSTED,
    RULING_STATED,
    NOTICE_STATED,
    NOTICE_TOLD,
    HEAT_DECIDED,
    HALL_STOPPED,
    CORRECTION_DECIDED,
    SIGNATURE_WITHDRAWN,
    CASE_RULED,
    TWO_PEOPLE,
    PROTEST_MADE,
    PROTEST_DECIDED;

    public String code() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }

    public static FactKind of(String code) {
        return Arrays.stream(values())
                .filter(kind -> kind.code().equals(code))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no fact is of the kind " + code));
    }
}
