package tiewright.http.organiser;

import java.util.List;
import java.util.Optional;
import tiewright.event.Link;
import tiewright.event.Role;
import tiewright.event.SetUpFact;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.ChoiceList;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.Option;
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
import tiewright.setup.ChooseOpening;

/** Who opens the sealed sheets when an organiser also stands for a club. */
final class OpeningPage implements Page {
    private static final String HERE = "/organiser/opening";
    private static final String FORM = "opening";
    private static final String AUTOMATIC = "automatic";
    private static final String PERSON = "person";

    @Override
    public void at(Routes routes) {
        routes.get(Door.ORGANISER, HERE, visit -> visit.show(screen(visit, Tried.NOTHING)));
        routes.post(Door.ORGANISER, HERE, OpeningPage::choose);
    }

    private static void choose(Visit visit) {
        Form form = visit.form();
        String captain = form.mustText("organiserIsCaptain");
        boolean byPerson = captain.equals("yes") && form.mustText("opens").equals(PERSON);
        Optional<String> neutral = byPerson ? Optional.of(form.mustText("neutral")) : Optional.empty();
        visit.attempt(
                form,
                () -> new ChooseOpening(captain.equals("yes"), neutral),
                OrganiserPage.HERE,
                tried -> screen(visit, tried));
    }

    private static Screen screen(Visit visit, Tried tried) {
        WorkView.WorkForm form = new WorkView.WorkForm(
                FORM,
                HERE,
                asked(visit, Fields.of(FORM, tried)),
                List.of(Button.main(visit.say("page-organiser.record-this-choice"))));
        return Screen.of(
                "work",
                visit.say("page-organiser.who-opens-the-sheets"),
                new WorkView(
                        tried.refusal(),
                        BackLinks.toOrganiser(visit.words()),
                        List.of(
                                visit.say("page-organiser.no-page-shows-a-name"),
                                visit.say("page-organiser.the-choice-is-recorded-and")),
                        List.of(WorkView.Section.of(FORM, "").with(form))));
    }

    private static List<FormField> asked(Visit visit, Fields fields) {
        Optional<SetUpFact.OpeningChosen> chosen = visit.event().opening();
        Optional<String> neutral = chosen.flatMap(SetUpFact.OpeningChosen::neutral);
        return List.of(
                fields.oneOf(
                        "organiserIsCaptain",
                        visit.say("page-organiser.do-you-or-another-organiser"),
                        chosen.map(one -> one.organiserIsCaptain() ? "yes" : "no")
                                .orElse(""),
                        List.of(
                                Option.of("no", visit.say("page-organiser.no-nobody-who-organises-plays"), false),
                                Option.of("yes", visit.say("page-organiser.yes"), false))),
                opens(visit, fields, chosen),
                fields.select(
                        "neutral",
                        visit.say("page-organiser.link-of-the-neutral-person"),
                        labels(visit).isEmpty()
                                ? visit.say("page-organiser.none-yet-make-one-under")
                                : visit.say("page-organiser.nobody"),
                        neutral.orElse(""),
                        labels(visit)));
    }

    private static ChoiceList opens(Visit visit, Fields fields, Optional<SetUpFact.OpeningChosen> chosen) {
        return fields.oneOf(
                "opens",
                visit.say("page-organiser.if-yes-who-opens-the"),
                chosen.map(one -> one.neutral().isPresent() ? PERSON : AUTOMATIC)
                        .orElse(""),
                List.of(
                        new Option(
                                AUTOMATIC,
                                visit.say("page-organiser.nobody-both-sheets-open-by"),
                                visit.say("page-organiser.recommended-where-nobody-neutral-is"),
                                false,
                                false),
                        new Option(
                                PERSON,
                                visit.say("page-organiser.a-neutral-second-person"),
                                visit.say("page-organiser.from-the-deadline-on-this"),
                                false,
                                false)));
    }

    private static List<Option> labels(Visit visit) {
        return visit.event().links().stream()
                .filter(link -> !link.revoked() && (link.role() == Role.DESK || link.role() == Role.REFEREE))
                .map(Link::label)
                .distinct()
                .map(label -> Option.of(label, label, false))
                .toList();
    }
}
