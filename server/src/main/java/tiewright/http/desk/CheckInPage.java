package tiewright.http.desk;

import java.util.List;
import java.util.Optional;
import tiewright.desk.CheckIn;
import tiewright.desk.CheckInClub;
import tiewright.event.Club;
import tiewright.event.ClubId;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.Mark;
import tiewright.http.pieces.State;
import tiewright.http.views.CheckInView;
import tiewright.http.visit.Door;
import tiewright.http.visit.Form;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;

/** Who is here: one press for a club that is all here, one for each exception. */
final class CheckInPage implements Page {
    private static final String HERE = "/desk/check-in";

    @Override
    public void at(Routes routes) {
        routes.get(Door.DESK, HERE, visit -> visit.show(screen(visit, Tried.NOTHING)));
        routes.post(Door.DESK, HERE, CheckInPage::check);
        routes.post(Door.DESK, HERE + "/club", CheckInPage::all);
    }

    private static void check(Visit visit) {
        Form form = visit.form();
        Optional<PlayerId> player = form.must("player", form.read("player", "form.not-a-player", PlayerId::of));
        boolean present = form.text("present").equals("yes");
        String club = player.flatMap(visit.event()::player)
                .map(found -> found.club().code())
                .orElse("");
        visit.attempt(
                form,
                () -> new CheckIn(player.orElseThrow(), present),
                HERE + "#club-" + club,
                tried -> screen(visit, tried));
    }

    private static void all(Visit visit) {
        Form form = visit.form();
        Optional<ClubId> club = form.must("club", form.read("club", "form.not-a-club", ClubId::of));
        visit.attempt(
                form,
                () -> new CheckInClub(club.orElseThrow()),
                HERE + "#club-" + form.text("club"),
                tried -> screen(visit, tried));
    }

    private static Screen screen(Visit visit, Tried tried) {
        VisibleEvent event = visit.event();
        List<CheckInView.Club> clubs =
                event.clubs().stream().map(club -> club(visit, event, club)).toList();
        long here = event.players().stream()
                .filter(player -> player.checkedInAt().isPresent())
                .count();
        return Screen.of(
                "checkIn",
                visit.say("page-desk.check-in"),
                new CheckInView(
                        visit.say(
                                "page-desk.of-here",
                                "here",
                                here,
                                "squad",
                                event.players().size()),
                        clubs,
                        tried.refusal()));
    }

    private static CheckInView.Club club(Visit visit, VisibleEvent event, Club club) {
        List<Player> squad = event.squad(club.id());
        long here = squad.stream()
                .filter(player -> player.checkedInAt().isPresent())
                .count();
        boolean asked = squad.stream().anyMatch(player -> player.checkedInAt().isEmpty() && !player.absent());
        return new CheckInView.Club(
                club.id().code(),
                club.name(),
                visit.say("page-desk.of-here", "here", here, "squad", squad.size()),
                asked ? visit.say(here == 0 ? "page-desk.all-here" : "page-desk.the-others-too") : "",
                squad.stream().map(player -> line(visit, event, player)).toList());
    }

    /** One press turns it: to here, and from here to not here. */
    private static CheckInView.Line line(Visit visit, VisibleEvent event, Player player) {
        boolean here = player.checkedInAt().isPresent();
        State state = player.checkedInAt()
                .map(at ->
                        new State(Mark.KEPT, visit.say("page-desk.here-since", "at", HallClock.said(event.clock(at)))))
                .orElseGet(() -> player.absent()
                        ? new State(Mark.STOP, visit.say("page-desk.not-here-2"))
                        : new State(Mark.PLAIN, visit.say("page-desk.not-asked-yet")));
        return new CheckInView.Line(
                player.id().code(),
                event.name(player.id()),
                state,
                here ? "no" : "yes",
                visit.say(here ? "page-desk.press-not-here" : "page-desk.press-here"));
    }
}
