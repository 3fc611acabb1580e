package tiewright.http.organiser;

import java.util.List;
import tiewright.event.SetUpFact;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.FormField;
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
import tiewright.setup.DescribeSafety;

/** Where help is at the place: read wherever somebody stops a court. */
final class SafetyInfoPage implements Page {
    private static final String HERE = "/organiser/help";
    private static final String FORM = "help";

    @Override
    public void at(Routes routes) {
        routes.get(Door.ORGANISER, HERE, visit -> visit.show(screen(visit, Tried.NOTHING)));
        routes.post(Door.ORGANISER, HERE, visit -> {
            Form form = visit.form();
            visit.attempt(
                    form,
                    () -> new DescribeSafety(form.text("firstAid"), form.text("defibrillator"), form.text("emergency")),
                    OrganiserPage.HERE,
                    tried -> screen(visit, tried));
        });
    }

    private static Screen screen(Visit visit, Tried tried) {
        return Screen.of(
                "work",
                visit.say("page-organiser.where-help-is"),
                new WorkView(
                        tried.refusal(),
                        BackLinks.toOrganiser(visit.words()),
                        List.of(visit.say("page-organiser.shown-to-the-desk-and")),
                        List.of(WorkView.Section.of(FORM, "")
                                .with(new WorkView.WorkForm(
                                        FORM,
                                        HERE,
                                        asked(visit, Fields.of(FORM, tried)),
                                        List.of(Button.main(visit.say("page-organiser.keep-this"))))))));
    }

    private static List<FormField> asked(Visit visit, Fields fields) {
        SetUpFact.SafetyDescribed stands = visit.event().safety();
        return List.of(
                fields.line("firstAid", visit.say("page-organiser.first-aid-where-and-who"), stands.firstAid())
                        .withMaxLength(200),
                fields.line("defibrillator", visit.say("page-organiser.defibrillator-where"), stands.defibrillator())
                        .withMaxLength(200),
                fields.line("emergency", visit.say("page-organiser.emergency-number-here"), stands.emergency())
                        .withMaxLength(60));
    }

    /** What was entered, in a line; empty while first aid or the number to call is missing. */
    static String stands(Visit visit) {
        SetUpFact.SafetyDescribed help = visit.event().safety();
        if (help.firstAid().isEmpty() || help.emergency().isEmpty()) {
            return "";
        }
        return visit.say(
                "page-organiser.is.help",
                "firstAid",
                help.firstAid(),
                "defibrillator",
                help.defibrillator().isEmpty() ? visit.say("page-organiser.not-entered") : help.defibrillator(),
                "emergency",
                help.emergency());
    }
}
