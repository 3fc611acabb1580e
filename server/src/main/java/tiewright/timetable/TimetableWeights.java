package tiewright.timetable;

import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;

/** Names and weights of the constraints: whatever must hold weighs the same, the rest counts in the order of {@link Part}. */
final class TimetableWeights {
    static final String COURT_TAKEN = "a court holds one rubber";
    static final String COURT_CLOSED = "courts have hours";
    static final String CLUB_NOT_HERE = "every club is here";
    static final String CLUB_TWICE = "no club in two ties";
    static final String REST = "rest";
    static final String ROUND_ORDER = "rounds in order";
    static final String SOURCE = "after its sources";
    static final String LAST_ROUND_TOGETHER = "last round together";
    static final String RUBBER_ORDER = "rubbers in order";
    static final String PLAYER_TWICE = "no player in two rubbers";
    static final String UMPIRE_PLAYS = "umpires do not play";
    static final String UMPIRE_TWICE = "umpires have one tie";
    static final String OVERRUN = "overrun";
    static final String LENGTH = "length";
    static final String LONGEST_WAIT = "longest wait";
    static final String BACK_TO_BACK = "back to back";
    static final String UNEQUAL_REST = "unequal rest";
    static final String SAME_COURTS = "same courts";
    static final String SHARED_DUTIES = "shared duties";

    static final BendableLongScore BREACH = BendableLongScore.ofHard(DayPlan.HARD_LEVELS, DayPlan.SOFT_LEVELS, 0, 1);

    private TimetableWeights() {}

    static BendableLongScore of(Part part) {
        return BendableLongScore.ofSoft(
                DayPlan.HARD_LEVELS,
                DayPlan.SOFT_LEVELS,
                java.util.List.of(Part.values()).indexOf(part),
                1);
    }

    /** As people read it. */
    static PlanScore read(BendableLongScore score) {
        java.util.Map<Part, Long> parts = new java.util.EnumMap<>(Part.class);
        for (Part part : Part.values()) {
            parts.put(part, -score.softScore(java.util.List.of(Part.values()).indexOf(part)));
        }
        return new PlanScore(-score.hardScore(0), parts);
    }
}
