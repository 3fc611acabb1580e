package tiewright.http.organiser;

import java.util.List;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.views.OrganiserView;
import tiewright.http.views.OrganiserView.Group;
import tiewright.http.views.OrganiserView.Line;
import tiewright.http.views.OrganiserView.Step;
import tiewright.http.visit.Addresses;
import tiewright.http.visit.Cautions;
import tiewright.http.visit.DoNextViews;
import tiewright.http.visit.Door;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Visit;

/** From nothing to a published day, step by step; what waits now; the ways out when the day breaks. */
final class OrganiserPage implements Page {
    static final String HERE = "/organiser";

    @Override
    public void at(Routes routes) {
        routes.get(
                Door.ORGANISER,
                HERE,
                visit -> visit.show(Screen.of("organiser", visit.say("page-organiser.organise"), view(visit))));
    }

    private static OrganiserView view(Visit visit) {
        VisibleEvent event = visit.event();
        SetUpSteps steps = new SetUpSteps(visit);
        List<Step> toDo = steps.toDo();
        return new OrganiserView(
                toDo.isEmpty()
                        ? visit.say("page-organiser.everything-is-set-up")
                        : visit.say("page-organiser.steps-to-go", "count", toDo.size()),
                visit.say(
                        "page-organiser.facts",
                        "clubs",
                        event.clubs().size(),
                        "players",
                        event.players().size(),
                        "courts",
                        event.courts().size()),
                toDo,
                steps.done(),
                new DoNextViews(visit).list(),
                event.ties().stream().anyMatch(Tie::isUnderWay),
                groups(visit),
                Cautions.ofTheDesk(visit.words()));
    }

    /** Help first: nothing here comes before somebody who is hurt. */
    private static List<Group> groups(Visit visit) {
        return List.of(
                wrong(visit),
                group(
                        visit,
                        "course",
                        line(visit, "sign", "/organiser/tables"),
                        line(visit, "notice", "/organiser/notices"),
                        line(visit, "fits", Addresses.BUDGET),
                        line(visit, "dry-run", "/organiser/dry-run"),
                        line(visit, "log", "/log")),
                group(
                        visit,
                        "safe",
                        line(visit, "backup", "/organiser/backup"),
                        line(visit, "keep", Addresses.KEEP),
                        line(visit, "private", PrivateDataPage.HERE)));
    }

    private static Group wrong(Visit visit) {
        return group(
                visit,
                "wrong",
                line(visit, "hurt", "/hurt"),
                line(visit, "breaks", Addresses.BREAKS),
                line(visit, "score", "/cards"),
                line(visit, "goes-home", "/organiser/withdraw"),
                line(visit, "protest", "/protests"),
                line(visit, "ruling", "/organiser/rulings"),
                line(visit, "cases", "/organiser/cases"),
                line(visit, "heat", "/desk/safety"));
    }

    private static Group group(Visit visit, String key, Line... lines) {
        return new Group(visit.say("page-organiser.group." + key), List.of(lines));
    }

    private static Line line(Visit visit, String key, String href) {
        return new Line(
                visit.say("page-organiser.go." + key),
                visit.say("page-organiser.why." + key),
                href,
                visit.say("page-organiser.open"));
    }
}
