package tiewright.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import tiewright.conditions.DrawSeparation;
import tiewright.draw.Entrant;
import tiewright.draw.Pool;
import tiewright.draw.PoolDraw;
import tiewright.draw.PoolDrawResult;
import tiewright.draw.PoolPlan;
import tiewright.draw.PoolTie;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.DrawFact;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.Refusal;
import tiewright.event.Saying;
import tiewright.event.Slot;
import tiewright.event.Stage;

/**
 * Draws the clubs that have not withdrawn into pools from words spoken in public, and lays out their ties in the order of
 * the Berger tables. It can be drawn again until a sheet of a pool tie is sealed; that is a numbered notice, and a knockout
 * that was laid out is laid out anew from the same words.
 *
 * @param spokenSeed the words, as the witness spoke them
 */
public record DrawPools(int pools, String spokenSeed, String witness) implements Decision {
    @Override
    public Outcome decide(Event event, Given given) {
        Checks checks = Checks.byOrganiser(given)
                .line("spokenSeed", spokenSeed)
                .line("witness", witness)
                .refuseIf(event.conditionsVersion() == 0, Refusal.of("setup.conditions-first"))
                .refuse(Draws.begun(event, Stage.POOL)
                        .map(tie -> Refusal.of("setup.pools-have-begun").with("tie", tie)));
        PoolDrawResult result = PoolDraw.draw(
                entrants(event), pools, event.conditions().drawSeparation() == DrawSeparation.TOWN, spokenSeed);
        if (result instanceof PoolDrawResult.Refused refused) {
            refused.faults().stream()
                    .map(Draws::refusal)
                    .filter(refusal -> !refusal.code().equals("draw.no-spoken-seed"))
                    .forEach(refusal -> checks.refuseIf(true, refusal));
            return checks.refused();
        }
        return outcome(event, checks, (PoolDrawResult.Drawn) result);
    }

    private static List<Entrant> entrants(Event event) {
        return event.clubs().values().stream()
                .filter(club -> !event.withdrawals().containsKey(club.id()))
                .map(club -> new Entrant(club.id(), club.name(), club.town(), club.seed()))
                .toList();
    }

    private Outcome outcome(Event event, Checks checks, PoolDrawResult.Drawn drawn) {
        SortedMap<String, List<ClubId>> inPools = new TreeMap<>();
        List<PoolTie> ties = new ArrayList<>();
        for (Pool pool : drawn.pools()) {
            inPools.put(pool.name(), pool.clubs());
            ties.addAll(PoolPlan.ties(pool.name(), pool.clubs()));
        }
        List<Fact> facts = new ArrayList<>();
        facts.add(new DrawFact.PoolsDrawn(Plain.of(spokenSeed), Plain.of(witness), inPools));
        ties.forEach(tie -> facts.add(arranged(tie)));
        if (Draws.fromEach(event) > 0) {
            facts.addAll(knockout(event, checks, inPools, ties));
        }
        if (Draws.has(event, Stage.POOL)) {
            facts.add(Draws.redrawn(event, Saying.of("notices.pools-drawn-again"), witness));
        }
        return checks.then(() -> facts);
    }

    /** The knockout that stood over the old pools, over these; every reason why not goes into the checks. */
    private List<Fact> knockout(
            Event event, Checks checks, SortedMap<String, List<ClubId>> inPools, List<PoolTie> ties) {
        Draws.LaidOut knockout = Draws.knockout(
                event,
                inPools,
                new Draws.KnockoutWish(Draws.fromEach(event), Draws.hasThirdPlace(event), spokenSeed, witness),
                ties.stream().map(PoolTie::tie).toList());
        checks.refuseAll(knockout.refusals())
                .refuse(Draws.begun(event, Stage.KNOCKOUT)
                        .map(tie -> Refusal.of("setup.knockout-has-begun").with("tie", tie)));
        return knockout.facts();
    }

    private static DrawFact.TieArranged arranged(PoolTie tie) {
        return new DrawFact.TieArranged(
                tie.tie(), Stage.POOL, Optional.of(tie.pool()), tie.round(), Slot.of(tie.home()), Slot.of(tie.away()));
    }
}
