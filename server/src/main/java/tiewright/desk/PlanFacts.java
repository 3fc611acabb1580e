package tiewright.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tiewright.conditions.Conditions;
import tiewright.conditions.Setting;
import tiewright.event.DrawFact;
import tiewright.event.Event;
import tiewright.event.ExchangeId;
import tiewright.event.Fact;
import tiewright.event.How;
import tiewright.event.OfficialFact;
import tiewright.event.OrderOfPlay;
import tiewright.event.PlayFact;
import tiewright.event.PrivateNote;
import tiewright.event.RubberNo;
import tiewright.event.SetUpFact;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.TieId;

/** What is appended when a plan is published: the ruling if it needs one, the plan, its times, its cuts, its one notice. */
final class PlanFacts {
    private final Event event;
    private final PublishPlan plan;
    private final List<PublishPlan.Placed> moved;
    private final int version;

    PlanFacts(Event event, PublishPlan plan, List<PublishPlan.Placed> moved) {
        this.event = event;
        this.plan = plan;
        this.moved = moved;
        this.version = event.order().plan().map(OrderOfPlay.Plan::version).orElse(0) + 1;
    }

    List<Fact> facts() {
        List<Fact> facts = new ArrayList<>();
        OptionalInt ruling = needsRuling() ? OptionalInt.of(Numbers.ruling(event)) : OptionalInt.empty();
        ruling.ifPresent(number -> facts.add(new OfficialFact.RulingGiven(
                number,
                "Order of play, version " + version,
                ruled(),
                plan.reason().strip(),
                plan.by().strip())));
        newConditions()
                .ifPresent(conditions -> facts.add(
                        new SetUpFact.ConditionsPublished(event.conditionsVersion() + 1, conditions, ruling)));
        int notice = Numbers.notice(event);
        facts.add(new DrawFact.PlanPublished(
                version,
                notice,
                plan.slotMinutes(),
                plan.seed(),
                plan.reason().strip(),
                plan.by().strip()));
        moved.forEach(one -> times(one, facts));
        ruling.ifPresent(number -> cut(number, facts));
        facts.add(new OfficialFact.NoticePosted(
                notice,
                "Order of play, version " + version,
                Optional.empty(),
                before(),
                Optional.of(after()),
                plan.reason().strip()));
        return facts;
    }

    /** Sheets of ties that will not be played are kept no longer. */
    List<PrivateNote> notes() {
        return Stream.concat(plan.cuts().off().stream(), plan.cuts().shared().stream())
                .flatMap(id -> event.tie(id).stream())
                .flatMap(tie -> Stream.of(Side.values())
                        .flatMap(side -> tie.club(side).stream())
                        .flatMap(club -> Stream.of(ExchangeId.sheets(tie.id()), ExchangeId.decider(tie.id()))
                                .map(exchange -> (PrivateNote) new PrivateNote.SheetDropped(exchange, club))))
                .toList();
    }

    private Optional<Conditions> newConditions() {
        return plan.conditions().filter(conditions -> !conditions.equals(event.conditions()));
    }

    private boolean needsRuling() {
        return !plan.cuts().isNone() || (event.isFrozen() && newConditions().isPresent());
    }

    private void times(PublishPlan.Placed one, List<Fact> facts) {
        Tie tie = event.tie(one.tie()).orElseThrow();
        boolean begun = tie.isInPlay();
        facts.add(new DrawFact.TieTimed(
                one.tie(),
                begun && tie.start().isPresent() ? tie.start() : Optional.of(one.start()),
                Optional.of(one.court())));
        one.rubbers()
                .forEach((rubber, place) -> facts.add(
                        new DrawFact.RubberTimed(one.tie(), rubber, place.start(), place.court(), place.umpires())));
    }

    private void cut(int ruling, List<Fact> facts) {
        plan.cuts().off().forEach(tie -> facts.add(new DrawFact.TieCalledOff(tie, ruling)));
        plan.cuts().later().forEach(tie -> facts.add(new DrawFact.TieTimed(tie, Optional.empty(), Optional.empty())));
        plan.cuts().shared().forEach(tie -> {
            facts.add(new DrawFact.TieTimed(tie, Optional.empty(), Optional.empty()));
            rubbers().forEach(rubber -> facts.add(new PlayFact.CardEntered(tie, rubber, List.of(), How.VOID)));
        });
    }

    /** With every rubber void and no decider the tie is drawn. */
    private List<RubberNo> rubbers() {
        Conditions conditions = newConditions().orElse(event.conditions());
        List<RubberNo> rubbers = new ArrayList<>(RubberNo.upTo(conditions.rubbers()));
        if (conditions.hasDecider()) {
            rubbers.add(RubberNo.DECIDER);
        }
        return rubbers;
    }

    private Optional<String> before() {
        return event.order().plan().map(last -> "version " + last.version() + " of the order of play");
    }

    private String after() {
        int ties = moved.size() + plan.cuts().all().size();
        String values =
                newConditions().map(conditions -> "; " + values(conditions)).orElse("");
        String what = ties + (ties == 1 ? " tie has" : " ties have") + " a new time"
                + (plan.cuts().isNone() ? "" : " or none") + values;
        return what.length() <= Asked.SHORT ? what : what.substring(0, Asked.SHORT - 1) + "…";
    }

    private String ruled() {
        List<String> parts = new ArrayList<>();
        newConditions().ifPresent(conditions -> parts.add("From now on: " + values(conditions) + "."));
        said("Not played and counted nowhere: ", plan.cuts().off()).ifPresent(parts::add);
        said("Not played, the points of the tie shared: ", plan.cuts().shared()).ifPresent(parts::add);
        said("Played on another day: ", plan.cuts().later()).ifPresent(parts::add);
        return String.join(" ", parts);
    }

    private static Optional<String> said(String what, List<TieId> ties) {
        return ties.isEmpty()
                ? Optional.empty()
                : Optional.of(what + ties.stream().map(TieId::code).collect(Collectors.joining(", ")) + ".");
    }

    private String values(Conditions now) {
        return Stream.of(Setting.values())
                .filter(setting -> !now.value(setting).equals(event.conditions().value(setting)))
                .map(setting -> setting.code().replace('_', ' ') + " " + now.value(setting) + " instead of "
                        + event.conditions().value(setting))
                .collect(Collectors.joining(", "));
    }
}
