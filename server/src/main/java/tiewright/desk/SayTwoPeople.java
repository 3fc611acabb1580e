package tiewright.desk;

import java.util.List;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.OfficialFact;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;
import tiewright.event.Role;

/**
 * Two players have one name, or nearly, and an official who looked says that they are two people. From then on it is asked no
 * more: not among the entries, and not at any tie in which one of them stands.
 */
public record SayTwoPeople(PlayerId one, PlayerId other) implements Decision {
    @Override
    public Outcome decide(Event event, Given given) {
        Role role = given.by().role();
        Asked asked =
                new Asked().unless(role == Role.ORGANISER || role == Role.REFEREE, Refusal.of("desk.rulers-only"));
        for (PlayerId player : List.of(one, other)) {
            asked.unless(
                    event.player(player).isPresent(),
                    Refusal.of("desk.no-such-player").with("player", player));
        }
        asked.unless(!one.equals(other), Refusal.of("desk.one-player-twice").with("player", one))
                .unless(
                        !event.disputes().areTwoPeople(one, other),
                        Refusal.of("desk.two-people-already")
                                .with("player", one)
                                .with("other", other));
        return asked.isFine() ? Accepted.of(new OfficialFact.TwoPeople(one, other)) : asked.refused();
    }

    @Override
    public boolean isStaledBy(Fact fact) {
        return fact instanceof OfficialFact.TwoPeople said && said.isOf(one, other);
    }
}
