package tiewright.setup;

import java.util.ArrayList;
import java.util.List;
import tiewright.draw.SlotFills;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.Refusal;
import tiewright.event.Saying;
import tiewright.event.Stage;
import tiewright.event.Tie;
import tiewright.event.TieId;

/**
 * Draws the places of the pools into a knockout from words spoken in public; it may be done before the pools are played, for
 * slots know where they come from, and again until a sheet of a knockout tie is sealed.
 *
 * @param fromEachPool how many of each pool go on
 */
public record LayOutKnockout(int fromEachPool, boolean thirdPlace, String spokenSeed, String witness)
        implements Decision {
    @Override
    public Outcome decide(Event event, Given given) {
        Checks checks = Checks.byOrganiser(given)
                .line("spokenSeed", spokenSeed)
                .line("witness", witness)
                .refuseIf(event.conditionsVersion() == 0, Refusal.of("setup.conditions-first"))
                .refuseIf(
                        event.conditions().leavesTiesDrawn(),
                        Refusal.of("setup.knockout-could-end-level")
                                .with("rubbers", event.conditions().rubbers()))
                .refuse(Draws.begun(event, Stage.KNOCKOUT)
                        .map(tie -> Refusal.of("setup.knockout-has-begun").with("tie", tie)));
        if (event.pools().isEmpty()) {
            return checks.refuseIf(true, Refusal.of("setup.no-pools-yet")).refused();
        }
        Draws.LaidOut laidOut = Draws.knockout(
                event,
                event.pools(),
                new Draws.KnockoutWish(fromEachPool, thirdPlace, spokenSeed, witness),
                poolTies(event));
        checks.refuseAll(laidOut.refusals().stream()
                .filter(r -> !r.code().equals("draw.no-spoken-seed"))
                .toList());
        return checks.then(() -> facts(event, given, laidOut.facts()));
    }

    private static List<TieId> poolTies(Event event) {
        return event.ties().values().stream()
                .filter(tie -> tie.stage() == Stage.POOL)
                .map(Tie::id)
                .toList();
    }

    private List<Fact> facts(Event event, Given given, List<Fact> drawn) {
        List<Fact> facts = new ArrayList<>(drawn);
        facts.addAll(SlotFills.of(event.after(drawn, given)));
        if (Draws.has(event, Stage.KNOCKOUT)) {
            facts.add(Draws.redrawn(event, Saying.of("notices.knockout-drawn-again"), witness));
        }
        return facts;
    }
}
