package tiewright.desk;

import java.util.Optional;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.OfficialFact;
import tiewright.event.Refusal;
import tiewright.event.Role;
import tiewright.event.TieId;

/**
 * A club protests, in writing: its captain, or the desk that was handed a paper. It is kept with its time; whether it came in
 * time is for the official who decides.
 *
 * @param tie what it is about, if one tie
 * @param deposit what was paid, as the desk writes it; empty = nothing
 * @param by who signed it
 */
public record MakeProtest(ClubId club, Optional<TieId> tie, String text, Optional<String> deposit, String by)
        implements Decision {
    @Override
    public Outcome decide(Event event, Given given) {
        boolean own = given.by().role() == Role.CAPTAIN
                && given.by().club().filter(club::equals).isPresent();
        Asked asked = new Asked()
                .unless(
                        own || given.by().role().isOfficial(),
                        Refusal.of("desk.protest-by-captain").with("club", club))
                .unless(
                        event.club(club).isPresent(),
                        Refusal.of("desk.no-such-club").with("club", club).at("club"))
                .text("text", text, Asked.LONG)
                .notTooLong("deposit", deposit.orElse(""), Asked.SHORT)
                .text("by", by, Asked.SHORT);
        tie.filter(id -> event.tie(id).isEmpty())
                .ifPresent(id -> asked.unless(
                        false, Refusal.of("desk.no-such-tie").with("tie", id).at("tie")));

        asked.unless(!isTwice(event), Refusal.of("desk.protest-twice").at("text"));
        int number = event.disputes().protests().size() + 1;
        return asked.isFine()
                ? Accepted.of(new OfficialFact.ProtestMade(
                        number, club, tie, text.strip(), deposit.map(String::strip), by.strip()))
                : asked.refused();
    }

    /** The same words about the same tie, and still open. */
    private boolean isTwice(Event event) {
        return event.disputes().openProtests().stream()
                .anyMatch(protest -> protest.made().club().equals(club)
                        && protest.made().tie().equals(tie)
                        && protest.made().text().equals(text.strip()));
    }
}
