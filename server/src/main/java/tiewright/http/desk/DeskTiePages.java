package tiewright.http.desk;

import java.util.List;
import java.util.Optional;
import tiewright.desk.TakeBackCall;
import tiewright.desk.TakeBackCard;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.ExchangeId;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.event.SheetKind;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.http.visit.AtFields;
import tiewright.http.visit.ByRuling;
import tiewright.http.visit.Door;
import tiewright.http.visit.Form;
import tiewright.http.visit.NotFound;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.SheetFields;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.sheet.ForfeitSide;
import tiewright.sheet.OpenSheets;
import tiewright.sheet.ReplacePair;
import tiewright.sheet.ReturnSheet;
import tiewright.sheet.SupplySide;

/** One tie at the desk: sheets, rulings for a missing side, calls, changes after the opening. */
final class DeskTiePages implements Page {
    static String of(Tie tie) {
        return "/desk/tie/" + tie.id();
    }

    @Override
    public void at(Routes routes) {
        String tie = "/desk/tie/{tie}";
        routes.get(Door.DESK, tie, visit -> visit.show(DeskTieScreen.of(visit, Tried.NOTHING)));
        routes.post(Door.DESK, tie + "/call", visit -> Calls.post(visit, tried -> DeskTieScreen.of(visit, tried)));
        routes.post(Door.DESK, tie + "/call-back", DeskTiePages::callBack);
        routes.post(Door.DESK, tie + "/card-back", DeskTiePages::cardBack);
        routes.post(
                Door.DESK,
                tie + "/open",
                visit -> act(visit, visit.form(), new OpenSheets(exchange(visit, visit.form()))));
        routes.post(Door.DESK, tie + "/return", DeskTiePages::giveBack);
        routes.post(Door.OFFICIALS, tie + "/supply", DeskTiePages::supply);
        routes.post(Door.OFFICIALS, tie + "/forfeit", DeskTiePages::forfeit);
        routes.post(Door.DESK, tie + "/replace", DeskTiePages::replace);
    }

    private static void act(Visit visit, Form form, Decision decision) {
        visit.attempt(form, () -> decision, of(visit.tie()), tried -> DeskTieScreen.of(visit, tried));
    }

    private static ExchangeId exchange(Visit visit, Form form) {
        return new ExchangeId(
                visit.tie().id(), SheetKind.parse(form.text("exchange")).orElse(SheetKind.RUBBERS));
    }

    private static ClubId club(Visit visit, String chosen) {
        Tie tie = visit.tie();
        return tie.club(side(chosen)).orElseThrow(() -> new NotFound(visit.say("page-desk.the-club-of-this-side")));
    }

    private static void callBack(Visit visit) {
        Form form = visit.form();
        String reason = form.mustText("call-back-reason");
        act(visit, form, new TakeBackCall(visit.tie().id(), form.maybe("rubber").flatMap(RubberNo::parse), reason));
    }

    private static void cardBack(Visit visit) {
        Form form = visit.form();
        String reason = form.mustText("card-back-reason");
        Optional<RubberNo> rubber =
                form.must("card-back-rubber", form.maybe("card-back-rubber").flatMap(RubberNo::parse));
        visit.attempt(
                form,
                () -> new TakeBackCard(visit.tie().id(), rubber.orElseThrow(), reason, ByRuling.chosen(form)),
                of(visit.tie()),
                tried -> DeskTieScreen.of(visit, tried));
    }

    private static void giveBack(Visit visit) {
        Form form = visit.form();
        String reason = form.mustText("return-reason");
        act(visit, form, new ReturnSheet(exchange(visit, form), club(visit, form.text("side")), reason));
    }

    private static void forfeit(Visit visit) {
        Form form = visit.form();
        String reason = form.mustText("forfeit-reason");
        String by = form.mustText("forfeit-by");
        act(visit, form, new ForfeitSide(exchange(visit, form), club(visit, form.text("forfeit-side")), reason, by));
    }

    private static void supply(Visit visit) {
        ExchangeId id = exchange(visit, visit.form());
        List<RubberNo> rubbers = id.rubbers(visit.event().conditions());
        Form form = SheetForms.ofOneSide(visit.form(), rubbers);
        String reason = form.mustText("supply-reason");
        String by = form.mustText("supply-by");
        Optional<Sheet> sheet = SheetFields.sheet(form, rubbers);
        visit.attempt(
                form,
                () -> new SupplySide(id, club(visit, form.text("supply-side")), sheet.orElseThrow(), reason, by),
                of(visit.tie()),
                tried -> DeskTieScreen.of(visit, tried));
    }

    private static void replace(Visit visit) {
        Form form = visit.form();
        Side side = side(form.text("replace-side"));
        String inRubber = PlayForms.pairField(side, "rubber");
        Optional<RubberNo> rubber = form.must(inRubber, form.maybe(inRubber).flatMap(RubberNo::parse));
        Optional<Pair> pair = pair(form, side, form.text(inRubber));
        String by = form.mustText(PlayForms.pairField(side, "by"));
        visit.attempt(
                form,
                () -> new AtFields(
                        "replace-" + side.code(),
                        new ReplacePair(
                                rubber.orElseThrow().isDecider()
                                        ? ExchangeId.decider(visit.tie().id())
                                        : ExchangeId.sheets(visit.tie().id()),
                                club(visit, side.code()),
                                rubber.get(),
                                pair,
                                form.text(PlayForms.pairField(side, "door")),
                                by)),
                of(visit.tie()),
                tried -> DeskTieScreen.of(visit, tried));
    }

    private static Optional<Pair> pair(Form form, Side side, String rubber) {
        String field = PlayForms.pairField(side, "pair");
        Optional<PlayerId> first = form.read(field, "form.not-a-player", PlayerId::of);
        Optional<PlayerId> second = form.read(PlayForms.pairField(side, "partner"), "form.not-a-player", PlayerId::of);
        if (first.isPresent() != second.isPresent() || first.isPresent() && first.equals(second)) {
            form.fault(
                    Refusal.of("form.one-player-alone").with("rubber", rubber).at(field));
            return Optional.empty();
        }
        return first.flatMap(one -> second.map(other -> Pair.of(one, other)));
    }

    private static Side side(String chosen) {
        return chosen.equals("away") ? Side.AWAY : Side.HOME;
    }
}
