package tiewright.http.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tiewright.desk.NextCalls;
import tiewright.event.Side;
import tiewright.http.answers.Answers;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.SelectField;
import tiewright.http.views.ActionForm;
import tiewright.http.visit.AtFields;
import tiewright.http.visit.ByRuling;
import tiewright.sheet.Door;

/** What an official can do for a tie from its opening on: call, stop, take back, change a pair. */
final class PlayForms {
    private final TieOptions from;

    PlayForms(TieOptions from) {
        this.from = from;
    }

    List<ActionForm> forms() {
        boolean open = from.tie.isOpened() && !from.event.progress(from.tie).finished();
        List<ActionForm> actions = new ArrayList<>();
        if (open) {
            actions.addAll(calls());
        }
        StopPages.stoppable(from.event, from.tie)
                .forEach(rubber -> actions.add(StopPages.press(from.visit, from.tie, rubber)));
        if (!from.tie.calls().isEmpty()) {
            actions.add(callBack());
        }
        if (!from.tie.cards().isEmpty()) {
            actions.add(cardBack());
        }
        if (open) {
            Stream.of(Side.values()).map(this::replace).forEach(actions::add);
        }
        return actions;
    }

    private List<ActionForm> calls() {
        List<NextCalls.Next> next = from.visit.ask(Answers::new).nextCalls().getOrDefault(from.tie.id(), List.of());
        return from.event.progress(from.tie).left().stream()
                .filter(from.tie.opened()::containsKey)
                .map(rubber -> next.stream()
                        .filter(one -> one.rubber().equals(rubber))
                        .findFirst()
                        .orElse(new NextCalls.Next(rubber, Optional.empty())))
                .map(one -> Calls.form(from.event, from.tie, one))
                .toList();
    }

    private ActionForm callBack() {
        return ActionForm.of(
                        "call-back",
                        from.path("/call-back"),
                        from.say("page-desk.take-a-call-back"),
                        Button.other(from.say("page-desk.take-it-back")))
                .asking(SelectField.of(
                        "rubber",
                        from.say("page-desk.which"),
                        from.say("page-desk.the-whole-tie"),
                        from.rubbers(from.tie.calls(), "rubber")))
                .asking(from.text("call-back-reason", from.say("page-desk.why")));
    }

    private ActionForm cardBack() {
        return ActionForm.of(
                        "card-back",
                        from.path("/card-back"),
                        from.say("page-desk.take-a-score-back-the"),
                        Button.stop(from.say("page-desk.take-it-back")))
                .asking(SelectField.of(
                        "card-back-rubber",
                        from.say("page-desk.which"),
                        from.say("page-desk.choose-a-rubber"),
                        from.rubbers(from.tie.cards(), "card-back-rubber")))
                .asking(ByRuling.fields(
                        from.visit, from.tried, from.text("card-back-reason", from.say("page-desk.why"))));
    }

    /** The pair field that a form of this side has under this name. */
    static String pairField(Side side, String field) {
        return AtFields.id("replace-" + side.code(), field);
    }

    private ActionForm replace(Side side) {
        String rubber = pairField(side, "rubber");
        return ActionForm.of(
                        "replace-" + side.code(),
                        from.path("/replace"),
                        from.say("page-desk.change-a-pair-after-the", "club", from.views.side(from.tie, side)),
                        Button.other(from.say("page-desk.change-the-pair")))
                .sending("replace-side", side.code())
                .saying(from.say("page-desk.only-through-a-door-that"))
                .asking(
                        SelectField.of(
                                rubber,
                                from.say("page-desk.rubber"),
                                from.say("page-desk.choose-a-rubber"),
                                from.rubbers(from.tie.opened(), rubber)),
                        player(side, "pair", "page-desk.player"),
                        player(side, "partner", "page-desk.partner"),
                        SelectField.of(
                                pairField(side, "door"), from.say("page-desk.through-which-door"), "", doors(side)))
                .asking(from.text(pairField(side, "by"), from.say("page-desk.approved-by-name")));
    }

    private SelectField player(Side side, String name, String label) {
        String field = pairField(side, name);
        return SelectField.of(
                        field,
                        from.say(label),
                        from.say("page-desk.nobody"),
                        from.squad(side, from.tried.value(field, "")))
                .withError(from.tried.error(field));
    }

    private List<Option> doors(Side side) {
        String chosen = from.tried.value(pairField(side, "door"), "");
        return Door.open(from.event.conditions()).stream()
                .map(door -> Option.of(
                        door.code(),
                        from.say("page-desk.door." + door.code()),
                        door.code().equals(chosen)))
                .toList();
    }
}
