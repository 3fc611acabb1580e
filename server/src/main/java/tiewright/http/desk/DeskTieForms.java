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

/** What an official can do for one tie, as small forms: open, give back, rule for a missing side, call, take back, change. */
final class DeskTieForms {
    private DeskTieForms() {}

    /** While both sheets are not open. */
    static List<ActionForm> ofSheets(
            Visit visit, TieViews views, Tie tie, ExchangeId id, VisibleExchange exchange, Tried tried) {
        String path = "/desk/tie/" + tie.id();
        List<ActionForm> actions = new ArrayList<>();
        if (isReady(exchange.home()) && isReady(exchange.away())) {
            actions.add(
                    ActionForm.of(
                                    "open-" + id.kind().code(),
                                    path + "/open",
                                    "Open both",
                                    Button.main("Open both sheets now"))
                            .sending("exchange", id.kind().code())
                            .saying(
                                    "From the deadline on, earlier only if both captains ask. Both open by themselves then, unless a neutral person was named to press."));
        }
        List<Option> in = sides(views, tie, side -> exchange.side(side).in());
        if (!in.isEmpty()) {
            actions.add(
                    ActionForm.of("return", path + "/return", "Give a sheet back unseen", Button.other("Give it back"))
                            .sending("exchange", id.kind().code())
                            .asking(SelectField.of("side", "Whose", "", in))
                            .asking(text("return-reason", "Why", tried)));
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
                            "A side without a sheet: forfeit it by a ruling",
                            Button.stop("Give the rubbers to the other club"))
                    .sending("exchange", id.kind().code())
                    .saying("A person decides this, not the clock. Then both sides open.")
                    .asking(SelectField.of("forfeit-side", "Whose", "", missing))
                    .asking(
                            text("forfeit-reason", "Reason in the words of the conditions", tried),
                            text("forfeit-by", "Decided by (name)", tried)));
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
                        "A side without a sheet: supply it by a ruling",
                        Button.other("Supply this sheet"))
                .sending("exchange", id.kind().code())
                .saying(
                        foreseen.isEmpty()
                                ? "The names are open to you: fill it as the conditions say, then both sides open."
                                : "Filled in as the conditions foresee; the names are open to you, and you decide. Then both sides open.")
                .asking(SelectField.of("supply-side", "Whose", "", missing));
        for (RubberNo rubber : id.rubbers(visit.event().conditions())) {
            for (String seat : List.of("first", "second")) {
                String field = SheetFields.field(rubber, seat);
                form = form.asking(SelectField.of(
                        field,
                        TieViews.rubber(rubber) + ", " + (seat.equals("first") ? "player" : "partner"),
                        "Nobody",
                        squads(visit.event(), tie, tried.value(field, foreseen.getOrDefault(field, "")))));
            }
        }
        return form.asking(
                text("supply-reason", "Reason in the words of the conditions", tried),
                text("supply-by", "Decided by (name)", tried));
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
                            "call-back", path + "/call-back", "Take a call back", Button.other("Take it back"))
                    .asking(SelectField.of(
                            "rubber", "Which", "The whole tie", rubberOptions(tie.calls(), tried.value("rubber", ""))))
                    .asking(text("call-back-reason", "Why", tried)));
        }
        SortedMap<RubberNo, Card> cards = tie.cards();
        if (!cards.isEmpty()) {
            actions.add(ActionForm.of(
                            "card-back",
                            path + "/card-back",
                            "Take a score back: the rubber was not played",
                            Button.stop("Take it back"))
                    .asking(SelectField.of(
                            "card-back-rubber",
                            "Which",
                            "Choose a rubber",
                            rubberOptions(cards, tried.value("card-back-rubber", ""))))
                    .asking(text("card-back-reason", "Why", tried)));
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
                        "Change a pair after the opening",
                        Button.other("Change the pair"))
                .saying(
                        "Only through a door that the conditions open. Everybody sees who approved it; why is for officials and the own club, others read \"unavailable\".")
                .asking(
                        SelectField.of("replace-side", "Whose", "", sides(views, tie, side -> true)),
                        SelectField.of(
                                "replace-rubber",
                                "Rubber",
                                "Choose a rubber",
                                rubberOptions(tie.opened(), tried.value("replace-rubber", ""))),
                        SelectField.of(
                                "replace-first",
                                "Player",
                                "Nobody",
                                squads(event, tie, tried.value("replace-first", ""))),
                        SelectField.of(
                                "replace-second",
                                "Partner",
                                "Nobody",
                                squads(event, tie, tried.value("replace-second", ""))),
                        SelectField.of(
                                "replace-door",
                                "Through which door",
                                "",
                                tiewright.sheet.Door.open(event.conditions()).stream()
                                        .map(door -> Option.of(
                                                door.code(),
                                                door.code(),
                                                door.code().equals(tried.value("replace-door", ""))))
                                        .toList()))
                .asking(text("replace-by", "Approved by (name)", tried));
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
