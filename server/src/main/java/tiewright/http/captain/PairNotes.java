package tiewright.http.captain;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import tiewright.event.Pair;
import tiewright.event.PairWish;
import tiewright.event.PlayerId;
import tiewright.event.PrivateDecision;
import tiewright.event.PrivateNote.ChemistryJudged;
import tiewright.event.Refusal;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.SelectField;
import tiewright.http.pieces.TextField;
import tiewright.http.views.ActionForm;
import tiewright.http.views.SquadView;
import tiewright.http.visit.Form;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.rating.JudgePair;
import tiewright.wording.Words;

/** What a captain notes about two of the own players: wished together or apart, and what they win beyond what each brings. */
final class PairNotes {
    static final String PATH = "/captain/squad/pair";

    private final Visit visit;
    private final Words words;

    PairNotes(Visit visit) {
        this.visit = visit;
        this.words = visit.words();
    }

    Supplier<PrivateDecision> decision(Form form) {
        Optional<PlayerId> first = SquadPages.ownPlayer(visit, form, "pair-first");
        Optional<PlayerId> second = SquadPages.ownPlayer(visit, form, "pair-second");
        if (first.isPresent() && first.equals(second)) {
            form.fault(Refusal.of("form.same-player-twice")
                    .with("rubber", words.say("page-captain.a-pair"))
                    .at("pair-second"));
        }
        OptionalDouble extra = SquadRating.figure(form, "pair-extra");
        OptionalDouble doubt = SquadRating.figure(form, "pair-doubt");
        Optional<PairWish> wish =
                switch (form.text("pair-wish")) {
                    case "together" -> Optional.of(PairWish.TOGETHER);
                    case "apart" -> Optional.of(PairWish.APART);
                    default -> Optional.empty();
                };
        return () -> new JudgePair(Pair.of(first.orElseThrow(), second.orElseThrow()), extra.orElse(0), doubt, wish);
    }

    List<SquadView.Noted> lines(Collection<ChemistryJudged> noted) {
        return noted.stream()
                .map(note -> new SquadView.Noted(said(note), remove(note.pair())))
                .toList();
    }

    private String said(ChemistryJudged note) {
        return words.say(
                "page-captain.pair-noted",
                "first",
                visit.event().name(note.pair().first()),
                "second",
                visit.event().name(note.pair().second()),
                "extra",
                SquadRating.signed(note.extra()),
                "doubt",
                note.sd().isPresent() ? SquadRating.plain(note.sd().getAsDouble()) : "none",
                "wish",
                note.wish()
                        .map(wish -> wish == PairWish.TOGETHER ? "together" : "apart")
                        .orElse("none"));
    }

    private ActionForm remove(Pair pair) {
        return ActionForm.of(
                        "remove-" + pair.first() + "-" + pair.second(),
                        PATH,
                        "",
                        Button.other(words.say("page-captain.take-it-back")))
                .sending("pair-first", pair.first().code())
                .sending("pair-second", pair.second().code())
                .sending("pair-extra", "0");
    }

    ActionForm form(Tried tried) {
        return ActionForm.of(
                        "pair",
                        PATH,
                        words.say("page-captain.note-something-about-a-pair"),
                        Button.other(words.say("page-captain.keep-pair")))
                .asking(
                        SquadPages.squad(visit, "pair-first", words.say("page-captain.player"), tried),
                        SquadPages.squad(visit, "pair-second", words.say("page-captain.partner"), tried),
                        SelectField.of(
                                "pair-wish",
                                words.say("page-captain.wish"),
                                words.say("page-captain.no-wish-2"),
                                List.of(wish("together", tried), wish("apart", tried))))
                .asking(
                        figure("pair-extra", words.say("page-captain.extra-as-a-pair-rallies"), tried),
                        figure("pair-doubt", words.say("page-captain.its-doubt"), tried));
    }

    private Option wish(String wish, Tried tried) {
        return Option.of(
                wish,
                words.say(
                        wish.equals("together")
                                ? "page-captain.play-them-together"
                                : "page-captain.do-not-play-them-together"),
                tried.value("pair-wish", "").equals(wish));
    }

    private static TextField figure(String field, String label, Tried tried) {
        return TextField.of(field, TextField.Kind.LINE, label, tried.value(field, ""))
                .withError(tried.error(field));
    }
}
