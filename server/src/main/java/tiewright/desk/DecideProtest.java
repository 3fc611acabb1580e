package tiewright.desk;

import java.util.List;
import java.util.Optional;
import tiewright.event.Decision;
import tiewright.event.Disputes;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.OfficialFact;
import tiewright.event.Refusal;
import tiewright.event.Role;
import tiewright.event.Saying;

/**
 * An official decides a protest: a ruling with its notice. What follows from one that is upheld is done where it is done, by
 * a correction or another ruling; nothing follows by itself.
 *
 * @param decision in the official's words
 * @param by who rules, as it will be printed
 */
public record DecideProtest(
        int number, boolean upheld, boolean depositReturned, String decision, String reason, String by)
        implements Decision {
    @Override
    public Outcome decide(Event event, Given given) {
        Optional<Disputes.Protest> protest = event.disputes().protest(number);
        Asked asked = new Asked()
                .unless(
                        given.by().role() == Role.REFEREE || given.by().role() == Role.ORGANISER,
                        Refusal.of("desk.rulers-only"))
                .unless(protest.isPresent(), Refusal.of("desk.no-such-protest").with("number", number))
                .text("decision", decision, Asked.LONG)
                .text("reason", reason, Asked.LONG)
                .text("by", by, Asked.SHORT);
        protest.flatMap(Disputes.Protest::decided)
                .ifPresent(decided -> asked.unless(
                        false,
                        Refusal.of("desk.protest-decided")
                                .with("number", number)
                                .with("ruling", decided.ruling())));
        return asked.isFine() ? new Accepted(facts(event, protest.orElseThrow()), List.of()) : asked.refused();
    }

    private List<Fact> facts(Event event, Disputes.Protest protest) {
        int ruling = Numbers.ruling(event);
        String club = event.club(protest.made().club())
                .map(each -> each.name())
                .orElse(protest.made().club().code());
        Saying protested = Saying.of("notices.protest").with("number", number).with("club", club);
        Saying about = protest.made()
                .tie()
                .map(tie ->
                        Saying.of("notices.about-tie").with("about", protested).with("tie", tie))
                .orElse(protested);
        Saying said = Saying.of(upheld ? "notices.upheld" : "notices.dismissed").with("decision", decision.strip());
        return List.of(
                new OfficialFact.RulingStated(ruling, about, said, reason.strip(), by.strip()),
                new OfficialFact.ProtestDecided(number, upheld, depositReturned, ruling),
                new OfficialFact.NoticeStated(
                        Numbers.notice(event),
                        Ruled.notice(about, said, ruling),
                        protest.made().tie(),
                        Optional.empty(),
                        Optional.empty(),
                        Saying.typed(reason.strip())));
    }

    @Override
    public boolean isStaledBy(Fact fact) {
        return fact instanceof OfficialFact.ProtestDecided other && other.number() == number;
    }
}
