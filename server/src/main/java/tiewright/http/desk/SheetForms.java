package tiewright.http.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
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
import tiewright.http.visit.Form;
import tiewright.http.visit.SheetFields;
import tiewright.http.visit.TieViews;

/** What an official can do while the sheets of a tie are not both open: open, give back, rule for a missing side. */
final class SheetForms {
    private static final String REASON = "supply-reason";
    private static final String BY = "supply-by";
    private static final List<String> SEATS = List.of("first", "second");

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
            missing.stream()
                    .map(one -> supply(Side.of(one.value()), missing.size() == 1))
                    .forEach(actions::add);
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

    /** What was typed for one of two missing sides, under the names of a sheet's fields. */
    static Form ofOneSide(Form form, List<RubberNo> rubbers) {
        List<String> fields = new ArrayList<>(List.of(REASON, BY));
        rubbers.forEach(rubber -> SEATS.forEach(seat -> fields.add(SheetFields.field(rubber, seat))));
        Map<String, String> plain = new HashMap<>();
        fields.forEach(field ->
                form.maybe(field(form.text("supply-side"), field)).ifPresent(typed -> plain.put(field, typed)));
        return form.with(plain);
    }

    /** No two forms of the page have a field of the same name. */
    private static String field(String side, String field) {
        return side + "-" + field;
    }

    /** The names are those of the missing club alone. */
    private ActionForm supply(Side side, boolean alone) {
        Map<String, String> foreseen = foreseen(side);
        UnaryOperator<String> named = field -> alone ? field : field(side.code(), field);
        return ActionForm.of(
                        "supply-" + side.code(),
                        from.path("/supply"),
                        from.say("page-desk.a-side-without-a-sheet", "club", from.views.side(from.tie, side)),
                        Button.other(from.say("page-desk.supply-this-sheet")))
                .sending("exchange", id.kind().code())
                .sending("supply-side", side.code())
                .saying(from.say(
                        foreseen.isEmpty()
                                ? "page-desk.the-names-are-open-to"
                                : "page-desk.filled-in-as-the-conditions"))
                .asking(id.rubbers(from.event.conditions()).stream()
                        .flatMap(rubber ->
                                SEATS.stream().map(seat -> seat(new Seat(side, rubber, seat), named, foreseen)))
                        .toArray(SelectField[]::new))
                .asking(
                        from.text(named.apply(REASON), from.say("page-desk.reason-in-the-words-of")),
                        from.text(named.apply(BY), from.say("page-desk.decided-by-name")));
    }

    private SelectField seat(Seat seat, UnaryOperator<String> named, Map<String, String> foreseen) {
        String field = SheetFields.field(seat.rubber(), seat.seat());
        return SelectField.of(
                named.apply(field),
                from.say(
                        seat.seat().equals("first") ? "page-desk.rubber-player" : "page-desk.rubber-partner",
                        "rubber",
                        TieViews.rubber(from.visit.words(), seat.rubber())),
                from.say("page-desk.nobody"),
                from.squad(seat.side(), from.tried.value(named.apply(field), foreseen.getOrDefault(field, ""))));
    }

    private record Seat(Side side, RubberNo rubber, String seat) {}

    /** By field, the players of the sheet that the conditions foresee, where one side alone is missing. */
    private Map<String, String> foreseen(Side side) {
        Map<String, String> players = new HashMap<>();
        from.tie
                .club(side)
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
        return players;
    }
}
