package tiewright.http.organiser;

import java.util.List;
import java.util.Map;
import tiewright.event.Club;
import tiewright.event.ClubId;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.NavLink;
import tiewright.http.views.LinksMadeView;
import tiewright.http.views.WorkView;
import tiewright.http.visit.Addresses;
import tiewright.http.visit.Door;
import tiewright.http.visit.EnvelopePapers;
import tiewright.http.visit.Form;
import tiewright.http.visit.LinkSlips;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;

/** An envelope for each club by one press: its papers, and beside them the links that its captain and deputies do not have yet. */
final class EnvelopesPage implements Page {
    private static final String FORM = "envelopes";

    @Override
    public void at(Routes routes) {
        routes.get(Door.DESK, Addresses.ENVELOPES, visit -> visit.show(screen(visit, Tried.NOTHING)));
        routes.post(Door.DESK, Addresses.ENVELOPES, EnvelopesPage::make);
    }

    private static void make(Visit visit) {
        Form form = visit.form();
        LinkSlips slips = new LinkSlips(visit, Addresses.ENVELOPES);
        slips.addCaptains();
        if (slips.isEmpty()) {
            visit.show(envelopes(visit, Map.of()));
            return;
        }
        slips.make(form, made -> envelopes(visit, made), tried -> screen(visit, tried));
    }

    private static Screen envelopes(Visit visit, Map<ClubId, List<LinksMadeView.Slip>> made) {
        return Screen.of("pack", visit.say("page-organiser.envelopes"), new EnvelopePapers(visit).all(made));
    }

    private static Screen screen(Visit visit, Tried tried) {
        WorkView.Section section = section(visit);
        return Screen.of(
                "work",
                visit.say("page-organiser.envelopes"),
                new WorkView(
                        tried.refusal(),
                        new NavLink("/paper", visit.say("page-organiser.back-to-print"), false),
                        List.of(),
                        List.of(LinkSlips.mayMakeCaptains(visit) ? section.with(press(visit)) : section)));
    }

    private static WorkView.Section section(Visit visit) {
        List<String> lacking = visit.event().clubs().stream()
                .filter(club -> new LinkSlips(visit, Addresses.ENVELOPES).lacksOne(club))
                .map(Club::name)
                .toList();
        return WorkView.Section.of(
                        FORM,
                        "",
                        visit.say("page-organiser.envelopes-hold"),
                        visit.say("page-organiser.envelopes-links", "count", lacking.size(), "clubs", lacking))
                .with(new NavLink("/paper/envelopes", visit.say("page-organiser.envelopes-without-links"), false));
    }

    private static WorkView.WorkForm press(Visit visit) {
        return new WorkView.WorkForm(
                FORM, Addresses.ENVELOPES, List.of(), List.of(Button.main(visit.say("page-organiser.make-envelopes"))));
    }
}
