package tiewright.event;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Folds what is drawn, timed and played. What happens in a tie that is not there (any more) changes nothing. */
final class ProgrammeFold {
    private final Programme from;
    private Optional<DrawFact.PoolsDrawn> draw;
    private Optional<DrawFact.KnockoutDrawn> knockoutDraw;
    private final Draft<TieId, Tie> ties;
    private OrderOfPlay order;

    ProgrammeFold(Programme from) {
        this.from = from;
        this.draw = from.draw();
        this.knockoutDraw = from.knockoutDraw();
        this.ties = new Draft<>(from.ties());
        this.order = from.order();
    }

    Programme done() {
        boolean same = !ties.isWritten()
                && order.equals(from.order())
                && draw.equals(from.draw())
                && knockoutDraw.equals(from.knockoutDraw());
        return same ? from : new Programme(draw, knockoutDraw, ties.asRead(), order);
    }

    Optional<Tie> tie(TieId id) {
        return Optional.ofNullable(ties.asRead().get(id));
    }

    void drawn(DrawFact.PoolsDrawn fact) {
        draw = Optional.of(fact);
        ties.toWrite().values().removeIf(tie -> tie.stage() == Stage.POOL);
    }

    void drawn(DrawFact.KnockoutDrawn fact) {
        knockoutDraw = Optional.of(fact);
        ties.toWrite().values().removeIf(tie -> tie.stage() != Stage.POOL);
    }

    void arranged(DrawFact.TieArranged fact) {
        ties.toWrite().put(fact.tie(), Tie.arranged(fact));
    }

    /** @param clubs as they are entered, to say who meets */
    void timed(DrawFact.TieTimed fact, Map<ClubId, Club> clubs, Instant at) {
        tie(fact.tie())
                .ifPresent(tie -> order = new OrderFold(order).timed(tie, AsItStands.between(tie, clubs), fact, at));
        change(fact.tie(), tie -> tie.timed(fact.start(), fact.court()));
    }

    void published(DrawFact.PlanPublished fact, Instant at) {
        order = new OrderFold(order).published(fact, at);
    }

    void placed(DrawFact.RubberTimed fact) {
        order = new OrderFold(order).placed(fact);
    }

    /** @param clubs as they are entered, to say who was to meet */
    void calledOff(DrawFact.TieCalledOff fact, Map<ClubId, Club> clubs, Instant at) {
        Optional.ofNullable(ties.toWrite().remove(fact.tie()))
                .ifPresent(tie -> order = new OrderFold(order).calledOff(tie, AsItStands.called(tie, clubs), at));
    }

    void filled(DrawFact.SlotFilled fact) {
        change(fact.tie(), tie -> tie.filled(fact.side(), fact.club()));
    }

    void kept(DrawFact.SlotKept fact) {
        change(fact.tie(), tie -> tie.kept(fact.side(), fact.club()));
    }

    void restarted(DrawFact.TieRestarted fact) {
        change(fact.tie(), tie -> tie.restarted(fact.home(), fact.away()));
    }

    void opened(ExchangeFact.SheetsOpened fact) {
        happens(fact.exchange().tie(), course -> course.opened(fact));
    }

    void replaced(ExchangeFact.PairReplaced fact) {
        change(
                fact.exchange().tie(),
                tie -> tie.sideOf(fact.club())
                        .map(side -> tie.with(tie.course().replaced(fact, side)))
                        .orElse(tie));
    }

    /** @param rubbers how many a tie has: a call without a rubber is one of each */
    void called(PlayFact.CourtCalled fact, int rubbers, Instant at) {
        happens(fact.tie(), course -> course.called(fact, rubbers, at));
    }

    void takenBack(PlayFact.CallTakenBack fact, int rubbers) {
        happens(fact.tie(), course -> course.takenBack(fact, rubbers));
    }

    /** A rubber stands still or goes on, or all of them do. */
    void stands(Fact fact, Instant at) {
        if (fact instanceof PlayFact.PlayStopped one) {
            happens(one.tie(), course -> course.stopped(one.rubber(), at));
        } else if (fact instanceof PlayFact.PlayResumed one) {
            happens(one.tie(), course -> course.resumed(one.rubber()));
        } else {
            order = new OrderFold(order).stopped((DrawFact.HallStopped) fact);
        }
    }

    void written(TieId tie, RubberNo rubber, Card.Entry entry) {
        happens(tie, course -> course.written(rubber, entry));
    }

    void noticed(OfficialFact.NoticeStated fact) {
        order = new OrderFold(order).noticed(fact);
    }

    void told(OfficialFact.NoticeTold fact) {
        order = new OrderFold(order).told(fact);
    }

    private void happens(TieId id, UnaryOperator<Course> change) {
        change(id, tie -> tie.with(change.apply(tie.course())));
    }

    private void change(TieId id, UnaryOperator<Tie> change) {
        ties.toWrite().computeIfPresent(id, (any, tie) -> change.apply(tie));
    }
}
