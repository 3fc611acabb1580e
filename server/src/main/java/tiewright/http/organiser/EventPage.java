package tiewright.http.organiser;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.SetUpFact;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.Option;
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
import tiewright.setup.DescribeEvent;

/** What the event is: name, day, place, hours. */
final class EventPage implements Page {
    private static final String HERE = "/organiser/event";
    private static final String FORM = "event";

    @Override
    public void at(Routes routes) {
        routes.get(Door.ORGANISER, HERE, visit -> visit.show(screen(visit, Tried.NOTHING)));
        routes.post(Door.ORGANISER, HERE, EventPage::describe);
    }

    private static void describe(Visit visit) {
        Form form = visit.form();
        String name = form.mustText("name");
        Optional<LocalDate> date = form.must("date", form.date("date"));
        String venue = form.mustText("venue");
        Optional<ZoneId> zone = form.must("zone", form.read("zone", "form.not-a-zone", ZoneId::of));
        Optional<LocalTime> starts = form.must("starts", form.time("starts"));
        Optional<LocalTime> closes = form.time("closes");
        visit.attempt(
                form,
                () -> new DescribeEvent(
                        name, date.orElseThrow(), venue, zone.orElseThrow(), starts.orElseThrow(), closes),
                OrganiserPage.HERE,
                tried -> screen(visit, tried));
    }

    private static Screen screen(Visit visit, Tried tried) {
        WorkView.Section section = WorkView.Section.of(FORM, "")
                .with(new WorkView.WorkForm(
                        FORM,
                        HERE,
                        asked(visit, Fields.of(FORM, tried)),
                        List.of(Button.main(visit.say("page-organiser.keep-this")))));
        return Screen.of(
                "work",
                visit.say("page-organiser.the-event"),
                new WorkView(
                        tried.refusal(),
                        BackLinks.toOrganiser(visit.words()),
                        List.of(visit.say("page-organiser.every-page-and-print-bears")),
                        List.of(section)));
    }

    private static List<FormField> asked(Visit visit, Fields fields) {
        Optional<SetUpFact.EventDescribed> about = visit.event().about();
        List<FormField> asked = new ArrayList<>();
        asked.addAll(named(visit, fields));
        asked.add(zones(visit, fields, about));
        asked.addAll(hours(visit, fields));
        return asked;
    }

    private static List<FormField> named(Visit visit, Fields fields) {
        Optional<SetUpFact.EventDescribed> about = visit.event().about();
        List<FormField> asked = new ArrayList<>();
        asked.add(fields.line(
                        "name",
                        visit.say("page-organiser.name-of-the-event"),
                        about.map(SetUpFact.EventDescribed::name).orElse(""))
                .mustBeFilled());
        asked.add(fields.text(
                        "date",
                        TextField.Kind.DATE,
                        visit.say("page-organiser.day"),
                        about.map(one -> one.date().toString()).orElse(""))
                .withHint(visit.say("page-organiser.year-month-day-2027-06"))
                .mustBeFilled());
        asked.add(fields.line(
                        "venue",
                        visit.say("page-organiser.place"),
                        about.map(SetUpFact.EventDescribed::venue).orElse(""))
                .mustBeFilled());
        return asked;
    }

    private static List<FormField> hours(Visit visit, Fields fields) {
        Optional<SetUpFact.EventDescribed> about = visit.event().about();
        List<FormField> asked = new ArrayList<>();
        asked.add(fields.time(
                        "starts",
                        visit.say("page-organiser.play-starts-at"),
                        about.map(SetUpFact.EventDescribed::starts))
                .mustBeFilled());
        asked.add(fields.time(
                        "closes",
                        visit.say("page-organiser.the-place-closes-at"),
                        about.flatMap(SetUpFact.EventDescribed::venueCloses))
                .withHint(visit.say("page-organiser.leave-it-empty-if-nobody")));
        return asked;
    }

    private static FormField zones(Visit visit, Fields fields, Optional<SetUpFact.EventDescribed> about) {
        String stands = about.map(one -> one.zone().getId())
                .orElse(ZoneId.systemDefault().getId());
        List<Option> all = ZoneId.getAvailableZoneIds().stream()
                .filter(id -> id.contains("/") && !id.startsWith("Etc/") && !id.startsWith("SystemV/")
                        || id.equals("UTC")
                        || id.equals(stands))
                .sorted()
                .map(id -> Option.of(id, id.replace('_', ' '), false))
                .toList();
        return fields.select("zone", visit.say("page-organiser.time-zone"), "", stands, all);
    }
}
