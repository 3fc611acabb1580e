package tiewright.saturday;

/**
 * What a promise has to meet on some day, or it holds only because nobody came by: a page that was laid out anew, a press that moved, a
 * day on which nothing is played.
 */
enum Looked {
    SENT_AGAIN,
    BOTH_SHEETS_IN,
    COURT_IN_PLAY,
    COURT_AT_THE_DESK,
    FREE_COURTS_SAID,
    FREE_UNTIL,
    DEADLINE_PAST_AND_TAKEN,
    SEALED_WITH_SOMEBODY_HURT,
    EARLIER_THAN_PUBLISHED,
    NOTICE_READ_AGAIN,
    CHANGED_FOR_SOMEBODY,
    RESULT_OF_A_PLAYER,
    TIE_OFF,
    TO_BE_CALLED,
    TWO_PEOPLE_ANSWERED,
    MINOR,
    SEALED_AND_A_LATER_LINK
}
