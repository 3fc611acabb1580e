package tiewright.http.captain;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.event.OrderOfPlay;
import tiewright.event.Pair;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.NavLink;
import tiewright.http.views.CaptainView;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Visit;
import tiewright.wording.Words;

/** The captain's own next rubber, once the captain has said on this phone who of the squad it is. */
final class OwnNext {
    static final String ME = "me";

    private static final int A_DAY = 24 * 60 * 60;

    private final Visit visit;
    private final VisibleEvent event;
    private final Words words;
    private final TieViews views;

    OwnNext(Visit visit) {
        this.visit = visit;
        this.event = visit.event();
        this.words = visit.words();
        this.views = visit.ties();
    }

    /** Whether the address says who it is: then this phone remembers it. */
    boolean isTold() {
        String told = visit.ctx().queryParam(ME);
        if (told == null) {
            return false;
        }
        visit.ctx().cookie(ME, own(told).map(player -> player.id().code()).orElse(""), A_DAY);
        return true;
    }

    private Optional<Player> own(String code) {
        return event.squad(visit.club()).stream()
                .filter(player -> player.id().code().equals(code))
                .findFirst();
    }

    /** Who of the squad it is: as told on this phone, else whom the link names. */
    Optional<Player> me() {
        return own(Optional.ofNullable(visit.ctx().cookie(ME))
                .filter(told -> !told.isEmpty())
                .or(() -> visit.viewer().player().map(PlayerId::code))
                .orElse(""));
    }

    /** One line for each of the squad, to be chosen from. */
    List<NavLink> squad() {
        return event.squad(visit.club()).stream()
                .map(player -> new NavLink(
                        "/captain?" + ME + "=" + player.id(),
                        event.name(player.id()),
                        me().filter(player::equals).isPresent()))
                .toList();
    }

    /** @param ties the club's, in the order of play */
    Optional<CaptainView.Own> next(List<Tie> ties) {
        return me().map(player -> ties.stream()
                .filter(event::goesOn)
                .flatMap(tie -> next(player, tie).stream())
                .findFirst()
                .orElseGet(() -> said(player, words.say("page-captain.you-nothing-more"), "")));
    }

    private Optional<CaptainView.Own> next(Player player, Tie tie) {
        Side side = tie.sideOf(player.club()).orElseThrow();
        if (!tie.isOpened()) {
            return Optional.of(said(
                    player,
                    words.say("page-captain.you-may-play", "other", views.side(tie, side.other())),
                    place(tie.start().map(HallClock::said), event.order().courts(tie))));
        }
        for (Map.Entry<RubberNo, Tie.OpenedRubber> rubber : tie.opened().entrySet()) {
            Optional<Pair> own = rubber.getValue().pair(side).filter(pair -> pair.has(player.id()));
            if (own.isPresent() && event.progress(tie).left().contains(rubber.getKey())) {
                return Optional.of(
                        opened(player, tie, rubber.getKey(), own.get().partnerOf(player.id())));
            }
        }
        return Optional.empty();
    }

    private CaptainView.Own opened(Player player, Tie tie, RubberNo rubber, PlayerId partner) {
        return said(
                player,
                words.say(
                        "page-captain.you-play",
                        "rubber",
                        rubber,
                        "kind",
                        rubber.isDecider() ? "decider" : "rubber",
                        "partner",
                        event.name(partner)),
                Optional.ofNullable(tie.calls().get(rubber)).map(this::called).orElseGet(() -> planned(tie, rubber)));
    }

    private String called(Tie.Call call) {
        return words.say(
                "page-captain.you-are-called", "court", call.court(), "at", HallClock.said(event.clock(call.at())));
    }

    private String planned(Tie tie, RubberNo rubber) {
        Optional<OrderOfPlay.Place> planned =
                Optional.ofNullable(event.order().rubbers(tie.id()).get(rubber));
        return place(
                planned.map(OrderOfPlay.Place::start).or(tie::start).map(HallClock::said),
                planned.map(place -> List.of(place.court()))
                        .orElseGet(() -> event.order().courts(tie)));
    }

    private String place(Optional<String> start, List<String> courts) {
        return words.say(
                "page-captain.where-and-when",
                "courts",
                courts,
                "count",
                courts.size(),
                "timed",
                start.isPresent() ? "yes" : "no",
                "start",
                start.orElse(""));
    }

    private static CaptainView.Own said(Player player, String what, String where) {
        return new CaptainView.Own(what, where, "/player/" + player.id());
    }
}
