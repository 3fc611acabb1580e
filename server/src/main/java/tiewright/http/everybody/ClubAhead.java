package tiewright.http.everybody;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tiewright.event.ClubId;
import tiewright.event.Stage;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.Answers;
import tiewright.http.views.PlayerView;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.OwnDay;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Visit;
import tiewright.standings.Row;
import tiewright.wording.Words;

/** Where a club stands, what it has ahead, and when it can go home as far as that is known. */
final class ClubAhead {
    private final Visit visit;
    private final VisibleEvent event;
    private final Words words;
    private final ClubId club;
    private final List<Tie> open;

    /** @param open the ties of the club that go on or are to come, in their order */
    ClubAhead(Visit visit, ClubId club, List<Tie> open) {
        this.visit = visit;
        this.event = visit.event();
        this.words = visit.words();
        this.club = club;
        this.open = open;
    }

    PlayerView.Club view() {
        OwnDay day = new OwnDay(visit, club);
        return new PlayerView.Club(
                event.clubName(club),
                "/club/" + club,
                place(),
                home(),
                open.stream().map(day::line).toList());
    }

    private String place() {
        return event.pools().entrySet().stream()
                .filter(pool -> pool.getValue().contains(club))
                .flatMap(pool -> visit.ask(Answers::new).table(pool.getKey()).rows().stream()
                        .filter(row -> row.club().equals(club))
                        .filter(row -> row.tiesWon() + row.tiesLost() + row.tiesDrawn() > 0)
                        .map(row -> place(row, pool.getKey())))
                .findFirst()
                .orElse("");
    }

    private String place(Row row, String pool) {
        return words.say("page-everybody.place-in-pool", "place", TieViews.ordinal(words, row.place()), "pool", pool);
    }

    /** Nothing earlier than what is sure: a place in the knockout adds ties that nobody knows yet. */
    private String home() {
        Optional<Instant> last =
                open.stream().flatMap(tie -> event.startsAt(tie).stream()).max(Comparator.naturalOrder());
        if (last.isEmpty()) {
            return "";
        }
        boolean perhaps = event.ties().stream().anyMatch(tie -> tie.stage() != Stage.POOL && !tie.isReady());
        String sure = words.say(
                "page-everybody.home-last",
                "club",
                event.clubName(club),
                "at",
                HallClock.said(event.clock(last.get())));
        return perhaps ? sure + " " + words.say("page-everybody.home-perhaps") : sure;
    }
}
