package tiewright.desk;

import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.OfficialFact;
import tiewright.event.Refusal;

/** Somebody at the desk told a club of a notice that changed its times, or takes a wrong tick back. */
public record TickTold(int notice, ClubId club, boolean told) implements Decision {
    @Override
    public Outcome decide(Event event, Given given) {
        boolean concerned = event.order().concerned(notice).contains(club);
        Asked asked = Asked.byOfficial(given)
                .unless(
                        concerned,
                        Refusal.of("desk.notice-does-not-concern")
                                .with("notice", notice)
                                .with("club", club)
                                .at("club"))
                .unless(
                        !concerned || event.order().told(notice).contains(club) != told,
                        Refusal.of(told ? "desk.told-already" : "desk.not-told")
                                .with("notice", notice)
                                .with("club", club)
                                .at("club"));
        return asked.isFine() ? Accepted.of(new OfficialFact.NoticeTold(notice, club, told)) : asked.refused();
    }
}
