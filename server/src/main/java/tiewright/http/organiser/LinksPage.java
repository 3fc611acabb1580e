package tiewright.http.organiser;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import tiewright.event.Club;
import tiewright.event.ClubId;
import tiewright.event.Link;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;
import tiewright.event.Role;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.Option;
import tiewright.http.views.LinksView;
import tiewright.http.views.WorkView;
import tiewright.http.visit.BackLinks;
import tiewright.http.visit.Door;
import tiewright.http.visit.Fields;
import tiewright.http.visit.Form;
import tiewright.http.visit.LinkSlips;
import tiewright.http.visit.NotFound;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.setup.RevokeLink;
import tiewright.wording.Words;

/** Personal links: made, shown once, taken back, replaced in one press. */
final class LinksPage implements Page {
    private static final String HERE = "/organiser/links";
    private static final String ONE = "one";
    private static final String CAPTAINS = "captains";
    private static final String PLAYERS = "players";
    private static final String CHANGE = "change";

    @Override
    public void at(Routes routes) {
        routes.get(Door.DESK, HERE, visit -> visit.show(screen(visit, Tried.NOTHING)));
        routes.post(Door.DESK, HERE + "/" + ONE, LinksPage::makeOne);
        routes.post(Door.DESK, HERE + "/" + CAPTAINS, LinksPage::makeCaptains);
        routes.post(Door.DESK, HERE + "/" + PLAYERS, LinksPage::makePlayers);
        routes.post(Door.DESK, HERE + "/" + CHANGE, LinksPage::change);
    }

    private static void makeOne(Visit visit) {
        Form form = visit.form();
        Optional<Role> role = form.must("role", form.maybe("role").flatMap(Role::parse));
        Optional<ClubId> club = form.read("club", "form.not-a-code", ClubId::of);
        Optional<PlayerId> player = form.read("player", "form.not-a-code", PlayerId::of);
        String label = form.mustText("label");
        if (role.filter(Role::isOfAClub).isPresent()) {
            form.must("club", club);
        }
        LinkSlips slips = new LinkSlips(visit, HERE);
        role.ifPresent(one -> slips.add(
                one, one.isOfAClub() ? club : Optional.empty(), one.isOfAClub() ? player : Optional.empty(), label));
        slips.make(form, tried -> screen(visit, tried));
    }

    private static void makeCaptains(Visit visit) {
        Form form = visit.form();
        LinkSlips slips = new LinkSlips(visit, HERE);
        Optional<Club> one = form.read("club", "form.not-a-code", ClubId::of).flatMap(visit.event()::club);
        one.ifPresentOrElse(slips::addCaptains, slips::addCaptains);
        if (slips.isEmpty()) {
            form.fault(Refusal.of("form.links-are-there"));
        }
        slips.make(form, tried -> screen(visit, tried));
    }

    private static void makePlayers(Visit visit) {
        Form form = visit.form();
        Optional<ClubId> club = form.must("of-club", form.read("of-club", "form.not-a-code", ClubId::of));
        LinkSlips slips = new LinkSlips(visit, HERE);
        club.ifPresent(slips::addPlayers);
        if (club.isPresent() && slips.isEmpty()) {
            form.fault(Refusal.of("form.links-are-there").at("of-club"));
        }
        slips.make(form, tried -> screen(visit, tried));
    }

    /** The press says what: {@code revoke L3} or {@code replace L3}. */
    private static void change(Visit visit) {
        Form form = visit.form();
        String[] press = form.text("press").split(" ", 2);
        Link link = visit.event().links().stream()
                .filter(one -> press.length == 2 && one.name().equals(press[1]))
                .findFirst()
                .orElseThrow(() -> new NotFound(visit.say("page-organiser.this-link-is-not-in")));
        if (press[0].equals("replace")) {
            LinkSlips slips = new LinkSlips(visit, HERE);
            slips.addInPlaceOf(link);
            slips.make(form, tried -> screen(visit, tried));
            return;
        }
        if (visit.visitor().link().filter(own -> own.name().equals(link.name())).isPresent()) {
            form.fault(Refusal.of("form.own-link").with("link", link.name()));
        }
        visit.attempt(form, () -> new RevokeLink(link.name()), HERE, tried -> screen(visit, tried));
    }

    private static Screen screen(Visit visit, Tried tried) {
        VisibleEvent event = visit.event();
        Words words = visit.words();
        List<WorkView.Section> sections = new ArrayList<>();
        if (!event.clubs().isEmpty()) {
            sections.add(folded(players(event, Fields.of(PLAYERS, tried)), words, tried));
        }
        sections.add(folded(one(visit, Fields.of(ONE, tried)), words, tried));

        return Screen.of(
                "links",
                visit.say("page-organiser.personal-links"),
                new LinksView(
                        tried.refusal(),
                        BackLinks.home(visit),
                        intro(visit),
                        LinksThere.clubs(visit, HERE),
                        sections,
                        LinksThere.lines(visit)));
    }

    private static List<String> intro(Visit visit) {
        List<String> intro = new ArrayList<>(List.of(visit.say("page-organiser.whoever-has-a-personal-link")));
        if (visit.hall().address().isLoopback()) {
            intro.add(visit.say(
                    "page-organiser.phones-cannot-reach-it-is",
                    "url",
                    visit.hall().address().url()));
        }
        return intro;
    }

    /** Open where its form was just refused. */
    private static WorkView.Section folded(WorkView.Section section, Words words, Tried tried) {
        return tried.typed().text(Fields.FORM).equals(section.id())
                ? section
                : section.folded(words.say("page-organiser.links." + section.id()));
    }

    private static WorkView.Section players(VisibleEvent event, Fields fields) {
        return WorkView.Section.of(PLAYERS, "")
                .with(new WorkView.WorkForm(
                        PLAYERS,
                        HERE + "/" + PLAYERS,
                        List.of(fields.select(
                                "of-club",
                                Words.say(event, "page-organiser.the-players-of"),
                                Words.say(event, "page-organiser.choose-the-club"),
                                "",
                                clubs(event))),
                        List.of(Button.other(Words.say(event, "page-organiser.make-one-for-each-player")))));
    }

    private static WorkView.Section one(Visit visit, Fields fields) {
        VisibleEvent event = visit.event();
        List<Option> roles = Arrays.stream(Role.values())
                .filter(role -> role != Role.PUBLIC && LinksThere.handles(visit, role))
                .map(role -> Option.of(role.code(), LinkSlips.may(Words.of(event), role), false))
                .toList();

        return WorkView.Section.of(ONE, "")
                .with(new WorkView.WorkForm(
                        ONE,
                        HERE + "/" + ONE,
                        asked(event, fields, roles),
                        List.of(Button.other(Words.say(event, "page-organiser.make-this-link")))));
    }

    private static List<Option> players(VisibleEvent event) {
        return event.players().stream()
                .map(player -> Option.of(player.id().code(), event.name(player.id()) + " (" + player.id() + ")", false))
                .toList();
    }

    private static List<FormField> asked(VisibleEvent event, Fields fields, List<Option> roles) {
        return List.of(
                fields.select(
                        "role",
                        Words.say(event, "page-organiser.what-it-may-do"),
                        Words.say(event, "page-organiser.choose"),
                        "",
                        roles),
                fields.select(
                        "club",
                        Words.say(event, "page-organiser.of-which-club"),
                        Words.say(event, "page-organiser.no-club-desk-volunteers-organisers"),
                        "",
                        clubs(event)),
                fields.select(
                        "player",
                        Words.say(event, "page-organiser.for-which-player"),
                        Words.say(event, "page-organiser.nobody-in-particular"),
                        "",
                        players(event)),
                fields.line("label", Words.say(event, "page-organiser.label"), "")
                        .withMaxLength(60)
                        .withHint(Words.say(event, "page-organiser.such-as-desk-2-it"))
                        .mustBeFilled());
    }

    private static List<Option> clubs(VisibleEvent event) {
        return event.clubs().stream()
                .map(club -> Option.of(club.id().code(), club.name(), false))
                .toList();
    }
}
