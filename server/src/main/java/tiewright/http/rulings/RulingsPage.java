package tiewright.http.rulings;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import tiewright.desk.GiveRuling;
import tiewright.event.OfficialFact;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.TextField;
import tiewright.http.views.WorkView;
import tiewright.http.visit.BackLinks;
import tiewright.http.visit.Door;
import tiewright.http.visit.Fields;
import tiewright.http.visit.Form;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.wording.Words;

/** Giving a ruling, and those given so far. */
final class RulingsPage implements Page {
    private static final String HERE = "/organiser/rulings";
    private static final String FORM = "ruling";

    @Override
    public void at(Routes routes) {
        routes.get(Door.OFFICIALS, HERE, visit -> visit.show(screen(visit, Tried.NOTHING)));
        routes.post(Door.OFFICIALS, HERE, visit -> {
            Form form = visit.form();
            GiveRuling ruling = new GiveRuling(
                    form.mustText("about"), form.mustText("ruling"), form.mustText("reason"), form.mustText("by"));
            visit.attempt(form, () -> ruling, HERE, tried -> screen(visit, tried));
        });
    }

    private static Screen screen(Visit visit, Tried tried) {
        WorkView.WorkForm form = new WorkView.WorkForm(
                FORM,
                HERE,
                asked(visit, Fields.of(FORM, tried)),
                List.of(Button.main(visit.say("page-rulings.give-this-ruling"))));
        List<WorkView.Section> sections =
                new ArrayList<>(List.of(WorkView.Section.of(FORM, "").with(form)));
        sections.addAll(given(visit));
        Words words = visit.words();
        return Screen.of(
                "work",
                words.say("page-rulings.rulings"),
                new WorkView(
                        tried.refusal(),
                        BackLinks.home(visit),
                        List.of(words.say("page-rulings.officials-decide-this-page-only")),
                        sections));
    }

    private static List<WorkView.Section> given(Visit visit) {
        List<WorkView.Section> sections = new ArrayList<>();
        List<OfficialFact.RulingStated> given = new ArrayList<>(visit.event().rulings());
        Collections.reverse(given);
        Words words = visit.words();
        given.forEach(ruling -> sections.add(WorkView.Section.of(
                "ruling-" + ruling.number(),
                words.say("page-rulings.ruling", "ruling", ruling.number(), "about", words.saying(ruling.about())),
                words.saying(ruling.ruling()),
                ruling.reason(),
                words.say("page-rulings.by", "by", ruling.by()))));
        return sections;
    }

    private static List<FormField> asked(Visit visit, Fields fields) {
        return List.of(
                fields.line("about", visit.say("page-rulings.what-it-is-about"), "")
                        .withHint(visit.say("page-rulings.such-as-tie-a-1"))
                        .mustBeFilled(),
                fields.text("ruling", TextField.Kind.LONG, visit.say("page-rulings.the-ruling"), "")
                        .mustBeFilled(),
                fields.text("reason", TextField.Kind.LONG, visit.say("page-rulings.the-reason-with-the-number"), "")
                        .mustBeFilled(),
                fields.line("by", visit.say("page-rulings.who-rules-by-name"), "")
                        .withAutocomplete("name")
                        .mustBeFilled());
    }
}
