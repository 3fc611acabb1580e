package tiewright.http.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tiewright.event.ExchangeId;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.VisibleExchange;
import tiewright.http.answers.Answers;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.SelectField;
import tiewright.http.views.ActionForm;
import tiewright.http.visit.Door;
import tiewright.http.visit.SheetFields;
import tiewright.http.visit.TieViews;

/** What an official can do while the sheets of a tie are not both open: open, give back, rule for a missing side. */
final class SheetForms {
    private final TieOptions from;
    private final ExchangeId id;
    private final VisibleExchange exchange;

    SheetForms(TieOptions from, ExchangeId id) {
        this.from = from;
        this.id = id;
        this.exchange = from.event.exchange(id);
    }

    List<ActionForm> forms() {
        List<ActionForm> actions = new ArrayList<>();
        if (isReady(exchange.home()) && isReady(exchange.away())) {
            actions.add(open());
        }
        List<Option> in = from.sides(side -> exchange.side(side).in());
        if (!in.isEmpty()) {
            actions.add(giveBack(in));
        }
        List<Option> missing = from.sides(
                side -> !exchange.side(side).in() && exchange.side(side).ruled().isEmpty());
        if (!missing.isEmpty() && exchange.past() && Door.OFFICIALS.opensFor(from.visit.role())) {
            actions.add(supply(missing));
            actions.add(forfeit(missing));
        }
        return actions;
    }

    private static boolean isReady(VisibleExchange.VisibleSide side) {
        return side.ruled().isPresent() || side.in() && side.atDesk();
    }

    private ActionForm open() {
        return ActionForm.of(
                        "open-" + id.kind().code(),
                        from.path("/open"),
                        from.say("page-desk.open-both"),
                        Button.main(from.say("page-desk.open-both-sheets-now")))
                .sending("exchange", id.kind().code())
                .saying(from.say("page-desk.from-the-deadline-on-earlier"));
    }

    private ActionForm giveBack(List<Option> in) {
        return ActionForm.of(
                        "return",
                        from.path("/return"),
                        from.say("page-desk.give-a-sheet-back-unseen"),
                        Button.other(from.say("page-desk.give-it-back")))
                .sending("exchange", id.kind().code())
                .asking(SelectField.of("side", from.say("page-desk.whose"), "", in))
                .asking(from.text("return-reason", from.say("page-desk.why")));
    }

    private ActionForm forfeit(List<Option> missing) {
        return ActionForm.of(
                        "forfeit",
                        from.path("/forfeit"),
                        from.say("page-desk.a-side-without-a-sheet-2"),
                        Button.stop(from.say("page-desk.give-the-rubbers-to-the")))
                .sending("exchange", id.kind().code())
                .saying(from.say("page-desk.a-person-decides-this-not"))
                .asking(SelectField.of("forfeit-side", from.say("page-desk.whose"), "", missing))
                .asking(
                        from.text("forfeit-reason", from.say("page-desk.reason-in-the-words-of")),
                        from.text("forfeit-by", from.say("page-desk.decided-by-name")));
    }

    private ActionForm supply(List<Option> missing) {
        Map<String, String> foreseen = foreseen(missing);
        ActionForm form = ActionForm.of(
                        "supply",
                        from.path("/supply"),
                        from.say("page-desk.a-side-without-a-sheet"),
                        Button.other(from.say("page-desk.supply-this-sheet")))
                .sending("exchange", id.kind().code())
                .saying(from.say(
                        foreseen.isEmpty()
                                ? "page-desk.the-names-are-open-to"
                                : "page-desk.filled-in-as-the-conditions"))
                .asking(SelectField.of("supply-side", from.say("page-desk.whose"), "", missing));
        for (RubberNo rubber : id.rubbers(from.event.conditions())) {
            for (String seat : List.of("first", "second")) {
                String field = SheetFields.field(rubber, seat);
                form = form.asking(SelectField.of(
                        field,
                        from.say(
                                seat.equals("first") ? "page-desk.rubber-player" : "page-desk.rubber-partner",
                                "rubber",
                                TieViews.rubber(rubber)),
                        from.say("page-desk.nobody"),
                        from.squads(from.tried.value(field, foreseen.getOrDefault(field, "")))));
            }
        }
        return form.asking(
                from.text("supply-reason", from.say("page-desk.reason-in-the-words-of")),
                from.text("supply-by", from.say("page-desk.decided-by-name")));
    }

    /** By field, the players of the sheet that the conditions foresee, where one side alone is missing. */
    private Map<String, String> foreseen(List<Option> missing) {
        Map<String, String> players = new HashMap<>();
        if (missing.size() == 1) {
            from.tie
                    .club(Side.of(missing.get(0).value()))
                    .flatMap(club -> from.visit.ask(Answers::new).foreseen(id, club))
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
}
