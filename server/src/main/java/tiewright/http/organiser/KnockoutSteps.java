package tiewright.http.organiser;

import java.util.List;
import java.util.Optional;
import tiewright.draw.KnockoutDraw;
import tiewright.draw.KnockoutPlan;
import tiewright.draw.KnockoutResult;
import tiewright.draw.PlannedTie;
import tiewright.event.DrawFact;
import tiewright.event.Side;
import tiewright.event.SlotSource;
import tiewright.event.Stage;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.ReasonTable;

/** How the knockout was drawn, step by step: made again from its words, and shown where that gives the ties that stand. */
final class KnockoutSteps {
    /** More places than these take seconds to draw, too long for a page that is opened again and again. */
    private static final int MOST_PLACES = 16;

    private KnockoutSteps() {}

    static Optional<ReasonTable> of(VisibleEvent event) {
        return event.knockoutDraw()
                .flatMap(drawn -> again(event, drawn))
                .filter(plan -> plan.ties().stream().allMatch(tie -> stands(event, tie)))
                .map(plan -> DrawPage.steps(event, plan.steps()));
    }

    private static Optional<KnockoutPlan> again(VisibleEvent event, DrawFact.KnockoutDrawn drawn) {
        List<Tie> ties = event.ties().stream()
                .filter(tie -> tie.stage() == Stage.KNOCKOUT)
                .toList();
        int places = (int) ties.stream()
                .flatMap(tie -> List.of(Side.values()).stream().flatMap(side -> tie.slot(side).from().stream()))
                .filter(source -> source.kind() == SlotSource.Kind.POOL_PLACE)
                .count();
        List<String> pools = List.copyOf(event.pools().keySet());
        if (pools.isEmpty() || places == 0 || places > MOST_PLACES || places % pools.size() != 0) {
            return Optional.empty();
        }
        KnockoutDraw.Shape shape = new KnockoutDraw.Shape(
                pools,
                places / pools.size(),
                event.conditions().seeding(),
                ties.stream().anyMatch(Tie::isOfLosers));
        return KnockoutDraw.draw(shape, drawn.spokenSeed()) instanceof KnockoutResult.Planned planned
                ? Optional.of(planned.plan())
                : Optional.empty();
    }

    private static boolean stands(VisibleEvent event, PlannedTie planned) {
        return event.tie(planned.tie())
                .filter(tie -> tie.slot(Side.HOME).from().equals(Optional.of(planned.homeFrom()))
                        && tie.slot(Side.AWAY).from().equals(Optional.of(planned.awayFrom())))
                .isPresent();
    }
}
