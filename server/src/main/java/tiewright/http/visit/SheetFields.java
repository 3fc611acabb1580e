package tiewright.http.visit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.SelectField;
import tiewright.http.views.SheetFormView;
import tiewright.sheet.Choices;
import tiewright.wording.Words;

/** The two fields of each rubber of a sheet, from the choices and back. */
public final class SheetFields {
    private static final List<String> SEATS = List.of("first", "second");

    private SheetFields() {}

    public static String field(RubberNo rubber, String seat) {
        return "sheet-" + rubber + "-" + seat;
    }

    /** Who is chosen so far: none, one or two for each rubber. */
    public static Map<RubberNo, List<PlayerId>> chosen(Form form, List<RubberNo> rubbers) {
        Map<RubberNo, List<PlayerId>> chosen = new LinkedHashMap<>();
        for (RubberNo rubber : rubbers) {
            List<PlayerId> players = new ArrayList<>();
            for (String seat : SEATS) {
                form.read(field(rubber, seat), "form.not-a-player", PlayerId::of)
                        .ifPresent(players::add);
            }
            chosen.put(rubber, players);
        }
        return chosen;
    }

    public static Map<RubberNo, List<PlayerId>> chosen(Sheet sheet) {
        Map<RubberNo, List<PlayerId>> chosen = new LinkedHashMap<>();
        sheet.pairs()
                .forEach((rubber, pair) ->
                        chosen.put(rubber, pair.map(two -> two.players()).orElse(List.of())));
        return chosen;
    }

    /** The sheet; a rubber with one player alone is a fault, one with none is left empty. */
    public static Optional<Sheet> sheet(Form form, List<RubberNo> rubbers) {
        SortedMap<RubberNo, Optional<Pair>> pairs = new TreeMap<>();
        chosen(form, rubbers).forEach((rubber, players) -> {
            if (players.size() == 1) {
                form.fault(Refusal.of("form.one-player-alone")
                        .with("rubber", rubber)
                        .at("sheet-" + rubber));
            } else if (players.size() == 2 && players.get(0).equals(players.get(1))) {
                form.fault(Refusal.of("form.same-player-twice")
                        .with("rubber", rubber)
                        .at("sheet-" + rubber));
            } else {
                pairs.put(
                        rubber,
                        players.isEmpty() ? Optional.empty() : Optional.of(Pair.of(players.get(0), players.get(1))));
            }
        });
        return form.isClean() ? Optional.of(new Sheet(pairs)) : Optional.empty();
    }

    /** The rubbers as they are shown; a player who may not be named is shown with the rule. */
    public static List<SheetFormView.Rubber> rubbers(
            Choices choices, Function<PlayerId, String> name, Words words, Tried tried) {
        return choices.rubbers().stream()
                .map(rubber -> new SheetFormView.Rubber(
                        "sheet-" + rubber.rubber(),
                        rubber.rubber().toString(),
                        words.kind(rubber.rubber()),
                        TieViews.rubber(words, rubber.rubber()),
                        tried.error("sheet-" + rubber.rubber()),
                        seat(rubber, 0, name, words),
                        seat(rubber, 1, name, words)))
                .toList();
    }

    private static SelectField seat(Choices.Rubber rubber, int index, Function<PlayerId, String> name, Words words) {
        Choices.Seat seat = rubber.seats().get(index);
        List<Option> options = seat.players().stream()
                .map(choice -> {
                    boolean chosen =
                            seat.chosen().filter(choice.player()::equals).isPresent();
                    String why = choice.whyNot().map(words::sentence).orElse("");
                    return new Option(
                            choice.player().code(),
                            name.apply(choice.player()),
                            why,
                            chosen,
                            !why.isEmpty() && !chosen);
                })
                .toList();
        return SelectField.of(
                field(rubber.rubber(), SEATS.get(index)),
                index == 0 ? words.say("page-visit.player") : words.say("page-visit.partner"),
                words.say("page-visit.nobody"),
                options);
    }
}
