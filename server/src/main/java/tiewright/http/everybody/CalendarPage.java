package tiewright.http.everybody;

import java.net.URI;
import java.net.URISyntaxException;
import java.time.Instant;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.event.Club;
import tiewright.event.ClubId;
import tiewright.event.ExchangeId;
import tiewright.event.OrderOfPlay;
import tiewright.event.Pair;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.Answers;
import tiewright.http.visit.Door;
import tiewright.http.visit.NotFound;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Visit;
import tiewright.paper.CalendarFile;
import tiewright.wording.Words;

/**
 * A calendar for each club and each player, to subscribe to. It is made for strangers whoever asks, for calendars are passed
 * on: names as public pages show them, and who plays with whom only once the sheets are open.
 */
final class CalendarPage implements Page {
    private static final int MINUTES_OF_A_SLOT = 20;

    @Override
    public void at(Routes routes) {
        routes.get(Door.ANYBODY, "/club/{club}/calendar.ics", visit -> {
            Club club = visit.readId("club", ClubId::of)
                    .flatMap(visit.event()::club)
                    .orElseThrow(() -> new NotFound(
                            visit.words().say("page-everybody.there-is-no-club-in", "club", visit.path("club"))));
            send(visit.asStranger(), club.id(), Optional.empty());
        });
        routes.get(Door.ANYBODY, "/player/{player}/calendar.ics", visit -> {
            Player player = visit.readId("player", PlayerId::of)
                    .flatMap(visit.event()::player)
                    .orElseThrow(() -> new NotFound(
                            visit.words().say("page-everybody.there-is-no-player-in", "player", visit.path("player"))));
            send(visit.asStranger(), player.club(), Optional.of(player.id()));
        });
    }

    static String club(ClubId club) {
        return "/club/" + club + "/calendar.ics";
    }

    static String player(PlayerId player) {
        return "/player/" + player + "/calendar.ics";
    }

    /** The whole address, in the letters that addresses are made of (RFC 3986). */
    static String address(Visit visit, String path) {
        try {
            return visit.hall().address().url() + new URI(null, null, path, null).toASCIIString();
        } catch (URISyntaxException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static void send(Visit visit, ClubId club, Optional<PlayerId> player) {
        VisibleEvent event = visit.event();
        String whose = player.map(event::name).map(name -> name + ", ").orElse("") + event.clubName(club);
        List<CalendarFile.Entry> entries = new ArrayList<>();
        changed(event, club)
                .forEach((tie, changes) ->
                        entry(visit, club, player, tie, changes).ifPresent(entries::add));
        String day = event.about().map(about -> ", " + about.name()).orElse("");
        visit.ctx()
                .contentType("text/calendar; charset=utf-8")
                .header("Content-Disposition", visit.words().say("page-everybody.inline-filename-calendar-ics"))
                .result(new CalendarFile(whose + day, entries).text());
    }

    /** Every tie of the club that ever had a time, also one that was called off. */
    private static Map<TieId, List<OrderOfPlay.Change>> changed(VisibleEvent event, ClubId club) {
        Map<TieId, List<OrderOfPlay.Change>> changes = new LinkedHashMap<>();
        for (OrderOfPlay.Change change : event.order().changes()) {
            boolean concerns = event.tie(change.tie())
                    .map(tie -> tie.has(club))
                    .orElse(change.clubs().contains(club));
            if (concerns) {
                changes.computeIfAbsent(change.tie(), tie -> new ArrayList<>()).add(change);
            }
        }
        return changes;
    }

    private static Optional<CalendarFile.Entry> entry(
            Visit visit, ClubId club, Optional<PlayerId> player, TieId id, List<OrderOfPlay.Change> changes) {
        VisibleEvent event = visit.event();
        Optional<Tie> tie = event.tie(id);
        Optional<LocalTime> start = tie.flatMap(Tie::start);
        Optional<LocalTime> last = changes.stream()
                .flatMap(change -> java.util.stream.Stream.of(change.before(), change.after()))
                .flatMap(times -> times.start().stream())
                .reduce((one, other) -> other);
        String uid = id + "." + player.map(PlayerId::code).orElse(club.code()) + "@"
                + visit.ask(Answers::new).began() + ".tiewright";
        Instant stamp = changes.get(changes.size() - 1).at();
        return start.or(() -> last)
                .flatMap(at -> moment(event, at))
                .map(moment -> new CalendarFile.Entry(
                        uid,
                        sequence(event, tie, changes),
                        stamp,
                        moment,
                        end(event, id, start),
                        summary(event, club, tie, changes),
                        tie.map(one -> new TieViews(event).where(one)).orElse(""),
                        tie.map(one -> String.join("\n", lines(event, club, player, one)))
                                .orElse(visit.words().say("page-everybody.called-off")),
                        address(visit, tie.map(one -> "/tie/" + one.id()).orElse("/notices")),
                        start.isEmpty()));
    }

    private static Optional<Instant> moment(VisibleEvent event, LocalTime at) {
        return event.about()
                .map(about -> about.date().atTime(at).atZone(about.zone()).toInstant());
    }

    /** One more with each change of time, club or names; it never goes back. */
    private static int sequence(VisibleEvent event, Optional<Tie> tie, List<OrderOfPlay.Change> changes) {
        int names = tie.map(one -> one.opened().size()
                        + event.exchange(ExchangeId.sheets(one.id()))
                                .replacements()
                                .size()
                        + event.exchange(ExchangeId.decider(one.id()))
                                .replacements()
                                .size()
                        + (one.isReady()
                                ? 2
                                : one.home().club().isPresent()
                                                || one.away().club().isPresent()
                                        ? 1
                                        : 0))
                .orElse(1000);
        return changes.size() * 2 + names;
    }

    /** The end that the published plan foresees; a tie without a plan has none. */
    private static Optional<Instant> end(VisibleEvent event, TieId tie, Optional<LocalTime> start) {
        return start.flatMap(any -> event.order().rubbers(tie).values().stream()
                        .map(OrderOfPlay.Place::start)
                        .max(LocalTime::compareTo))
                .flatMap(last -> moment(event, last))
                .map(last -> last.plus(
                        event.order().plan().map(OrderOfPlay.Plan::slotMinutes).orElse(MINUTES_OF_A_SLOT),
                        ChronoUnit.MINUTES));
    }

    private static String summary(
            VisibleEvent event, ClubId club, Optional<Tie> tie, List<OrderOfPlay.Change> changes) {
        TieViews views = new TieViews(event);
        String against = tie.flatMap(one -> one.sideOf(club).map(side -> views.side(one, side.other())))
                .orElseGet(() -> changes.get(changes.size() - 1).clubs().stream()
                        .filter(other -> !other.equals(club))
                        .map(event::clubName)
                        .findFirst()
                        .orElse(""));
        return Words.of(event).say("page-everybody.v", "club", event.clubName(club), "against", against);
    }

    private static List<String> lines(VisibleEvent event, ClubId club, Optional<PlayerId> player, Tie tie) {
        TieViews views = new TieViews(event);
        List<String> lines = new ArrayList<>(List.of(views.stage(tie)));
        Side side = tie.sideOf(club).orElse(Side.HOME);
        player.ifPresent(one -> tie.opened()
                .forEach((rubber, pairs) -> pairs.pair(side)
                        .filter(pair -> pair.has(one))
                        .ifPresent(pair -> lines.add(Words.of(event)
                                .say(
                                        "page-everybody.with-against",
                                        "rubber",
                                        TieViews.rubber(rubber),
                                        "one",
                                        event.name(pair.partnerOf(one)),
                                        "other",
                                        against(event, pairs.pair(side.other())))))));
        event.order()
                .plan()
                .ifPresent(plan -> lines.add(Words.of(event)
                        .say(
                                "page-everybody.order-of-play-notice-the",
                                "version",
                                plan.version(),
                                "notice",
                                plan.notice())));
        return lines;
    }

    private static String against(VisibleEvent event, Optional<Pair> pair) {
        return pair.map(two -> Words.of(event)
                        .say(
                                "page-everybody.and",
                                "first",
                                event.name(two.first()),
                                "second",
                                event.name(two.second())))
                .orElse(Words.of(event).say("page-everybody.no-pair"));
    }
}
