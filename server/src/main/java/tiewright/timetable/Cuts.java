package tiewright.timetable;

import java.util.List;
import java.util.Optional;
import tiewright.event.Event;

/** Works out one way after the other to shorten a day. */
final class Cuts {
    private final Uncut day;
    private final ScoringCuts scoring;
    private final LeavingCuts leaving;

    Cuts(Event event, PlanAsked asked, Budget budget) {
        this.day = new Uncut(event, asked, budget);
        this.scoring = new ScoringCuts(day);
        this.leaving = new LeavingCuts(day);
    }

    private ReplanOption whole(Cut cut, Plan plan) {
        return day.option(cut, Optional.empty(), plan, new Uncut.Price(List.of(), 0, plan.moved()));
    }

    /** Another order breaks less, or ends earlier. */
    private boolean isBeaten(Plan kept) {
        Plan other = day.asIs();
        int base = Clock.minute(kept.problem().start());
        return other.score().breaches() < kept.score().breaches()
                || Clock.minute(other.finish(), base) < Clock.minute(kept.finish(), base);
    }

    /** Empty where the cut changes nothing here. */
    Optional<ReplanOption> option(Cut cut) {
        return switch (cut) {
            case AS_IS -> Optional.of(whole(cut, day.unchanged()));
            case ANOTHER_ORDER -> day.kept().filter(this::isBeaten).map(kept -> whole(cut, day.asIs()));
            case RUBBER_BY_RUBBER -> scoring.rubberByRubber();
            case SHORTER_GAMES -> scoring.shorterGames();
            case RALLY_SCORING -> scoring.rallyScoring();
            case NO_DECIDER -> scoring.noDecider();
            case FEWER_ROUNDS -> leaving.fewerRounds();
            case SHARED_POINTS -> leaving.sharedPoints();
            case PLACINGS_BY_LOT -> leaving.placingsByLot();
            case NEXT_DAY -> leaving.nextDay();
        };
    }
}
