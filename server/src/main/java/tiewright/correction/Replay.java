package tiewright.correction;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.DrawFact;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.OfficialFact;
import tiewright.event.PrivateNote;
import tiewright.event.Slot;
import tiewright.event.Tie;
import tiewright.sheet.GivenBack;

/**
 * Which facts let play begin again where a corrected score leads: signed tables take the new order, slots the clubs that
 * belong there, and a tie whose clubs change begins anew. Sheets sealed for it go back unseen.
 *
 * <p>A slot follows only where the results put somebody else there than before: what an earlier ruling settled stays.
 */
public final class Replay {
    private final Event before;
    private final Decision.Given given;
    private final int ruling;
    private final String by;
    private final List<Fact> facts = new ArrayList<>();
    private final List<PrivateNote> notes = new ArrayList<>();
    private Event now;

    private Replay(Event before, Decision.Given given, int ruling, String by) {
        this.before = before;
        this.given = given;
        this.ruling = ruling;
        this.by = by;
        this.now = before;
    }

    /**
     * @param corrected what is put right, first of the facts that come back
     * @param ruling the number of the ruling that wants it
     * @param by who gave it, and signs a table that takes another order
     */
    public static Decision.Accepted of(
            Event before, Decision.Given given, List<? extends Fact> corrected, int ruling, String by) {
        Replay replay = new Replay(before, given, ruling, by);
        corrected.forEach(replay::add);
        replay.tables();
        replay.ties();
        replay.end();
        GivenBack unneeded = GivenBack.unneeded(before, replay.now, "ruling " + ruling);
        replay.facts.addAll(unneeded.facts());
        replay.notes.addAll(unneeded.notes());
        return new Decision.Accepted(replay.facts, replay.notes);
    }

    private void tables() {
        before.signedTables().forEach((pool, signed) -> {
            Optional<List<ClubId>> order = Results.order(now, pool);
            boolean stands = Results.order(before, pool).equals(order) || order.equals(Optional.of(signed.order()));
            if (!stands) {
                add(new OfficialFact.SignatureWithdrawn(Optional.of(pool), ruling));
                order.ifPresent(clubs -> add(new OfficialFact.TableSigned(pool, clubs, by)));
            }
        });
    }

    /** From the first round on, for a tie that begins anew leaves nobody to those after it. */
    private void ties() {
        before.ties().values().stream()
                .sorted(Comparator.comparing(Tie::stage).thenComparingInt(Tie::round))
                .forEach(tie -> {
                    Optional<ClubId> home = club(tie.home());
                    Optional<ClubId> away = club(tie.away());
                    if (!home.equals(tie.home().club())
                            || !away.equals(tie.away().club())) {
                        GivenBack sealed = GivenBack.of(before, tie, "ruling " + ruling);
                        sealed.facts().forEach(this::add);
                        notes.addAll(sealed.notes());
                        add(new DrawFact.TieRestarted(tie.id(), home, away, ruling));
                        if (tie.isUnderWay()
                                && (tie.start().isPresent() || tie.court().isPresent())) {
                            add(new DrawFact.TieTimed(tie.id(), Optional.empty(), Optional.empty()));
                        }
                    }
                });
    }

    /** Who stands in the slot: somebody else only where the results say something else than before. */
    private Optional<ClubId> club(Slot slot) {
        if (slot.club().isEmpty() || slot.from().isEmpty()) {
            return slot.club();
        }
        Optional<ClubId> was = Results.of(before, slot.from().get());
        Optional<ClubId> is = Results.of(now, slot.from().get());
        return was.equals(is) ? slot.club() : is;
    }

    /** The final order was signed over results that are no longer those. */
    private void end() {
        boolean changes =
                !Impact.between(before, now).nodes().stream().allMatch(node -> node.kind() == Impact.Kind.RUBBER);
        if (before.signed().isPresent() && changes) {
            add(new OfficialFact.SignatureWithdrawn(Optional.empty(), ruling));
        }
    }

    private void add(Fact fact) {
        facts.add(fact);
        now = now.after(List.of(fact), given);
    }
}
