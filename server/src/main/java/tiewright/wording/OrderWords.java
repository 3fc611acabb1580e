package tiewright.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tiewright.event.Pair;
import tiewright.event.Sheet;
import tiewright.lineup.Aim;
import tiewright.lineup.order.BlindGame;
import tiewright.lineup.order.Habit;
import tiewright.lineup.order.OrderAdvice;

/** The advice in which order to name the pairs, in sentences. */
public final class OrderWords {
    private static final int MIX_SHOWN = 5;
    private static final int MOST_DECIMALS = 9;

    private final Words words;

    public OrderWords(Words words) {
        this.words = words;
    }

    /** The draw of a sheet, and what a reading of the other club is worth. */
    public List<String> said(OrderAdvice advice, Aim.Kind aim, long seed) {
        List<String> said = new ArrayList<>();
        advice.game()
                .ifPresentOrElse(
                        game -> game(game, aim, said),
                        () -> said.add(words.sentence("lineup.order-too-many", Map.of())));
        advice.drawn()
                .ifPresent(sheet -> said.add(words.sentence(
                        "lineup.order-drawn", Map.of("seed", Long.toString(seed), "pairs", pairs(sheet)))));
        said.add(habit(advice.habit()));
        said.add(straight(advice, aim));
        if (advice.habit().sheets() > 0) {
            said.add(words.sentence(
                    "lineup.order-as-before",
                    Map.of(
                            "pairs",
                            pairs(advice.ifAsBefore().sheet()),
                            "gain",
                            LineupWords.cost(advice.ifAsBefore().gain(), aim))));
        }
        return said;
    }

    private String straight(OrderAdvice advice, Aim.Kind aim) {
        return words.sentence(
                "lineup.order-straight",
                Map.of(
                        "pairs",
                        pairs(advice.ifStraight().sheet()),
                        "worth",
                        LineupWords.worth(advice.ifStraight().worth(), aim),
                        "gain",
                        LineupWords.cost(advice.ifStraight().gain(), aim)));
    }

    private void game(BlindGame game, Aim.Kind aim, List<String> said) {
        boolean one = game.mix().size() == 1 && !game.interchangeable();
        said.add(one ? best(game) : kind(game, aim));
        said.add(words.sentence(
                "lineup.order-sure",
                Map.of(
                        "worth",
                        LineupWords.worth(game.guarantee(), aim),
                        "gap",
                        String.format(Locale.ROOT, "%.5f", game.gap()),
                        "ours",
                        game.ourSheets(),
                        "theirs",
                        game.theirSheets())));
        game.mix().stream()
                .limit(one ? 0 : MIX_SHOWN)
                .forEach(weighted -> said.add(words.sentence(
                        mix(game), Map.of("chance", often(weighted.weight()), "pairs", pairs(weighted.sheet())))));
        if (game.mix().size() > MIX_SHOWN) {
            said.add(words.sentence(
                    "lineup.order-rest", Map.of("sheets", game.mix().size() - MIX_SHOWN)));
        }
    }

    /** With as many decimals as show that it is neither never nor always. */
    private static String often(double weight) {
        int decimals = 1;
        while (weight > 0 && weight < 1 && decimals < MOST_DECIMALS && isAllOrNothing(weight, decimals)) {
            decimals++;
        }
        return String.format(Locale.ROOT, "%." + decimals + "f %%", 100 * weight);
    }

    private static boolean isAllOrNothing(double weight, int decimals) {
        double whole = 100 * Math.pow(10, decimals);
        long shown = Math.round(weight * whole);
        return shown == 0 || shown == Math.round(whole);
    }

    private String best(BlindGame game) {
        return words.sentence(
                "lineup.order-one", Map.of("pairs", pairs(game.mix().get(0).sheet())));
    }

    private String kind(BlindGame game, Aim.Kind aim) {
        return words.sentence(
                game.interchangeable() ? "lineup.order-fair" : "lineup.order-counts",
                Map.of("worth", LineupWords.worth(game.value(), aim)));
    }

    /** Where the order is drawn too, no fixed order is named. */
    private static String mix(BlindGame game) {
        if (!game.interchangeable()) {
            return "lineup.order-mix";
        }
        return game.mix().size() == 1 ? "lineup.order-pairs-one" : "lineup.order-pairs";
    }

    private String habit(Habit habit) {
        if (habit.sheets() == 0) {
            return words.sentence("lineup.order-habit-none", Map.of());
        }
        return words.sentence(
                habit.couldBeChance() ? "lineup.order-habit-chance" : "lineup.order-habit",
                Map.of(
                        "straight",
                        habit.straight(),
                        "sheets",
                        habit.sheets(),
                        "low",
                        LineupWords.percent(habit.low()),
                        "high",
                        LineupWords.percent(habit.high()),
                        "chance",
                        LineupWords.percent(habit.byChance())));
    }

    private static List<Pair> pairs(Sheet sheet) {
        return sheet.pairs().values().stream().flatMap(Optional::stream).toList();
    }
}
