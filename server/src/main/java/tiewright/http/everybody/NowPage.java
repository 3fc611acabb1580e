package tiewright.http.everybody;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import tiewright.event.Card;
import tiewright.event.ClubId;
import tiewright.event.Court;
import tiewright.event.Tie;
import tiewright.event.TieProgress;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.Answers;
import tiewright.http.pieces.CourtRow;
import tiewright.http.pieces.DayLine;
import tiewright.http.pieces.Notice;
import tiewright.http.views.NowView;
import tiewright.http.visit.Door;
import tiewright.http.visit.FinalOrders;
import tiewright.http.visit.NoticeViews;
import tiewright.http.visit.OwnDay;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Scored;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TextOrder;
import tiewright.http.visit.TieOrder;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Visit;

/** The reader's club first, then what is on court now, what comes next, what just ended; after the last card, who won. */
final class NowPage implements Page {
    private static final int A_FEW = 6;
    private static final String CLUB = "club";

    @Override
    public void at(Routes routes) {
        routes.get(Door.ANYBODY, "/", NowPage::show);
    }

    /** A club once chosen is chosen on the next visit too; everybody who chose the same gets the same page. */
    private static void show(Visit visit) {
        String kept = Optional.ofNullable(visit.ctx().cookie(CLUB)).orElse("");
        String asked = visit.ctx().queryParam(CLUB);
        if (asked == null
                && known(visit, kept).isPresent()
                && visit.viewer().club().isEmpty()) {
            visit.go("/?" + CLUB + "=" + known(visit, kept).get());
            return;
        }
        if (asked != null) {
            visit.ctx().cookie(CLUB, known(visit, asked).map(ClubId::code).orElse(""), 24 * 60 * 60);
        }
        visit.showEverybodys(one -> Screen.of("now", one.words().say("page-everybody.on-now"), view(one)));
    }

    private static Optional<ClubId> known(Visit visit, String code) {
        return visit.event().clubs().stream()
                .map(club -> club.id())
                .filter(club -> club.code().equals(code))
                .findFirst();
    }

    private static NowView view(Visit visit) {
        Optional<ClubId> own = visit.viewer()
                .club()
                .or(() -> known(
                        visit, Optional.ofNullable(visit.ctx().queryParam(CLUB)).orElse("")));
        return view(visit, own);
    }

    static NowView view(Visit visit, Optional<ClubId> own) {
        VisibleEvent event = visit.event();
        CourtRows rows = new CourtRows(visit, own);
        TieViews ties = visit.ties();
        NowView.Placing placing = placing(visit);
        List<Tie> playing = playing(event);
        List<CourtRow> on =
                playing.stream().flatMap(tie -> rows.playing(tie).stream()).toList();
        return new NowView(
                own.map(club -> mine(visit, club)),
                on,
                placing.clubs().isEmpty() ? free(visit, on) : "",
                TieOrder.sorted(event.ties().stream()
                                .filter(tie -> event.goesOn(tie) && tie.isReady() && !playing.contains(tie))
                                .toList())
                        .stream()
                        .limit(A_FEW)
                        .map(rows::next)
                        .toList(),
                ended(event).stream().limit(A_FEW).map(ties::line).toList(),
                latest(event),
                placing,
                !event.ties().isEmpty());
    }

    private static NowView.Placing placing(Visit visit) {
        return new NowView.Placing(
                visit.ask(Answers::new).finalPlacing().stream()
                        .map(visit.event()::clubName)
                        .toList(),
                visit.event().signed().isPresent());
    }

    /** The last one first. */
    private static List<Tie> ended(VisibleEvent event) {
        List<Tie> ended = new ArrayList<>(TieOrder.sorted(event.ties().stream()
                .filter(tie -> event.progress(tie).finished() && Scored.is(event, tie))
                .toList()));
        Collections.reverse(ended);
        ended.sort(Comparator.comparing(NowPage::lastEntry).reversed());
        return ended;
    }

    private static Instant lastEntry(Tie tie) {
        return tie.cards().values().stream()
                .flatMap(card -> card.entries().stream())
                .map(Card.Entry::receivedAt)
                .max(Comparator.naturalOrder())
                .orElse(Instant.MIN);
    }

    private static List<Tie> playing(VisibleEvent event) {
        return TieOrder.sorted(event.ties().stream()
                .filter(event::goesOn)
                .filter(tie -> {
                    TieProgress progress = event.progress(tie);
                    return !progress.rubbers().isEmpty() || !tie.calls().isEmpty();
                })
                .toList());
    }

    /** Not that of the final order: the page says it itself. */
    private static Optional<Notice> latest(VisibleEvent event) {
        return event.notices().stream()
                .reduce((earlier, later) -> later)
                .filter(last -> !FinalOrders.isStatedBy(last))
                .map(last -> NoticeViews.notice(event, last).inShort());
    }

    private static NowView.Mine mine(Visit visit, ClubId club) {
        OwnDay day = new OwnDay(visit, club);
        List<DayLine> lines = TieOrder.sorted(visit.event().tiesOf(club)).stream()
                .filter(visit.event()::goesOn)
                .map(day::line)
                .toList();
        return new NowView.Mine(visit.event().clubName(club), "/club/" + club, lines);
    }

    private static String free(Visit visit, List<CourtRow> on) {
        Set<String> busy = on.stream().map(CourtRow::court).collect(Collectors.toSet());
        Set<String> free = new TreeSet<>(TextOrder.NUMBERS_BY_VALUE);
        visit.event().courts().stream()
                .filter(Court::usable)
                .map(Court::name)
                .filter(court -> !busy.contains(court))
                .forEach(free::add);
        return free.isEmpty()
                ? ""
                : visit.say("page-everybody.courts-free", "count", free.size(), "courts", List.copyOf(free));
    }
}
