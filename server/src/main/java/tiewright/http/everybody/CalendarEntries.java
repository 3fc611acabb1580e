package tiewright.http.everybody;

import java.time.Instant;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.event.ClubId;
import tiewright.event.ExchangeId;
import tiewright.event.OrderOfPlay;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.Answers;
import tiewright.http.visit.Calendars;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Visit;
import tiewright.paper.CalendarFile;
import tiewright.wording.Words;

/** The ties of a club, or of one of its players, as a calendar has them: those that ever had a time, also the called off. */
final class CalendarEntries {
    private static final int MINUTES_OF_A_SLOT = 20;

    private final Visit visit;
    private final VisibleEvent event;
    private final ClubId club;
    private final Optional<PlayerId> player;

    CalendarEntries(Visit visit, ClubId club, Optional<PlayerId> player) {
        this.visit = visit;
        this.event = visit.event();
        this.club = club;
        this.player = player;
    }

    List<CalendarFile.Entry> all() {
        List<CalendarFile.Entry> entries = new ArrayList<>();
        changed().forEach((tie, changes) -> entry(tie, changes).ifPresent(entries::add));
        return entries;
    }

    /** Every tie of the club that ever had a time, also one that was called off. */
    private Map<TieId, List<OrderOfPlay.Change>> changed() {
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

    private Optional<CalendarFile.Entry> entry(TieId id, List<OrderOfPlay.Change> changes) {
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
                .flatMap(at -> moment(at))
                .map(moment -> new CalendarFile.Entry(
                        uid,
                        sequence(tie, changes),
                        stamp,
                        moment,
                        end(id, start),
                        summary(tie, changes),
                        tie.map(one -> new TieViews(event).where(one)).orElse(""),
                        tie.map(one -> String.join("\n", lines(one))).orElse(visit.say("page-everybody.called-off")),
                        Calendars.address(
                                visit, tie.map(one -> "/tie/" + one.id()).orElse("/notices")),
                        start.isEmpty()));
    }

    private Optional<Instant> moment(LocalTime at) {
        return event.about()
                .map(about -> about.date().atTime(at).atZone(about.zone()).toInstant());
    }

    /** One more with each change of time, club or names; it never goes back. */
    private int sequence(Optional<Tie> tie, List<OrderOfPlay.Change> changes) {
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
    private Optional<Instant> end(TieId tie, Optional<LocalTime> start) {
        return start.flatMap(any -> event.order().rubbers(tie).values().stream()
                        .map(OrderOfPlay.Place::start)
                        .max(LocalTime::compareTo))
                .flatMap(last -> moment(last))
                .map(last -> last.plus(
                        event.order().plan().map(OrderOfPlay.Plan::slotMinutes).orElse(MINUTES_OF_A_SLOT),
                        ChronoUnit.MINUTES));
    }

    private String summary(Optional<Tie> tie, List<OrderOfPlay.Change> changes) {
        TieViews views = new TieViews(event);
        String against = tie.flatMap(one -> one.sideOf(club).map(side -> views.side(one, side.other())))
                .orElseGet(() -> changes.get(changes.size() - 1).clubs().stream()
                        .filter(other -> !other.equals(club))
                        .map(event::clubName)
                        .findFirst()
                        .orElse(""));
        return Words.say(event, "page-everybody.v", "club", event.clubName(club), "against", against);
    }

    private List<String> lines(Tie tie) {
        TieViews views = new TieViews(event);
        List<String> lines = new ArrayList<>(List.of(views.stage(tie)));
        Side side = tie.sideOf(club).orElse(Side.HOME);
        player.ifPresent(one -> tie.opened()
                .forEach((rubber, pairs) -> pairs.pair(side)
                        .filter(pair -> pair.has(one))
                        .ifPresent(pair -> lines.add(Words.say(
                                event,
                                "page-everybody.with-against",
                                "rubber",
                                TieViews.rubber(Words.of(event), rubber),
                                "one",
                                event.name(pair.partnerOf(one)),
                                "other",
                                against(pairs.pair(side.other())))))));
        event.order().plan().ifPresent(plan -> lines.add(published(plan)));
        return lines;
    }

    private String published(OrderOfPlay.Plan plan) {
        return Words.say(
                event, "page-everybody.order-of-play-notice-the", "version", plan.version(), "notice", plan.notice());
    }

    private String against(Optional<Pair> pair) {
        return pair.map(two -> names(event, two)).orElse(Words.say(event, "page-everybody.no-pair"));
    }

    /** Both players of a pair by name. */
    static String names(VisibleEvent event, Pair pair) {
        return Words.say(
                event, "page-everybody.and", "first", event.name(pair.first()), "second", event.name(pair.second()));
    }
}
