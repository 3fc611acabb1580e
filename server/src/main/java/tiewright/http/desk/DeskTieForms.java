package tiewright.http.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import tiewright.desk.NextCalls;
import tiewright.event.Card;
import tiewright.event.ExchangeId;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.event.VisibleExchange;
import tiewright.http.answers.Answers;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.SelectField;
import tiewright.http.pieces.TextField;
import tiewright.http.views.ActionForm;
import tiewright.http.visit.SheetFields;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.wording.Words;

/** What an official can do for one tie, as small forms: open, give back, rule for a missing side, call, take back, change. */
final class DeskTieForms {
    private DeskTieForms() {}

    /** While both sheets are not open. */
    static List<ActionForm> ofSheets(
            Visit visit, TieViews views, Tie tie, ExchangeId id, VisibleExchange exchange, Tried tried) {
        String path = "/desk/tie/" + tie.id();
        List<ActionForm> actions = new ArrayList<>();
        if (isReady(exchange.home()) && isReady(exchange.away())) {
            actions.add(ActionForm.of(
                            "open-" + id.kind().code(),
                            path + "/open",
                            visit.words().say("page-desk.open-both"),
                            Button.main(visit.words().say("page-desk.open-both-sheets-now")))
                    .sending("exchange", id.kind().code())
                    .saying(visit.words().say("page-desk.from-the-deadline-on-earlier")));
        }
        List<Option> in = sides(views, tie, side -> exchange.side(side).in());
        if (!in.isEmpty()) {
            actions.add(ActionForm.of(
                            "return",
                            path + "/return",
                            visit.words().say("page-desk.give-a-sheet-back-unseen"),
                            Button.other(visit.words().say("page-desk.give-it-back")))
                    .sending("exchange", id.kind().code())
                    .asking(SelectField.of("side", visit.words().say("page-desk.whose"), "", in))
                    .asking(text("return-reason", visit.words().say("page-desk.why"), tried)));
        }
        List<Option> missing = sides(
                views,
                tie,
                side -> !exchange.side(side).in() && exchange.side(side).ruled().isEmpty());
        if (!missing.isEmpty() && exchange.past() && isOfficialOf(visit)) {
            actions.add(supply(visit, tie, id, missing, tried));
            actions.add(ActionForm.of(
                            "forfeit",
                            path + "/forfeit",
                            visit.words().say("page-desk.a-side-without-a-sheet-2"),
                            Button.stop(visit.words().say("page-desk.give-the-rubbers-to-the")))
                    .sending("exchange", id.kind().code())
                    .saying(visit.words().say("page-desk.a-person-decides-this-not"))
                    .asking(SelectField.of("forfeit-side", visit.words().say("page-desk.whose"), "", missing))
                    .asking(
                            text("forfeit-reason", visit.words().say("page-desk.reason-in-the-words-of"), tried),
                            text("forfeit-by", visit.words().say("page-desk.decided-by-name"), tried)));
        }
        return actions;
    }

    private static boolean isReady(VisibleExchange.VisibleSide side) {
        return side.ruled().isPresent() || side.in() && side.atDesk();
    }

    private static boolean isOfficialOf(Visit visit) {
        return visit.role() == Role.ORGANISER || visit.role() == Role.REFEREE;
    }

    private static List<Option> sides(TieViews views, Tie tie, java.util.function.Predicate<Side> which) {
        return java.util.stream.Stream.of(Side.values())
                .filter(which)
                .map(side -> Option.of(side.code(), views.side(tie, side), false))
                .toList();
    }

    private static ActionForm supply(Visit visit, Tie tie, ExchangeId id, List<Option> missing, Tried tried) {
        Map<String, String> foreseen = foreseen(visit, tie, id, missing);
        ActionForm form = ActionForm.of(
                        "supply",
                        "/desk/tie/" + tie.id() + "/supply",
                        visit.words().say("page-desk.a-side-without-a-sheet"),
                        Button.other(visit.words().say("page-desk.supply-this-sheet")))
                .sending("exchange", id.kind().code())
                .saying(
                        foreseen.isEmpty()
                                ? visit.words().say("page-desk.the-names-are-open-to")
                                : visit.words().say("page-desk.filled-in-as-the-conditions"))
                .asking(SelectField.of("supply-side", visit.words().say("page-desk.whose"), "", missing));
        for (RubberNo rubber : id.rubbers(visit.event().conditions())) {
            for (String seat : List.of("first", "second")) {
                String field = SheetFields.field(rubber, seat);
                form = form.asking(SelectField.of(
                        field,
                        TieViews.rubber(rubber) + ", " + (seat.equals("first") ? "player" : "partner"),
                        visit.words().say("page-desk.nobody"),
                        squads(visit.event(), tie, tried.value(field, foreseen.getOrDefault(field, "")))));
            }
        }
        return form.asking(
                text("supply-reason", visit.words().say("page-desk.reason-in-the-words-of"), tried),
                text("supply-by", visit.words().say("page-desk.decided-by-name"), tried));
    }

    /** By field, the players of the sheet that the conditions foresee, where one side alone is missing. */
    private static Map<String, String> foreseen(Visit visit, Tie tie, ExchangeId id, List<Option> missing) {
        Map<String, String> players = new HashMap<>();
        if (missing.size() == 1) {
            tie.club(Side.of(missing.get(0).value()))
                    .flatMap(club -> visit.ask(Answers::new).foreseen(id, club))
                    .ifPresent(sheet -> sheet.pairs()
                            .forEach((rubber, pair) -> pair.ifPresent(two -> {
                                players.put(
                                        SheetFields.field(rubber, "first"),
                                        two.first().code());
                                players.put(
                                        SheetFields.field(rubber, "second"),
                                        two.second().code());
                            })));
        }
        return players;
    }

    /** The players of both clubs, each with its club. */
    private static List<Option> squads(VisibleEvent event, Tie tie, String chosen) {
        return java.util.stream.Stream.of(Side.values())
                .flatMap(side -> tie.club(side).stream())
                .flatMap(club -> event.squad(club).stream())
                .map(player -> Option.of(
                        player.id().code(),
                        event.name(player.id()) + ", " + event.clubName(player.club()),
                        player.id().code().equals(chosen)))
                .toList();
    }

    /** From the opening on. */
    static List<ActionForm> ofPlay(Visit visit, TieViews views, Tie tie, Tried tried) {
        VisibleEvent event = visit.event();
        String path = "/desk/tie/" + tie.id();
        List<ActionForm> actions = new ArrayList<>();
        if (tie.isOpened() && !event.progress(tie).finished()) {
            List<NextCalls.Next> next = visit.ask(Answers::new).nextCalls().getOrDefault(tie.id(), List.of());
            event.progress(tie).left().stream()
                    .filter(tie.opened()::containsKey)
                    .map(rubber -> next.stream()
                            .filter(one -> one.rubber().equals(rubber))
                            .findFirst()
                            .orElse(new NextCalls.Next(rubber, Optional.empty())))
                    .forEach(one -> actions.add(DeskPages.call(event, tie, one)));
        }
        StopPages.stoppable(event, tie).forEach(rubber -> actions.add(StopPages.press(tie, rubber)));
        if (!tie.calls().isEmpty()) {
            actions.add(ActionForm.of(
                            "call-back",
                            path + "/call-back",
                            visit.words().say("page-desk.take-a-call-back"),
                            Button.other(visit.words().say("page-desk.take-it-back")))
                    .asking(SelectField.of(
                            "rubber",
                            visit.words().say("page-desk.which"),
                            visit.words().say("page-desk.the-whole-tie"),
                            rubberOptions(tie.calls(), tried.value("rubber", ""))))
                    .asking(text("call-back-reason", visit.words().say("page-desk.why"), tried)));
        }
        SortedMap<RubberNo, Card> cards = tie.cards();
        if (!cards.isEmpty()) {
            actions.add(ActionForm.of(
                            "card-back",
                            path + "/card-back",
                            visit.words().say("page-desk.take-a-score-back-the"),
                            Button.stop(visit.words().say("page-desk.take-it-back")))
                    .asking(SelectField.of(
                            "card-back-rubber",
                            visit.words().say("page-desk.which"),
                            visit.words().say("page-desk.choose-a-rubber"),
                            rubberOptions(cards, tried.value("card-back-rubber", ""))))
                    .asking(text("card-back-reason", visit.words().say("page-desk.why"), tried)));
        }
        if (tie.isOpened() && !event.progress(tie).finished()) {
            actions.add(replace(event, views, tie, tried));
        }
        return actions;
    }

    private static ActionForm replace(VisibleEvent event, TieViews views, Tie tie, Tried tried) {
        return ActionForm.of(
                        "replace",
                        "/desk/tie/" + tie.id() + "/replace",
                        Words.of(event).say("page-desk.change-a-pair-after-the"),
                        Button.other(Words.of(event).say("page-desk.change-the-pair")))
                .saying(Words.of(event).say("page-desk.only-through-a-door-that"))
                .asking(
                        SelectField.of(
                                "replace-side",
                                Words.of(event).say("page-desk.whose"),
                                "",
                                sides(views, tie, side -> true)),
                        SelectField.of(
                                "replace-rubber",
                                Words.of(event).say("page-desk.rubber"),
                                Words.of(event).say("page-desk.choose-a-rubber"),
                                rubberOptions(tie.opened(), tried.value("replace-rubber", ""))),
                        SelectField.of(
                                "replace-first",
                                Words.of(event).say("page-desk.player"),
                                Words.of(event).say("page-desk.nobody"),
                                squads(event, tie, tried.value("replace-first", ""))),
                        SelectField.of(
                                "replace-second",
                                Words.of(event).say("page-desk.partner"),
                                Words.of(event).say("page-desk.nobody"),
                                squads(event, tie, tried.value("replace-second", ""))),
                        SelectField.of(
                                "replace-door",
                                Words.of(event).say("page-desk.through-which-door"),
                                "",
                                tiewright.sheet.Door.open(event.conditions()).stream()
                                        .map(door -> Option.of(
                                                door.code(),
                                                door.code(),
                                                door.code().equals(tried.value("replace-door", ""))))
                                        .toList()))
                .asking(text("replace-by", Words.of(event).say("page-desk.approved-by-name"), tried));
    }

    private static List<Option> rubberOptions(SortedMap<RubberNo, ?> of, String chosen) {
        return of.keySet().stream()
                .map(no -> Option.of(
                        no.toString(), TieViews.rubber(no), no.toString().equals(chosen)))
                .toList();
    }

    private static TextField text(String id, String label, Tried tried) {
        return TextField.of(id, TextField.Kind.LINE, label, tried.value(id, ""))
                .withError(tried.error(id))
                .withMaxLength(300);
    }
}
