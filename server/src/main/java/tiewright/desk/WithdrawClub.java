package tiewright.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tiewright.conditions.Withdrawal;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.OfficialFact;
import tiewright.event.PrivateNote;
import tiewright.event.Refusal;
import tiewright.event.Saying;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.sheet.GivenBack;

/**
 * A club goes home. The official chooses what becomes of its pool ties, by a ruling that is given here; a tie of the
 * knockout that it can no longer play goes to the other club. Sheets sealed for ties that will not be played go back
 * unseen.
 */
public record WithdrawClub(ClubId club, Withdrawal treatment, String reason, String by) implements Decision {
    @Override
    public Outcome decide(Event event, Given given) {
        Asked asked = asked(event, given);
        signedPool(event)
                .filter(pool -> treatment == Withdrawal.ANNUL)
                .ifPresent(pool -> asked.all(List.of(Refusal.of("desk.annul-after-signing")
                        .with("pool", pool)
                        .with("club", club)
                        .at("treatment"))));
        return asked.isFine() ? accepted(event, given) : asked.refused();
    }

    private Asked asked(Event event, Given given) {
        return Asked.byOfficial(given)
                .text("reason", reason, Asked.LONG)
                .text("by", by, Asked.SHORT)
                .unless(
                        event.club(club).isPresent(),
                        Refusal.of("desk.no-such-club").with("club", club).at("club"))
                .unless(
                        !event.withdrawals().containsKey(club),
                        Refusal.of("desk.withdrawn-already").with("club", club).at("club"))
                .unless(
                        event.signed().isEmpty(),
                        Refusal.of("desk.withdrawal-after-the-end")
                                .with("club", club)
                                .at("club"))
                .unless(
                        !hasWon(event),
                        Refusal.of("desk.club-has-won").with("club", club).at("club"));
    }

    private Outcome accepted(Event event, Given given) {
        int number = Numbers.ruling(event);
        List<Fact> facts = new ArrayList<>();
        facts.add(new OfficialFact.RulingStated(number, about(event), treated(), reason.strip(), by.strip()));
        facts.add(new OfficialFact.ClubWithdrawn(club, lastPlayed(event), treatment, number));
        List<PrivateNote> notes = new ArrayList<>();
        for (Tie tie : event.ties().values()) {
            if (tie.has(club)) {
                GivenBack sealed = GivenBack.of(event, tie, "ruling " + number);
                facts.addAll(sealed.facts());
                notes.addAll(sealed.notes());
            }
        }
        Accepted all = After.accepted(event, given, facts, notes);
        List<Fact> told = new ArrayList<>(all.facts());
        told.add(notice(event, event.after(all.facts(), given), number));
        return new Accepted(told, all.notes());
    }

    /** For every club whose table or bracket is another one after it. */
    private OfficialFact.NoticeStated notice(Event event, Event after, int ruling) {
        return new OfficialFact.NoticeStated(
                Numbers.notice(event),
                Ruled.notice(about(event), treated(), ruling),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Saying.typed(reason.strip()),
                Concerned.byWithdrawal(event, after));
    }

    private Saying about(Event event) {
        return Saying.of("notices.withdrawal")
                .with("club", event.club(club).orElseThrow().name());
    }

    private Saying treated() {
        return Saying.of("notices.withdrawal-treatment").with("treatment", treatment.code());
    }

    /** The last tie of which the club has a card. */
    private Optional<TieId> lastPlayed(Event event) {
        return event.ties().values().stream()
                .filter(tie -> tie.has(club) && tie.cards().keySet().stream().anyMatch(no -> Courts.hasEntry(tie, no)))
                .max(Comparator.comparing(Tie::stage).thenComparingInt(Tie::round))
                .map(Tie::id);
    }

    private boolean hasWon(Event event) {
        return FinalPlacing.champion(event).filter(club::equals).isPresent();
    }

    private Optional<String> signedPool(Event event) {
        return event.signedTables().values().stream()
                .filter(table -> table.order().contains(club))
                .map(OfficialFact.TableSigned::pool)
                .findFirst();
    }
}
