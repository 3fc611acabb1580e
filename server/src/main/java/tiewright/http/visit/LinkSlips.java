package tiewright.http.visit;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import tiewright.event.Club;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Link;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.Role;
import tiewright.event.SetUpFact;
import tiewright.event.Together;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.EmptyPlace;
import tiewright.http.pieces.NavLink;
import tiewright.http.views.LinksMadeView;
import tiewright.paper.QrCode;
import tiewright.setup.IssueLink;
import tiewright.setup.ReplaceLink;
import tiewright.wording.Words;

/** New links with their secrets, for as long as one answer lasts. */
public final class LinkSlips {
    private final Visit visit;
    private final String back;
    private final List<Decision> decisions = new ArrayList<>();
    private final List<LinksMadeView.Slip> slips = new ArrayList<>();
    private final Map<ClubId, List<LinksMadeView.Slip>> ofClubs = new HashMap<>();
    private Optional<String> ownAnew = Optional.empty();

    /** @param back where one goes from the slips */
    public LinkSlips(Visit visit, String back) {
        this.visit = visit;
        this.back = back;
    }

    /** @param label code words only: it stays in the record for ever, so no name of a person belongs in it */
    public void add(Role role, Optional<ClubId> club, Optional<PlayerId> player, String label) {
        decisions.add(new IssueLink(role, club, player, label, slip(role, club, player, label)));
    }

    /** A new link in place of this one, for the same person. */
    public void addInPlaceOf(Link link) {
        decisions.add(new ReplaceLink(link.name(), slip(link.role(), link.club(), link.player(), link.label())));
        if (visit.viewer().link().filter(link.name()::equals).isPresent()) {
            ownAnew = Optional.of(slips.get(slips.size() - 1).address());
        }
    }

    /** Writes the slip, and gives the hash under which the new link is kept. */
    private String slip(Role role, Optional<ClubId> club, Optional<PlayerId> player, String label) {
        String secret = visit.hall().tokens().linkSecret();
        String address = visit.hall().address().url() + "/enter/" + secret;
        QrCode code = QrCode.of(address);
        LinksMadeView.Slip made = new LinksMadeView.Slip(
                whom(visit.event(), club, player, label),
                may(visit.words(), role),
                address,
                mail(visit.words(), address),
                code.size(),
                code.path(),
                role == Role.CAPTAIN ? visit.hall().trust().letterbox().fingerprint() : "");
        slips.add(made);
        club.ifPresent(
                of -> ofClubs.computeIfAbsent(of, any -> new ArrayList<>()).add(made));
        return Tokens.hash(secret);
    }

    /** A mail to whomever the sender then chooses (RFC 6068). */
    private String mail(Words words, String address) {
        String event = visit.event().about().map(SetUpFact.EventDescribed::name).orElse("");
        return "mailto:?subject=" + inMail(words.say("page-visit.mail-subject", "event", event)) + "&body="
                + inMail(words.say("page-visit.mail-body", "address", address));
    }

    private static String inMail(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }

    /** The organiser makes captains' links, or the neutral person in place of one who also captains. */
    public static boolean mayMakeCaptains(Visit visit) {
        return visit.role() == Role.ORGANISER || Door.DESK.opensFor(visit.role()) && visit.isNeutral();
    }

    public void addCaptains() {
        visit.event().clubs().forEach(this::addCaptains);
    }

    /** Of one club: its captain and its deputies, as far as they have none. */
    public void addCaptains(Club club) {
        if (!has(Role.CAPTAIN, club.id(), Optional.empty())) {
            add(
                    Role.CAPTAIN,
                    Optional.of(club.id()),
                    Optional.empty(),
                    visit.say("page-visit.label-captain", "club", club.id().code()));
        }
        for (Player player : visit.event().squad(club.id())) {
            if (player.deputy() && !has(Role.CAPTAIN, club.id(), Optional.of(player.id()))) {
                add(
                        Role.CAPTAIN,
                        Optional.of(club.id()),
                        Optional.of(player.id()),
                        visit.say(
                                "page-visit.label-deputy", "player", player.id().code()));
            }
        }
    }

    /** Whether the club's captain or a deputy has no link yet. */
    public boolean lacksOne(Club club) {
        return !hasCaptains(club)
                || visit.event().squad(club.id()).stream()
                        .anyMatch(player -> player.deputy() && !has(Role.CAPTAIN, club.id(), Optional.of(player.id())));
    }

    /** Whether the club has the link of its captain, whatever its deputies have. */
    public boolean hasCaptains(Club club) {
        return has(Role.CAPTAIN, club.id(), Optional.empty());
    }

    public void addPlayers(ClubId club) {
        for (Player player : visit.event().squad(club)) {
            if (!has(Role.PLAYER, club, Optional.of(player.id()))) {
                add(
                        Role.PLAYER,
                        Optional.of(club),
                        Optional.of(player.id()),
                        player.id().code());
            }
        }
    }

    private boolean has(Role role, ClubId club, Optional<PlayerId> player) {
        return visit.event().links().stream()
                .anyMatch((Link link) -> !link.revoked()
                        && link.role() == role
                        && link.club().equals(Optional.of(club))
                        && link.player().equals(player));
    }

    public static String whom(VisibleEvent event, Optional<ClubId> club, Optional<PlayerId> player, String label) {
        String name = player.map(event::name).orElse("");
        String of = club.map(event::clubName).orElse("");
        String person = name.isEmpty() ? of : name + ", " + of;
        return person.isEmpty() ? label : person + " (" + label + ")";
    }

    /** What a link of this role opens. */
    public static String may(Words words, Role role) {
        return words.say("page-visit.may." + role.code());
    }

    public boolean isEmpty() {
        return decisions.isEmpty();
    }

    /**
     * Asks for the links, all or none. The secrets are in the answer to the first press only: the same press sent again cannot show
     * them. Whoever replaced the link by which this was asked is a stranger from here on, and goes on by the new one.
     *
     * @param again the page with the form, where links were refused
     */
    public void make(Form form, Function<Tried, Screen> again) {
        Visit next = ownAnew.isPresent() ? visit.asStranger() : visit;
        visit.attempt(
                form, () -> new Together(decisions), done -> next.show(done.again() ? shownAlready() : made()), again);
    }

    /** The same among papers of each club: they get the slips of the links that were made for it. */
    public void make(
            Form form, Function<Map<ClubId, List<LinksMadeView.Slip>>, Screen> among, Function<Tried, Screen> again) {
        visit.attempt(
                form,
                () -> new Together(decisions),
                done -> visit.show(done.again() ? shownAlready() : among.apply(ofClubs)),
                again);
    }

    private Screen made() {
        return Screen.of(
                "links-made",
                visit.say("page-visit.new-personal-links"),
                new LinksMadeView(slips, onwards(), ownAnew.isPresent()));
    }

    private Screen shownAlready() {
        Words words = visit.words();
        return Screen.of(
                "failure",
                words.say("page-visit.links-shown-once"),
                new EmptyPlace(
                        words.say("page-visit.nobody-can-show-them-again"),
                        words.say("page-visit.replace-a-lost-one"),
                        back,
                        words.say("page-visit.to-the-list-of-links")));
    }

    private NavLink onwards() {
        return ownAnew.map(address -> new NavLink(address, visit.say("page-visit.go-on-by-the-new-link"), false))
                .orElseGet(() -> new NavLink(back, visit.say("page-visit.to-the-list-of-links"), false));
    }
}
