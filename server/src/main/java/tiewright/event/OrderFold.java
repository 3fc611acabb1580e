package tiewright.event;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Folds one fact after the other into the order of play: nothing that was ever published is lost. */
final class OrderFold {
    private final OrderOfPlay order;

    OrderFold(OrderOfPlay order) {
        this.order = order;
    }

    OrderOfPlay published(DrawFact.PlanPublished fact, Instant at) {
        OrderOfPlay.Plan plan = new OrderOfPlay.Plan(
                fact.version(),
                fact.notice(),
                fact.slotMinutes(),
                fact.seed(),
                fact.reason(),
                fact.by(),
                at,
                order.changes().size());
        return new OrderOfPlay(
                more(order.plans(), plan),
                order.rubbers(),
                order.changes(),
                order.others(),
                order.told(),
                order.stop());
    }

    OrderOfPlay timed(Tie tie, Saying between, DrawFact.TieTimed fact, Instant at) {
        OrderOfPlay.Times after =
                new OrderOfPlay.Times(fact.start(), fact.court().stream().toList());
        return changed(tie, change(tie, between, after, at));
    }

    OrderOfPlay calledOff(Tie tie, Saying between, Instant at) {
        return changed(tie, change(tie, between, OrderOfPlay.Times.NONE, at).off());
    }

    private OrderOfPlay.Change change(Tie tie, Saying between, OrderOfPlay.Times after, Instant at) {
        List<ClubId> clubs = Stream.of(tie.home().club(), tie.away().club())
                .flatMap(Optional::stream)
                .toList();
        OrderOfPlay.Times before = new OrderOfPlay.Times(tie.start(), order.courts(tie));
        return new OrderOfPlay.Change(tie.id(), between, clubs, before, after, OptionalInt.empty(), false, at);
    }

    private OrderOfPlay changed(Tie tie, OrderOfPlay.Change change) {
        Map<TieId, SortedMap<RubberNo, OrderOfPlay.Place>> rest = new LinkedHashMap<>(order.rubbers());
        rest.remove(tie.id());
        return new OrderOfPlay(
                order.plans(), rest, more(order.changes(), change), order.others(), order.told(), order.stop());
    }

    OrderOfPlay placed(DrawFact.RubberTimed fact) {
        Map<TieId, SortedMap<RubberNo, OrderOfPlay.Place>> all = new LinkedHashMap<>(order.rubbers());
        SortedMap<RubberNo, OrderOfPlay.Place> places = new TreeMap<>(order.rubbers(fact.tie()));
        places.put(fact.rubber(), new OrderOfPlay.Place(fact.start(), fact.court(), fact.umpires()));
        all.put(fact.tie(), Collections.unmodifiableSortedMap(places));
        List<OrderOfPlay.Change> now = new ArrayList<>(order.changes());
        int last = now.size() - 1;
        if (last >= 0
                && now.get(last).tie().equals(fact.tie())
                && now.get(last).notice().isEmpty()) {
            now.set(last, now.get(last).onto(OrderOfPlay.courts(places)));
        }
        return new OrderOfPlay(order.plans(), all, now, order.others(), order.told(), order.stop());
    }

    /** The notice of a plan tells of all that changed with it; any other of the last change of its tie. */
    OrderOfPlay noticed(OfficialFact.NoticeStated notice) {
        Optional<OrderOfPlay.Plan> its = order.plan().filter(plan -> plan.notice() == notice.number());
        OrderOfPlay linked = its.map(plan -> byPlan(plan, notice.number()))
                .orElseGet(() ->
                        notice.tie().map(tie -> byTie(tie, notice.number())).orElse(order));
        return new OrderFold(linked).concerning(notice);
    }

    private OrderOfPlay concerning(OfficialFact.NoticeStated notice) {
        if (notice.clubs().isEmpty()) {
            return order;
        }
        Map<Integer, List<ClubId>> all = new LinkedHashMap<>(order.others());
        all.put(notice.number(), notice.clubs());
        return new OrderOfPlay(order.plans(), order.rubbers(), order.changes(), all, order.told(), order.stop());
    }

    private OrderOfPlay byPlan(OrderOfPlay.Plan plan, int number) {
        List<OrderOfPlay.Change> linked = new ArrayList<>(order.changes().subList(0, plan.changesBefore()));
        order.changes().subList(plan.changesBefore(), order.changes().size()).stream()
                .filter(OrderOfPlay.Change::isOne)
                .map(change -> change.under(number))
                .forEach(linked::add);
        return new OrderOfPlay(order.plans(), order.rubbers(), linked, order.others(), order.told(), order.stop());
    }

    private OrderOfPlay byTie(TieId tie, int number) {
        int last = order.changes().size() - 1;
        if (last < 0
                || order.changes().get(last).notice().isPresent()
                || !order.changes().get(last).tie().equals(tie)) {
            return order;
        }
        List<OrderOfPlay.Change> linked = new ArrayList<>(order.changes());
        linked.set(last, order.changes().get(last).under(number));
        return new OrderOfPlay(order.plans(), order.rubbers(), linked, order.others(), order.told(), order.stop());
    }

    OrderOfPlay told(OfficialFact.NoticeTold fact) {
        Map<Integer, Set<ClubId>> all = new LinkedHashMap<>(order.told());
        Set<ClubId> clubs = new LinkedHashSet<>(order.told(fact.notice()));
        if (fact.told()) {
            clubs.add(fact.club());
        } else {
            clubs.remove(fact.club());
        }
        all.put(fact.notice(), Collections.unmodifiableSet(clubs));
        return new OrderOfPlay(order.plans(), order.rubbers(), order.changes(), order.others(), all, order.stop());
    }

    OrderOfPlay stopped(DrawFact.HallStopped fact) {
        return new OrderOfPlay(
                order.plans(),
                order.rubbers(),
                order.changes(),
                order.others(),
                order.told(),
                fact.until().map(until -> new OrderOfPlay.Stop(until, fact.reason())));
    }

    private static <T> List<T> more(List<T> list, T one) {
        List<T> all = new ArrayList<>(list);
        all.add(one);
        return all;
    }
}
