package tiewright.http.captain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.ClubLinks;
import tiewright.event.Decision;
import tiewright.event.Link;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;
import tiewright.event.Role;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.Option;
import tiewright.http.views.OwnLinksView;
import tiewright.http.views.WorkView;
import tiewright.http.visit.Door;
import tiewright.http.visit.Fields;
import tiewright.http.visit.Form;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.LinkSlips;
import tiewright.http.visit.NotFound;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.setup.LetLinkIn;
import tiewright.setup.RevokeLink;

/** The links of the own club: when and by whom each was made or ended, and the ways to let one in, end one, make one. */
final class OwnLinksPage implements Page {
    private static final String HERE = "/captain/links";
    private static final String CHANGE = "change";
    private static final String MAKE = "make";

    @Override
    public void at(Routes routes) {
        routes.get(Door.CAPTAIN, HERE, visit -> visit.show(screen(visit, Tried.NOTHING)));
        routes.post(Door.CAPTAIN, HERE + "/" + CHANGE, OwnLinksPage::change);
        routes.post(Door.CAPTAIN, HERE + "/" + MAKE, OwnLinksPage::make);
    }

    /** The press says what: {@code let-in L3}, {@code end L3} or {@code replace L3}. */
    private static void change(Visit visit) {
        Form form = visit.form();
        String[] press = form.text("press").split(" ", 2);
        Link link = visit.event().links().stream()
                .filter(one -> press.length == 2 && one.name().equals(press[1]))
                .findFirst()
                .orElseThrow(() -> new NotFound(visit.say("page-captain.no-such-link-of-yours")));
        switch (press[0]) {
            case "let-in" -> attempt(visit, form, new LetLinkIn(link.name()));
            case "replace" -> {
                LinkSlips slips = new LinkSlips(visit, HERE);
                slips.addInPlaceOf(link);
                slips.make(form, tried -> screen(visit, tried));
            }
            default -> {
                if (OwnLinkLines.isOwn(visit, link)) {
                    form.fault(Refusal.of("form.own-link").with("link", link.name()));
                }
                attempt(visit, form, new RevokeLink(link.name()));
            }
        }
    }

    private static void attempt(Visit visit, Form form, Decision decision) {
        visit.attempt(form, () -> decision, HERE, tried -> screen(visit, tried));
    }

    private static void make(Visit visit) {
        Form form = visit.form();
        Optional<Role> role = form.must("role", form.maybe("role").flatMap(Role::parse));
        Optional<PlayerId> player = form.read("player", "form.not-a-code", PlayerId::of);
        String label = form.mustText("label");
        LinkSlips slips = new LinkSlips(visit, HERE);
        role.ifPresent(one -> slips.add(one, Optional.of(visit.club()), player, label));
        slips.make(form, tried -> screen(visit, tried));
    }

    private static Screen screen(Visit visit, Tried tried) {
        boolean letIn = visit.event().isLetIn();
        List<String> intro = new ArrayList<>(
                List.of(visit.say("page-captain.what-links-show"), visit.say("page-captain.who-made-them-knows")));
        if (!letIn) {
            intro.add(0, waits(visit));
        }
        List<Link> links = visit.event().links();
        return Screen.of(
                "ownLinks",
                visit.say("page-captain.links-of-club", "club", visit.event().clubName(visit.club())),
                new OwnLinksView(
                        tried.refusal(),
                        new NavLink("/captain", visit.say("page-captain.back-to-my-ties"), false),
                        intro,
                        links.stream()
                                .filter(link -> !link.revoked())
                                .map(link -> OwnLinkLines.of(visit, link, letIn ? buttons(visit, link) : List.of()))
                                .toList(),
                        links.stream()
                                .filter(Link::revoked)
                                .map(link -> OwnLinkLines.of(visit, link, List.of()))
                                .toList(),
                        letIn ? List.of(making(visit, Fields.of(MAKE, tried))) : List.of()));
    }

    /** When a link that nobody lets in will open all the same. */
    private static String waits(Visit visit) {
        ClubLinks links = visit.event().linksOf(visit.club());
        return visit.visitor()
                .link()
                .flatMap(links::letInBy)
                .map(at -> visit.say(
                        "page-captain.nobody-older-is-left",
                        "at",
                        HallClock.said(visit.event().clock(at))))
                .orElseGet(() -> visit.say("page-captain.an-older-link-lets-in"));
    }

    private static List<Button> buttons(Visit visit, Link link) {
        List<Button> buttons = new ArrayList<>();
        if (link.role() == Role.CAPTAIN && link.life().letIn().isEmpty()) {
            buttons.add(press(Button.main(visit.say("page-captain.let-in", "link", link.name())), "let-in", link));
        }
        if (!OwnLinkLines.isOwn(visit, link)) {
            buttons.add(press(Button.stop(visit.say("page-captain.end", "link", link.name())), "end", link));
        }
        if (link.role() == Role.CAPTAIN) {
            buttons.add(press(Button.other(visit.say("page-captain.replace", "link", link.name())), "replace", link));
        }
        return buttons;
    }

    private static Button press(Button button, String what, Link link) {
        return button.sending("press", what + " " + link.name());
    }

    private static WorkView.Section making(Visit visit, Fields fields) {
        return WorkView.Section.of(
                        MAKE, visit.say("page-captain.make-a-link"), visit.say("page-captain.nobody-else-sees-it"))
                .with(new WorkView.WorkForm(
                        MAKE,
                        HERE + "/" + MAKE,
                        asked(visit, fields),
                        List.of(Button.other(visit.say("page-captain.make-this-link")))));
    }

    private static List<FormField> asked(Visit visit, Fields fields) {
        List<Option> roles = List.of(Role.CAPTAIN, Role.PLAYER).stream()
                .map(role -> Option.of(role.code(), LinkSlips.may(visit.words(), role), false))
                .toList();
        List<Option> players = visit.event().squad(visit.club()).stream()
                .map(player -> Option.of(player.id().code(), visit.event().name(player.id()), false))
                .toList();
        return List.of(
                fields.select(
                        "role", visit.say("page-captain.what-it-may-do"), visit.say("page-captain.choose"), "", roles),
                fields.select(
                        "player",
                        visit.say("page-captain.for-which-player"),
                        visit.say("page-captain.nobody-in-particular"),
                        "",
                        players),
                fields.line("label", visit.say("page-captain.label"), "")
                        .withMaxLength(60)
                        .withHint(visit.say("page-captain.label-hint"))
                        .mustBeFilled());
    }
}
