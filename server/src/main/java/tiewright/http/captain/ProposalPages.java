package tiewright.http.captain;

import java.util.List;
import java.util.Optional;
import tiewright.event.ExchangeId;
import tiewright.event.PlayerId;
import tiewright.event.PlayerWish;
import tiewright.event.PrivateNote.TieWish;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.SelectField;
import tiewright.http.views.ActionForm;
import tiewright.http.views.ProposalView;
import tiewright.http.visit.Door;
import tiewright.http.visit.Form;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.NotFound;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.lineup.WishForTie;
import tiewright.lineup.club.LineupInputs;
import tiewright.rating.Basis;

/** What to hand in, and who could play the decider: proposed to the own captain, decided by the captain. */
final class ProposalPages implements Page {

    @Override
    public void at(Routes routes) {
        routes.get(Door.NOTES, "/captain/proposal/{tie}", visit -> visit.show(screen(visit, Tried.NOTHING)));
        routes.post(Door.NOTES, "/captain/proposal/{tie}/wishes", ProposalPages::wish);
    }

    private static Tie ownTie(Visit visit) {
        Tie tie = visit.tie();
        if (!tie.has(visit.club())) {
            throw new NotFound(visit.say("page-captain.your-club-does-not-play", "tie", tie.id()));
        }
        return tie;
    }

    /** Keeps one wish more, or ends those of a player. */
    private static void wish(Visit visit) {
        Tie tie = ownTie(visit);
        Form form = visit.form();
        Optional<PlayerId> player = SquadPages.ownPlayer(visit, form, "player");
        Optional<PlayerWish> wish =
                switch (form.text("wish")) {
                    case "play" -> Optional.of(PlayerWish.PLAY);
                    case "rest" -> Optional.of(PlayerWish.REST);
                    default -> Optional.empty();
                };
        visit.note(
                form,
                () -> new WishForTie(tie.id(), player.orElseThrow(), wish),
                "/captain/proposal/" + tie.id(),
                tried -> screen(visit, tried));
    }

    private static Screen screen(Visit visit, Tried tried) {
        Tie tie = ownTie(visit);
        Question asked = Question.of(visit);
        LineupInputs inputs = asked.inputs(visit, tie.id());
        String title = visit.say(
                "page-captain.proposal-for-the-tie-with",
                "club",
                visit.event().clubName(visit.club()),
                "other",
                other(visit, tie));
        ProposalView.Head head = head(visit, tie, asked, inputs);
        ProposalView view = tie.isOpened()
                ? new DeciderAnswer(visit, inputs).view(tie, tried, head)
                : new ProposalAnswer(visit, tie, inputs).view(tried, head, forms(visit, tie, tried));
        return Screen.of("proposal", title, view);
    }

    private static String other(Visit visit, Tie tie) {
        Side side = tie.sideOf(visit.club()).orElseThrow();
        return new TieViews(visit.event()).side(tie, side.other());
    }

    private static ProposalView.Head head(Visit visit, Tie tie, Question asked, LineupInputs inputs) {
        ExchangeId id = tie.isOpened() ? ExchangeId.decider(tie.id()) : ExchangeId.sheets(tie.id());
        Basis basis = inputs.basis();
        boolean known = basis.cards() + basis.earlier() + basis.filmed() > 0
                || !visit.hall().ledger().privateOf(visit.club()).forms().isEmpty();
        return new ProposalView.Head(
                visit.say(
                        tie.isOpened()
                                ? decider(visit, tie)
                                : "page-captain.best-sheet-" + asked.aim().code()),
                by(visit, tie, id),
                visit.event().deadline(id),
                known
                        ? Optional.empty()
                        : Optional.of(
                                new NavLink("/captain/squad#rate", visit.say("page-captain.rate-the-squad"), false)));
    }

    /** Until the decider is asked for, the tie itself is what is asked about. */
    private static String decider(Visit visit, Tie tie) {
        boolean now = visit.event().goesOn(tie) && !visit.event().progress(tie).awaitsDecider();
        return now ? "page-captain.worth-now" : "page-captain.who-plays-the-decider";
    }

    private static String by(Visit visit, Tie tie, ExchangeId id) {
        return visit.event()
                .deadline(id)
                .map(at -> visit.say(
                        "page-captain.other-seal-by",
                        "other",
                        other(visit, tie),
                        "at",
                        HallClock.said(visit.event().clock(at))))
                .orElse(other(visit, tie));
    }

    private static List<ActionForm> forms(Visit visit, Tie tie, Tried tried) {
        List<Option> players = players(visit, tie, tried);
        return List.of(ActionForm.of(
                        "wish",
                        "/captain/proposal/" + tie.id() + "/wishes",
                        "",
                        Button.other(visit.say("page-captain.keep-this-wish")))
                .saying(visit.say("page-captain.wishes-about-pairs-stand-under"))
                .asking(
                        SelectField.of(
                                        "player",
                                        visit.say("page-captain.player"),
                                        visit.say("page-captain.choose"),
                                        players)
                                .withError(tried.error("player")),
                        SelectField.of(
                                "wish",
                                visit.say("page-captain.wish"),
                                "",
                                List.of(
                                        wish(visit, tried, "play"),
                                        wish(visit, tried, "rest"),
                                        wish(visit, tried, "none")))));
    }

    private static List<Option> players(Visit visit, Tie tie, Tried tried) {
        TieWish now = Optional.ofNullable(visit.hall()
                        .ledger()
                        .privateOf(visit.club())
                        .tieWishes()
                        .get(tie.id()))
                .orElse(new TieWish(tie.id(), visit.club(), List.of(), List.of()));
        return visit.event().squad(visit.club()).stream()
                .map(player -> Option.of(
                        player.id().code(),
                        visit.event().name(player.id()) + wished(visit, now, player.id()),
                        tried.value("player", "").equals(player.id().code())))
                .toList();
    }

    private static Option wish(Visit visit, Tried tried, String code) {
        return Option.of(
                code,
                visit.say("page-captain.wish-" + code),
                tried.value("wish", "").equals(code));
    }

    private static String wished(Visit visit, TieWish wish, PlayerId player) {
        return wish.of(player)
                .map(one -> " (" + visit.say("page-captain.wish-" + (one == PlayerWish.PLAY ? "play" : "rest")) + ")")
                .orElse("");
    }
}
