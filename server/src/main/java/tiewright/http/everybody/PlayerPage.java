package tiewright.http.everybody;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.event.ClubId;
import tiewright.event.ExchangeId;
import tiewright.event.OrderOfPlay;
import tiewright.event.Pair;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.TieProgress;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.Answers;
import tiewright.http.pieces.Mark;
import tiewright.http.pieces.NextCard;
import tiewright.http.pieces.State;
import tiewright.http.views.PlayerView;
import tiewright.http.visit.Changes;
import tiewright.http.visit.Door;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.NotFound;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TieOrder;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Visit;
import tiewright.wording.Words;

/** A player's next: when, where, with whom, against whom; before the sheets open, time and court only. */
final class PlayerPage implements Page {

    @Override
    public void at(Routes routes) {
        routes.get(Door.ANYBODY, "/player/{player}", visit -> show(visit, "player"));
        routes.get(Door.ANYBODY, "/player/{player}/court", visit -> show(visit, "court"));
    }

    private static void show(Visit visit, String template) {
        Player player = visit.readId("player", PlayerId::of)
                .flatMap(visit.event()::player)
                .orElseThrow(() -> new NotFound(
                        visit.say("page-everybody.there-is-no-player-in", "player", visit.path("player"))));
        visit.show(Screen.of(
                template,
                visit.event().name(player.id()) + ", " + visit.event().clubName(player.club()),
                view(visit, player)));
    }

    private static PlayerView view(Visit visit, Player player) {
        VisibleEvent event = visit.event();
        List<Tie> open = TieOrder.sorted(event.tiesOf(player.club())).stream()
                .filter(event::goesOn)
                .toList();
        List<NextCard> cards =
                open.stream().flatMap(tie -> cards(visit, player, tie).stream()).toList();
        return new PlayerView(
                "/player/" + player.id(),
                new Waiting(visit, player, open).words(),
                cards.stream().findFirst(),
                cards.stream().skip(1).toList(),
                new PlayedToday(event, player).all(),
                new ClubAhead(visit, player.club(), open).view(),
                CalendarPage.link(visit, player.id()));
    }

    private static List<NextCard> cards(Visit visit, Player player, Tie tie) {
        VisibleEvent event = visit.event();
        TieProgress progress = event.progress(tie);
        if (!tie.isOpened()) {
            return List.of(unopened(visit, player, tie));
        }
        List<NextCard> cards = new ArrayList<>();
        Side side = tie.sideOf(player.club()).orElseThrow();
        for (Map.Entry<RubberNo, Tie.OpenedRubber> rubber : tie.opened().entrySet()) {
            Optional<Pair> own = rubber.getValue().pair(side).filter(pair -> pair.has(player.id()));
            if (own.isPresent() && progress.left().contains(rubber.getKey())) {
                cards.add(opened(
                        event,
                        tie,
                        rubber.getKey(),
                        players(
                                event,
                                own.get().partnerOf(player.id()),
                                rubber.getValue().pair(side.other()))));
            }
        }
        return cards;
    }

    private static NextCard unopened(Visit visit, Player player, Tie tie) {
        VisibleEvent event = visit.event();
        TieViews views = new TieViews(event);
        List<String> courts = event.order().courts(tie);
        String note = event.deadline(ExchangeId.sheets(tie.id()))
                .map(at -> visit.say("page-everybody.who-plays-with-whom-is-2", "at", HallClock.said(event.clock(at))))
                .orElse(visit.say("page-everybody.who-plays-with-whom-is"));
        return new NextCard(
                views.title(tie),
                courts.size() == 1 ? courts.get(0) : "",
                views.when(tie),
                event.startsAt(tie),
                State.NONE,
                known(visit, player, tie),
                note,
                new Changes(event).last(tie));
    }

    /** What is known of a tie before its sheets are opened. */
    private static List<NextCard.Line> known(Visit visit, Player player, Tie tie) {
        VisibleEvent event = visit.event();
        List<NextCard.Line> lines = new ArrayList<>();
        lines.add(new NextCard.Line(
                visit.say("page-everybody.against"),
                new TieViews(event)
                        .side(tie, tie.sideOf(player.club()).orElseThrow().other())));
        List<String> courts = event.order().courts(tie);
        if (courts.size() > 1) {
            lines.add(new NextCard.Line(visit.say("page-everybody.courts"), String.join(", ", courts)));
        }
        Optional.of(visit.ties().expected(tie))
                .filter(words -> !words.isEmpty())
                .ifPresent(words -> lines.add(new NextCard.Line(visit.say("page-everybody.expected"), words)));
        toldSheet(visit, player.club(), tie)
                .ifPresent(sheet -> told(event, sheet, player.id()).forEach(lines::add));
        return lines;
    }

    /** The own club's sealed sheet, where its captain lets the club know and this reader came by a link of that club. */
    private static Optional<Sheet> toldSheet(Visit visit, ClubId club, Tie tie) {
        return visit.ask(Answers::new).toldSheet(ExchangeId.sheets(tie.id()), club);
    }

    private static List<NextCard.Line> told(VisibleEvent event, Sheet sheet, PlayerId player) {
        List<NextCard.Line> lines = new ArrayList<>();
        sheet.pairs()
                .forEach((rubber, pair) -> pair.filter(two -> two.has(player))
                        .ifPresent(two -> lines.add(new NextCard.Line(
                                Words.say(event, "page-everybody.your-captain-says"),
                                Words.say(
                                        event,
                                        "page-everybody.with-2",
                                        "rubber",
                                        TieViews.rubber(Words.of(event), rubber),
                                        "player",
                                        event.name(two.partnerOf(player)))))));
        return lines.isEmpty()
                ? List.of(new NextCard.Line(
                        Words.say(event, "page-everybody.your-captain-says"),
                        Words.say(event, "page-everybody.you-rest-in-this-tie")))
                : lines;
    }

    private static NextCard opened(VisibleEvent event, Tie tie, RubberNo rubber, List<NextCard.Line> players) {
        TieViews views = new TieViews(event);
        Optional<Tie.Call> call = Optional.ofNullable(tie.calls().get(rubber));
        Optional<OrderOfPlay.Place> planned =
                Optional.ofNullable(event.order().rubbers(tie.id()).get(rubber));
        return new NextCard(
                views.title(tie) + ", " + TieViews.rubber(Words.of(event), rubber),
                call.map(Tie.Call::court)
                        .or(() -> planned.map(OrderOfPlay.Place::court))
                        .or(tie::court)
                        .orElse(""),
                call.map(one -> Words.say(
                                event, "page-everybody.called-at", "at", HallClock.said(event.clock(one.at()))))
                        .orElse(planned.map(place -> HallClock.said(place.start()))
                                .orElse(views.when(tie))),
                call.isPresent() ? Optional.empty() : event.startsAt(tie),
                call.isPresent()
                        ? new State(Mark.PLAYING, Words.say(event, "page-everybody.go-to-the-court"))
                        : new State(Mark.OPENED, Words.say(event, "page-everybody.sheets-opened")),
                players,
                "",
                new Changes(event).last(tie));
    }

    private static List<NextCard.Line> players(VisibleEvent event, PlayerId partner, Optional<Pair> against) {
        String other = against.map(two -> CalendarEntries.names(event, two))
                .orElse(Words.say(event, "page-everybody.no-pair-walkover"));
        return List.of(
                new NextCard.Line(Words.say(event, "page-everybody.with"), event.name(partner)),
                new NextCard.Line(Words.say(event, "page-everybody.against"), other));
    }
}
