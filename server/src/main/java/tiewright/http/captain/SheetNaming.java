package tiewright.http.captain;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tiewright.event.Pair;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.event.SheetKind;
import tiewright.http.answers.Answers;
import tiewright.http.answers.OwnSheets;
import tiewright.http.views.SheetFormView;
import tiewright.http.visit.ClosedForm;
import tiewright.http.visit.Form;
import tiewright.http.visit.SheetFields;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.lineup.club.PlayingDay;
import tiewright.lineup.tie.Evaluation;
import tiewright.lineup.tie.ProposedSheet;
import tiewright.sheet.Choices;
import tiewright.wording.LineupWords;

/** The form in which a captain names pairs: who can be named where, and what counts before it. */
final class SheetNaming {
    /** The field that says how often chance was asked for an order since the page was opened. */
    static final String DRAWS = "draws";

    private final OwnExchange here;
    private final Visit visit;
    private final Map<RubberNo, List<PlayerId>> chosen;
    private final List<RubberNo> rubbers;

    SheetNaming(OwnExchange here, Map<RubberNo, List<PlayerId>> chosen) {
        this.here = here;
        this.visit = here.visit();
        this.chosen = chosen;
        this.rubbers = here.id().rubbers(visit.event().conditions());
    }

    /** @param given somebody just chose what stands in the form */
    SheetFormView.Naming form(Tried tried, boolean given, String seal) {
        Choices choices = visit.ask(OwnSheets::new).choices(here.id(), chosen);
        return new SheetFormView.Naming(
                here.path(),
                SheetFields.rubbers(choices, visit.event()::name, visit.words(), tried),
                squad(),
                starts(given, draws(tried.typed())),
                seal,
                keeping(),
                new SheetFormView.Closing(
                        visit.hall().trust().letterbox().publicKey(), ClosedForm.bound(visit), here.isReadInTheAir()),
                worth());
    }

    private List<SheetFormView.Name> squad() {
        List<PlayerId> named = chosen.values().stream().flatMap(List::stream).toList();
        List<PlayerId> hurt = visit.ask(Answers::new).hurt(visit.club());
        PlayingDay day = visit.ask(OwnSheets::new).playingDay();
        Map<PlayerId, Integer> rests =
                visit.ask(OwnSheets::new).restedMinutes(here.tie().id());
        return visit.event().squad(visit.club()).stream()
                .map(Player::id)
                .map(player -> new SheetFormView.Name(
                        player.code(),
                        visit.event().name(player),
                        detail(
                                day.line(player).map(PlayingDay.Line::had).orElse(0),
                                Optional.ofNullable(rests.get(player)),
                                hurt.contains(player)),
                        named.contains(player)))
                .toList();
    }

    private String detail(int played, Optional<Integer> rested, boolean hurt) {
        String had = rested.isPresent()
                ? visit.say("page-captain.played-rested", "played", played, "minutes", rested.get())
                : visit.say("page-captain.played", "played", played);
        return hurt ? visit.say("page-captain.ask-first-too", "had", had) : had;
    }

    static int draws(Form form) {
        String draws = form.text(DRAWS);
        return draws.matches("[0-9]{1,6}") ? Integer.parseInt(draws) : 0;
    }

    private SheetFormView.Starts starts(boolean given, int draws) {
        boolean sheets = here.id().kind() == SheetKind.RUBBERS;
        boolean free = sheets && visit.event().conditions().isOrderFree();
        return new SheetFormView.Starts(
                here.own().sealed(),
                given,
                here.lastSheet().map(this::codes).orElse(""),
                free,
                draws,
                here.tie().isReady() && visit.event().isLetIn()
                        ? "/captain/proposal/" + here.tie().id()
                        : "",
                sheets ? visit.event().conditions().maxRubbersPerPlayer() : 1);
    }

    private String codes(Sheet sheet) {
        Map<RubberNo, List<PlayerId>> last = SheetFields.chosen(sheet);
        return rubbers.stream()
                .flatMap(rubber -> {
                    List<PlayerId> pair = last.getOrDefault(rubber, List.of());
                    return Stream.of(code(pair, 0), code(pair, 1));
                })
                .collect(Collectors.joining(" ", "", ""));
    }

    private static String code(List<PlayerId> pair, int seat) {
        return seat < pair.size() ? pair.get(seat).code() : "-";
    }

    private SheetFormView.Keeping keeping() {
        boolean onPhone = here.own().in() && !here.own().atDesk();
        return new SheetFormView.Keeping(
                here.id().kind().code(),
                here.id().tie().code(),
                visit.club().code(),
                onPhone,
                HurtFirst.marked(visit).stream().map(PlayerId::code).collect(Collectors.joining(" ")),
                onPhone
                        ? visit.say("page-captain.your-sheet-is-on-the")
                        : visit.say("page-captain.kept-on-the-phone-not"));
    }

    /** The same chance as the proposal would give it, by the same question. */
    private Optional<String> worth() {
        if (!visit.event().isLetIn()
                || here.id().kind() != SheetKind.RUBBERS
                || here.exchange().isOpened()
                || !here.tie().isReady()) {
            return Optional.empty();
        }
        return whole().filter(sheet -> visit.ask(OwnSheets::new).isLegal(here.id(), sheet))
                .map(sheet -> said(Evaluation.alone(
                        Question.of(visit).inputs(visit, here.tie().id()).problem(), sheet)));
    }

    private String said(ProposedSheet worth) {
        return visit.say(
                "page-captain.worth",
                "chance",
                LineupWords.whole(worth.chance()),
                "low",
                LineupWords.bare(worth.low()),
                "high",
                LineupWords.bare(worth.high()));
    }

    private Optional<Sheet> whole() {
        SortedMap<RubberNo, Optional<Pair>> pairs = new TreeMap<>();
        List<PlayerId> seen = new ArrayList<>();
        for (RubberNo rubber : rubbers) {
            List<PlayerId> pair = chosen.getOrDefault(rubber, List.of());
            if (pair.size() != 2 || pair.get(0).equals(pair.get(1))) {
                return Optional.empty();
            }
            seen.addAll(pair);
            pairs.put(rubber, Optional.of(Pair.of(pair.get(0), pair.get(1))));
        }
        return seen.isEmpty() ? Optional.empty() : Optional.of(new Sheet(pairs));
    }
}
