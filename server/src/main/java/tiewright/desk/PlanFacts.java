package tiewright.desk;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import tiewright.conditions.Conditions;
import tiewright.conditions.Setting;
import tiewright.event.ClubId;
import tiewright.event.DrawFact;
import tiewright.event.Event;
import tiewright.event.ExchangeId;
import tiewright.event.Fact;
import tiewright.event.How;
import tiewright.event.MayPlay;
import tiewright.event.OfficialFact;
import tiewright.event.OrderOfPlay;
import tiewright.event.PlayFact;
import tiewright.event.PrivateNote;
import tiewright.event.RubberNo;
import tiewright.event.Saying;
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
        ruling.ifPresent(number -> facts.add(new OfficialFact.RulingStated(
                number, title(), ruled(), plan.reason().strip(), plan.by().strip())));
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
        told(notice, facts);
        return facts;
    }

    private void told(int notice, List<Fact> facts) {
        List<ClubId> told = plan.earlier(event);
        facts.add(new OfficialFact.NoticeStated(
                notice,
                title(),
                Optional.empty(),
                before(),
                Optional.of(new Earlier(event, plan.told()).said(after(), told)),
                Saying.typed(plan.reason().strip()),
                concerned()));
        told.forEach(club -> facts.add(new OfficialFact.NoticeTold(notice, club, true)));
    }

    /** Clubs of ties that begin otherwise or not at all, and all that still play where the conditions change. */
    List<ClubId> concerned() {
        Stream<TieId> ties = Stream.concat(
                moved.stream().filter(this::isAnotherTime).map(PublishPlan.Placed::tie), plan.cuts().all().stream());
        Stream<TieId> open = event.ties().values().stream()
                .filter(tie -> newConditions().isPresent() && !event.isGone(tie))
                .filter(tie -> !event.progress(tie).left().isEmpty())
                .map(Tie::id);
        return List.copyOf(MayPlay.of(event, Stream.concat(ties, open).toList()));
    }

    /** Another start or other courts than published; the same said again changes nothing for anybody. */
    private boolean isAnotherTime(PublishPlan.Placed one) {
        Tie tie = event.tie(one.tie()).orElseThrow();
        Optional<LocalTime> start = tie.isInPlay() && tie.start().isPresent() ? tie.start() : Optional.of(one.start());
        List<String> courts = one.rubbers().values().stream()
                .map(OrderOfPlay.Place::court)
                .distinct()
                .toList();
        return !tie.start().equals(start) || !event.order().courts(tie).equals(courts);
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

    private Optional<Saying> before() {
        return event.order()
                .plan()
                .map(last -> Saying.of("notices.version-of-order").with("version", last.version()));
    }

    private Saying after() {
        Saying times =
                Saying.of(times()).with("ties", moved.size() + plan.cuts().all().size());
        return newConditions()
                .map(conditions -> Saying.of("notices.new-times-and-values")
                        .with("times", times)
                        .with("values", values(conditions)))
                .orElse(times);
    }

    /** The first order of play changes nothing that anybody knew. */
    private String times() {
        if (!plan.cuts().isNone()) {
            return "notices.new-times-or-none";
        }
        if (event.order().plan().isEmpty()
                && event.ties().values().stream().allMatch(tie -> tie.start().isEmpty())) {
            return "notices.first-times";
        }
        return moved.stream().allMatch(this::isAnotherStart) ? "notices.new-times" : "notices.new-times-or-courts";
    }

    private boolean isAnotherStart(PublishPlan.Placed one) {
        Tie tie = event.tie(one.tie()).orElseThrow();
        return !tie.isInPlay() && !tie.start().equals(Optional.of(one.start()));
    }

    private Saying ruled() {
        List<Saying> parts = new ArrayList<>();
        newConditions()
                .ifPresent(
                        conditions -> parts.add(Saying.of("notices.from-now-on").with("values", values(conditions))));
        said("notices.not-played", plan.cuts().off()).ifPresent(parts::add);
        said("notices.points-shared", plan.cuts().shared()).ifPresent(parts::add);
        said("notices.another-day", plan.cuts().later()).ifPresent(parts::add);
        return Saying.of("notices.plan-ruled").with("parts", parts);
    }

    private static Optional<Saying> said(String what, List<TieId> ties) {
        return ties.isEmpty() ? Optional.empty() : Optional.of(Saying.of(what).withEach("ties", ties));
    }

    private List<Saying> values(Conditions now) {
        return Stream.of(Setting.values())
                .filter(setting -> !now.value(setting).equals(event.conditions().value(setting)))
                .map(setting -> Saying.of("notices.value-instead")
                        .with("setting", setting.code())
                        .with("called", setting.code().replace('_', ' '))
                        .with("value", now.value(setting))
                        .with("before", event.conditions().value(setting)))
                .toList();
    }

    private Saying title() {
        return Saying.of("notices.order-of-play").with("version", version);
    }
}
