package tiewright.http.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.desk.TickTold;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.OrderOfPlay;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.Mark;
import tiewright.http.pieces.Moved;
import tiewright.http.pieces.State;
import tiewright.http.views.ActionForm;
import tiewright.http.views.TellingView;
import tiewright.http.visit.AtFields;
import tiewright.http.visit.Changes;
import tiewright.http.visit.Door;
import tiewright.http.visit.Form;
import tiewright.http.visit.NotFound;
import tiewright.http.visit.NoticeViews;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.wording.Words;

/** Who must be told of a changed time, and who was: the desk ticks each club, and shouts for the others. */
final class TellingPage implements Page {
    @Override
    public void at(Routes routes) {
        routes.get(
                Door.DESK, "/desk/notice/{notice}", visit -> visit.show(screen(visit, posted(visit), Tried.NOTHING)));
        routes.post(Door.DESK, "/desk/notice/{notice}", TellingPage::tick);
    }

    private static Event.Posted posted(Visit visit) {
        return visit.event().notices().stream()
                .filter(one -> Integer.toString(one.notice().number()).equals(visit.path("notice")))
                .findFirst()
                .orElseThrow(
                        () -> new NotFound(visit.say("page-desk.there-is-no-notice", "notice", visit.path("notice"))));
    }

    private static void tick(Visit visit) {
        Event.Posted posted = posted(visit);
        Form form = visit.form();
        Optional<ClubId> club = form.must("club", form.read("club", "form.not-a-club", ClubId::of));
        boolean told = form.text("told").equals("yes");
        String here = "/desk/notice/" + posted.notice().number();
        visit.attempt(
                form,
                () -> new TickTold(posted.notice().number(), club.orElseThrow(), told),
                here,
                tried -> screen(visit, posted, tried));
    }

    private static Screen screen(Visit visit, Event.Posted posted, Tried tried) {
        VisibleEvent event = visit.event();
        int number = posted.notice().number();
        List<ClubId> clubs = List.copyOf(event.order().concerned(number));
        int told = event.order().told(number).size();
        String count = clubs.isEmpty()
                ? visit.say("page-desk.this-notice-changes-no-time")
                : visit.say("page-desk.of-told", "told", told, "clubs", clubs.size());
        return Screen.of(
                "telling",
                visit.say("page-desk.notice-who-must-be-told", "value", number),
                new TellingView(
                        tried.refusal(),
                        NoticeViews.notice(event, posted),
                        count,
                        clubs.stream().map(club -> club(event, number, club)).toList()));
    }

    private static TellingView.Club club(VisibleEvent event, int number, ClubId club) {
        boolean told = event.order().told(number).contains(club);
        ActionForm press = ActionForm.of(
                        "told-" + AtFields.safe(club.code()),
                        "/desk/notice/" + number,
                        "",
                        Button.other(
                                told
                                        ? Words.say(event, "page-desk.not-told-after-all")
                                        : Words.say(event, "page-desk.is-told", "club", event.clubName(club))))
                .sending("club", club.code())
                .sending("told", told ? "no" : "yes");
        return new TellingView.Club(
                event.clubName(club),
                told
                        ? new State(Mark.KEPT, Words.say(event, "page-desk.told"))
                        : new State(Mark.HELD, Words.say(event, "page-desk.to-be-told")),
                moved(event, number, club),
                people(event, club),
                press);
    }

    private static String people(VisibleEvent event, ClubId club) {
        return Words.say(
                event,
                "page-desk.people",
                "names",
                event.squad(club).stream()
                        .map(player -> event.name(player.id()))
                        .toList());
    }

    private static List<Moved> moved(VisibleEvent event, int number, ClubId club) {
        Changes changes = new Changes(event);
        List<Moved> moved = new ArrayList<>();
        List<OrderOfPlay.Change> all = event.order().under(number);
        List<Moved> lines = changes.of(number);
        for (int i = 0; i < all.size() && i < lines.size(); i++) {
            if (all.get(i).clubs().contains(club)) {
                moved.add(lines.get(i));
            }
        }
        return moved;
    }
}
