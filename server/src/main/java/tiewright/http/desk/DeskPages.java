package tiewright.http.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.desk.CallToCourt;
import tiewright.desk.CheckIn;
import tiewright.desk.NextCalls;
import tiewright.event.Club;
import tiewright.event.Court;
import tiewright.event.ExchangeId;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.event.VisibleEvent;
import tiewright.event.VisibleExchange;
import tiewright.http.answers.Answers;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.Mark;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.SelectField;
import tiewright.http.pieces.State;
import tiewright.http.views.ActionForm;
import tiewright.http.views.CheckInView;
import tiewright.http.views.DeskView;
import tiewright.http.visit.Cautions;
import tiewright.http.visit.DoNextViews;
import tiewright.http.visit.Door;
import tiewright.http.visit.Form;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.NotFound;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TextOrder;
import tiewright.http.visit.TieOrder;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.wording.Words;

/** The desk: what to do next, sheets in or not in, calls to court, check-in. */
final class DeskPages implements Page {

    @Override
    public void at(Routes routes) {
        routes.get(
                Door.DESK,
                "/desk",
                visit -> visit.show(Screen.of("desk", visit.words().say("page-desk.desk"), view(visit))));
        routes.get(Door.DESK, "/desk/check-in", visit -> visit.show(checkIn(visit, Tried.NOTHING)));
        routes.post(Door.DESK, "/desk/check-in", DeskPages::check);
    }

    private static DeskView view(Visit visit) {
        VisibleEvent event = visit.event();
        TieViews views = new TieViews(event);
        List<DeskView.Sheets> sheets = new ArrayList<>();
        List<DeskView.Callable> calls = new ArrayList<>();
        Map<TieId, List<NextCalls.Next>> next = visit.ask(Answers::new).nextCalls();
        for (Tie tie : TieOrder.sorted(
                event.ties().stream().filter(one -> !event.isGone(one)).toList())) {
            waiting(event, tie).forEach(id -> sheets.add(sheets(event, views, tie, id)));
            for (NextCalls.Next one : next.getOrDefault(tie.id(), List.of())) {
                calls.add(new DeskView.Callable(
                        views.title(tie) + ", " + TieViews.rubber(one.rubber()),
                        views.when(tie),
                        call(event, tie, one)));
            }
        }
        return new DeskView(
                new DoNextViews(visit).list(),
                sheets,
                calls,
                running(event, views),
                late(visit, views),
                visit.hall().address().url(),
                banner(event),
                Cautions.OF_THE_DESK);
    }

    private static List<DeskView.Callable> running(VisibleEvent event, TieViews views) {
        List<DeskView.Callable> running = new ArrayList<>();
        for (Tie tie : event.ties()) {
            StopPages.stoppable(event, tie)
                    .forEach(rubber -> Optional.ofNullable(tie.calls().get(rubber))
                            .ifPresent(call -> running.add(new DeskView.Callable(
                                    views.title(tie) + ", " + TieViews.rubber(rubber),
                                    "court " + call.court() + (tie.stopped().containsKey(rubber) ? ", stopped" : ""),
                                    StopPages.press(tie, rubber)))));
        }
        return running;
    }

    /** Clocks of lateness; nobody is told that anything was lost, for nothing is. */
    private static List<String> late(Visit visit, TieViews views) {
        VisibleEvent event = visit.event();
        return visit.ask(Answers::new).late().stream()
                .flatMap(late -> event
                        .tie(late.tie())
                        .map(tie -> visit.words()
                                .sentence(
                                        late.claimable() ? "page.late-claimable" : "page.late-running",
                                        java.util.Map.of(
                                                "tie",
                                                tie.id() + " (" + views.title(tie) + ")"
                                                        + late.rubber()
                                                                .map(no -> ", "
                                                                        + TieViews.rubber(no)
                                                                                .toLowerCase(java.util.Locale.ROOT))
                                                                .orElse(""),
                                                "clock",
                                                late.clock(),
                                                "since",
                                                late.claimableSince())))
                        .stream())
                .toList();
    }

    static String banner(VisibleEvent event) {
        return event.opening()
                .filter(tiewright.event.SetUpFact.OpeningChosen::organiserIsCaptain)
                .map(chosen -> "The organiser also captains a club. Sheets are opened "
                        + chosen.neutral()
                                .map(name -> "by " + name + ".")
                                .orElse("by the tool itself at the deadline."))
                .orElse("");
    }

    /** The exchanges of the tie that somebody waits for. */
    static List<ExchangeId> waiting(VisibleEvent event, Tie tie) {
        List<ExchangeId> ids = new ArrayList<>();
        if (tie.isReady() && !tie.isOpened() && tie.start().isPresent() && event.goesOn(tie)) {
            ids.add(ExchangeId.sheets(tie.id()));
        }
        if (event.progress(tie).awaitsDecider() && !tie.isDeciderOpened()) {
            ids.add(ExchangeId.decider(tie.id()));
        }
        return ids;
    }

    private static DeskView.Sheets sheets(VisibleEvent event, TieViews views, Tie tie, ExchangeId id) {
        VisibleExchange exchange = event.exchange(id);
        return new DeskView.Sheets(
                views.title(tie),
                "/desk/tie/" + tie.id(),
                (id.equals(ExchangeId.decider(tie.id())) ? "Decider pairs, until " : "Sheets, until ")
                        + exchange.deadline()
                                .map(at -> HallClock.said(event.clock(at)))
                                .orElse(Words.of(event).say("page-desk.no-time-yet")),
                views.side(tie, Side.HOME),
                inOrNot(exchange.home()),
                views.side(tie, Side.AWAY),
                inOrNot(exchange.away()));
    }

    static State inOrNot(VisibleExchange.VisibleSide side) {
        if (side.ruled().isPresent()) {
            return new State(Mark.KEPT, side.ruled().get().forfeited() ? "forfeited by ruling" : "supplied by ruling");
        }
        if (!side.in()) {
            return new State(Mark.PLAIN, "not in");
        }
        return side.atDesk() ? new State(Mark.SEALED, "in") : new State(Mark.SEALED, "in, kept on the phone");
    }

    /** A form that calls one rubber to a court: the one where it belongs, or another. */
    static ActionForm call(VisibleEvent event, Tie tie, NextCalls.Next next) {
        List<Option> courts = event.courts().stream()
                .filter(Court::usable)
                .map(Court::name)
                .sorted(TextOrder.NUMBERS_BY_VALUE)
                .map(court -> Option.of(
                        court,
                        Words.of(event).say("page-desk.court", "court", court),
                        next.court().filter(court::equals).isPresent()))
                .toList();
        String id = "call-" + tie.id() + "-" + next.rubber();
        return ActionForm.of(
                        id,
                        "/desk/tie/" + tie.id() + "/call",
                        "",
                        Button.main(Words.of(event).say("page-desk.call-to-court")))
                .sending("rubber", next.rubber().toString())
                .asking(SelectField.of(
                        "court-" + id,
                        Words.of(event).say("page-desk.to-2", "rubber", TieViews.rubber(next.rubber())),
                        Words.of(event).say("page-desk.choose-a-court"),
                        courts));
    }

    static void callNow(Visit visit, java.util.function.Function<Tried, Screen> again) {
        Tie tie = visit.tie();
        Form form = visit.form();
        RubberNo rubber = form.maybe("rubber")
                .flatMap(RubberNo::parse)
                .orElseThrow(() -> new NotFound(visit.words().say("page-desk.this-form-names-no-rubber")));
        String court = form.mustText("court-call-" + tie.id() + "-" + rubber);
        visit.attempt(form, () -> new CallToCourt(tie.id(), rubber, court), "/desk", again);
    }

    private static void check(Visit visit) {
        Form form = visit.form();
        Optional<PlayerId> player = form.must("player", form.read("player", "form.not-a-player", PlayerId::of));
        boolean present = form.text("present").equals("yes");
        visit.attempt(
                form,
                () -> new CheckIn(player.orElseThrow(), present),
                "/desk/check-in#" + form.text("player"),
                tried -> checkIn(visit, tried));
    }

    private static Screen checkIn(Visit visit, Tried tried) {
        VisibleEvent event = visit.event();
        List<CheckInView.Club> clubs = new ArrayList<>();
        for (Club club : event.clubs()) {
            List<Player> squad = event.squad(club.id());
            long here = squad.stream()
                    .filter(player -> player.checkedInAt().isPresent())
                    .count();
            clubs.add(new CheckInView.Club(
                    club.id().code(),
                    club.name(),
                    visit.words().say("page-desk.of-here", "here", here, "squad", squad.size()),
                    squad.stream().map(player -> line(event, player)).toList()));
        }
        return Screen.of("checkIn", visit.words().say("page-desk.check-in"), new CheckInView(clubs, tried.refusal()));
    }

    private static CheckInView.Line line(VisibleEvent event, Player player) {
        State state = player.checkedInAt()
                .map(at -> new State(
                        Mark.KEPT, Words.of(event).say("page-desk.here-since", "at", HallClock.said(event.clock(at)))))
                .orElse(
                        player.absent()
                                ? new State(Mark.STOP, Words.of(event).say("page-desk.not-here-2"))
                                : State.NONE);
        List<CheckInView.Press> presses = new ArrayList<>();
        if (player.checkedInAt().isEmpty()) {
            presses.add(new CheckInView.Press(Words.of(event).say("page-desk.here"), "yes"));
        }
        if (!player.absent()) {
            presses.add(new CheckInView.Press(Words.of(event).say("page-desk.not-here"), "no"));
        }
        return new CheckInView.Line(player.id().code(), event.name(player.id()), state, presses);
    }
}
