package tiewright.http.organiser;

import java.util.List;
import java.util.Optional;
import tiewright.event.Link;
import tiewright.event.Role;
import tiewright.event.SetUpFact;
import tiewright.http.pieces.Button;
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
        Optional<SetUpFact.OpeningChosen> chosen = visit.event().opening();
        Fields fields = Fields.of(FORM, tried);
        Optional<String> neutral = chosen.flatMap(SetUpFact.OpeningChosen::neutral);
        WorkView.WorkForm form = new WorkView.WorkForm(
                FORM,
                HERE,
                List.of(
                        fields.oneOf(
                                "organiserIsCaptain",
                                "Do you, or another organiser, also captain or play for a club here?",
                                chosen.map(one -> one.organiserIsCaptain() ? "yes" : "no")
                                        .orElse(""),
                                List.of(
                                        Option.of("no", "No, nobody who organises plays", false),
                                        Option.of("yes", "Yes", false))),
                        fields.oneOf(
                                "opens",
                                "If yes: who opens the sheets?",
                                chosen.map(one -> neutral.isPresent() ? PERSON : AUTOMATIC)
                                        .orElse(""),
                                List.of(
                                        new Option(
                                                AUTOMATIC,
                                                "Nobody: both sheets open by themselves at the deadline",
                                                "Recommended where nobody neutral is at hand.",
                                                false,
                                                false),
                                        new Option(
                                                PERSON,
                                                "A neutral second person",
                                                "From the deadline on this person presses the button, nobody else can, and nothing opens by itself.",
                                                false,
                                                false))),
                        fields.select(
                                "neutral",
                                "Link of the neutral person (desk or referee)",
                                labels(visit).isEmpty() ? "None yet: make one under Personal links" : "Nobody",
                                neutral.orElse(""),
                                labels(visit))),
                List.of(Button.main("Record this choice")));
        return Screen.of(
                "work",
                "Who opens the sheets",
                new WorkView(
                        tried.refusal(),
                        BackLinks.TO_ORGANISER,
                        List.of(
                                "No page shows a name on a sealed sheet to anybody but its own club, the desk and the organiser included. Whoever rules over"
                                        + " the machine itself could still copy its files; if that worries a captain, paper in closed envelopes is the answer.",
                                "The choice is recorded and everybody can read it on the conditions of play."),
                        List.of(WorkView.Section.of(FORM, "").with(form))));
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
