package tiewright.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.correction.Impact;
import tiewright.correction.Penalties;
import tiewright.correction.Replay;
import tiewright.correction.RulingNeeded;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.OfficialFact;
import tiewright.event.Penalty;
import tiewright.event.Refusal;
import tiewright.event.Role;
import tiewright.event.Saying;
import tiewright.event.TieId;

/**
 * An official decides what follows from a sheet that was not as it should be. The rubbers concerned, or all of the tie, go
 * to the other club, or the sheet stands. Public words name the club, never a player.
 *
 * @param what the code of the kind of case
 * @param by who rules, as it will be printed
 */
public record RuleOnCase(String what, TieId tie, ClubId club, Penalty penalty, String reason, String by)
        implements Decision {

    @Override
    public Outcome decide(Event event, Given given) {
        Optional<RulingNeeded.Case> found = RulingNeeded.of(event, given.directory()).stream()
                .filter(one -> one.kind().code().equals(what)
                        && one.tie().equals(tie)
                        && one.club().equals(club))
                .findFirst();
        Asked asked = new Asked()
                .unless(
                        given.by().role() == Role.REFEREE || given.by().role() == Role.ORGANISER,
                        Refusal.of("desk.rulers-only"))
                .unless(found.isPresent(), Refusal.of("desk.no-such-case").with("tie", tie))
                .text("reason", reason, Asked.LONG)
                .text("by", by, Asked.SHORT);
        found.ifPresent(one -> asked.all(others(event, given, one)));
        return asked.isFine() ? accepted(event, given, found.orElseThrow()) : asked.refused();
    }

    /** What others built on the tie is decided rubber by rubber, with everything that hangs on it in sight. */
    private List<Refusal> others(Event event, Given given, RulingNeeded.Case one) {
        List<Fact> cards = Penalties.facts(event, one, penalty, Numbers.ruling(event));
        Event after = event.after(
                Replay.of(event, given, cards, Numbers.ruling(event), "").facts(), given);
        boolean reaches = !cards.isEmpty() && Impact.between(event, after).reachesOthers();
        return reaches ? List.of(Refusal.of("desk.case-reaches-others").with("tie", tie)) : List.of();
    }

    private Outcome accepted(Event event, Given given, RulingNeeded.Case one) {
        int number = Numbers.ruling(event);
        String name = event.club(club).map(each -> each.name()).orElse(club.code());
        Saying about = Saying.of("notices.sheet-in-tie").with("club", name).with("tie", tie);
        Saying ruling = Saying.of("notices.penalty-" + penalty.code())
                .with("club", name)
                .withEach("rubbers", one.rubbers());
        List<Fact> facts = new ArrayList<>();
        facts.add(new OfficialFact.RulingStated(number, about, ruling, reason.strip(), by.strip()));
        facts.add(new OfficialFact.CaseRuled(what, tie, club, penalty, number));
        facts.addAll(Penalties.facts(event, one, penalty, number));
        facts.add(new OfficialFact.NoticeStated(
                Numbers.notice(event),
                Ruled.notice(about, ruling, number),
                Optional.of(tie),
                Optional.empty(),
                Optional.empty(),
                Saying.typed(reason.strip()),
                Concerned.between(event, event.after(facts, given))));
        return After.accepted(event, given, facts);
    }

    @Override
    public boolean isStaledBy(Fact fact) {
        return fact instanceof OfficialFact.CaseRuled ruled
                && ruled.what().equals(what)
                && ruled.tie().equals(tie)
                && ruled.club().equals(club);
    }
}
