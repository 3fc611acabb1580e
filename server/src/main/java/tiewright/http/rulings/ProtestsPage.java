package tiewright.http.rulings;

import java.util.Optional;
import tiewright.desk.DecideProtest;
import tiewright.desk.MakeProtest;
import tiewright.event.ClubId;
import tiewright.event.Role;
import tiewright.event.TieId;
import tiewright.http.visit.AtFields;
import tiewright.http.visit.Door;
import tiewright.http.visit.Form;
import tiewright.http.visit.NotFound;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;

/** Protests: handed in by a captain or the desk, with the day as it stood then, decided by who rules. */
final class ProtestsPage implements Page {
    static final String HERE = "/protests";

    @Override
    public void at(Routes routes) {
        routes.get(Door.COURT, HERE, visit -> visit.show(ProtestsScreen.of(visit, Tried.NOTHING)));
        routes.post(Door.COURT, HERE, ProtestsPage::make);
        routes.post(Door.OFFICIALS, HERE + "/{number}", ProtestsPage::decide);
    }

    private static void make(Visit visit) {
        Form form = visit.form();
        Optional<ClubId> club = visit.role() == Role.CAPTAIN
                ? visit.viewer().club()
                : form.must("club", form.read("club", "form.not-a-code", ClubId::of));
        Optional<TieId> tie = form.read("tie", "form.not-a-code", TieId::of);
        String text = form.mustText("text");
        String by = form.mustText("by");
        Optional<String> deposit = visit.role() == Role.CAPTAIN ? Optional.empty() : form.maybe("deposit");
        visit.attempt(
                form,
                () -> new MakeProtest(club.orElseThrow(), tie, text, deposit, by),
                HERE,
                tried -> ProtestsScreen.of(visit, tried));
    }

    private static void decide(Visit visit) {
        int number = number(visit);
        Form form = visit.form();
        String name = form(number);
        Optional<String> upheld = form.must(name + "-upheld", form.maybe(name + "-upheld"));
        String decision = form.mustText(name + "-decision");
        String reason = form.mustText(name + "-reason");
        String by = form.mustText(name + "-by");
        visit.attempt(
                form,
                () -> new AtFields(
                        name,
                        new DecideProtest(
                                number,
                                upheld.orElseThrow().equals("yes"),
                                form.isTicked(name + "-deposit"),
                                decision,
                                reason,
                                by)),
                HERE,
                tried -> ProtestsScreen.of(visit, tried));
    }

    private static int number(Visit visit) {
        return Optional.of(visit.path("number"))
                .filter(text -> text.matches("[1-9][0-9]{0,4}"))
                .map(Integer::parseInt)
                .filter(any -> visit.event().disputes().protest(any).isPresent())
                .orElseThrow(() ->
                        new NotFound(visit.say("page-rulings.there-is-no-protest", "path", visit.path("number"))));
    }

    static String form(int number) {
        return "decide-" + number;
    }
}
