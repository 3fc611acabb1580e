package tiewright.wording;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import tiewright.event.Pair;
import tiewright.event.Sheet;
import tiewright.lineup.Aim;
import tiewright.lineup.Reason;
import tiewright.lineup.Wish;
import tiewright.lineup.club.PlayingDay;
import tiewright.lineup.day.DayPlan;
import tiewright.lineup.decider.DeciderAdvice;
import tiewright.lineup.order.BlindGame;
import tiewright.lineup.order.Habit;
import tiewright.lineup.order.OrderAdvice;
import tiewright.lineup.tie.WhatIf;
import tiewright.rating.Basis;
import tiewright.rating.Estimate;

/** The advice to a captain in sentences, one for each reason. */
public final class LineupWords {
    private final Words words;

    public LineupWords(Words words) {
        this.words = words;
    }

    /** For commands: codes stand for themselves. */
    public static LineupWords ofCodes() {
        return new LineupWords(Words.ofCodes(ZoneOffset.UTC));
    }

    public String sentence(Reason reason) {
        Map<String, Object> said = new LinkedHashMap<>();
        Aim.Kind aim = reason.data().get("aim") instanceof Aim.Kind other ? other : Aim.Kind.WIN;
        reason.data()
                .forEach((name, value) -> said.put(
                        name, name.equals("cost") && value instanceof Double cost ? cost(cost, aim) : said(value)));
        return words.sentence(reason.code(), said);
    }

    /** What the strengths rest on: cards of the day, earlier games and film, each for itself. */
    public String restsOn(Basis basis) {
        return words.sentence(
                "lineup.rests-on",
                Map.of(
                        "cards",
                                words.sentence(
                                        "lineup.basis-cards" + number(basis.cards()), Map.of("games", basis.cards())),
                        "earlier",
                                words.sentence(
                                        "lineup.basis-earlier" + number(basis.earlier()),
                                        Map.of("games", basis.earlier())),
                        "film",
                                words.sentence(
                                        "lineup.basis-film" + number(basis.filmed()),
                                        Map.of(
                                                "games", basis.filmed(),
                                                "rallies",
                                                        words.sentence(
                                                                basis.rallies() == 1
                                                                        ? "rating.rally"
                                                                        : "rating.rallies",
                                                                Map.of("count", basis.rallies()))))));
    }

    private static String number(int count) {
        return count == 0 ? "-none" : count == 1 ? "-one" : "";
    }

    /** A wish as the captain would say it. */
    public String wish(Wish wish) {
        Map<String, Object> players = new LinkedHashMap<>();
        players.put("one", wish.players().get(0));
        players.put("other", wish.players().get(wish.players().size() - 1));
        return words.sentence("lineup.wish." + wish.kind().code(), players);
    }

    /** What so many players can do at best. */
    public String size(WhatIf.Size size, Aim.Kind aim) {
        String code =
                size.without().isEmpty() ? "what-if-all" : size.everyChoiceTried() ? "what-if" : "what-if-strongest";
        return words.sentence(
                "lineup." + code,
                Map.of(
                        "players",
                        size.players(),
                        "worth",
                        worth(size.worth(), aim),
                        "cost",
                        cost(size.cost(), aim),
                        "without",
                        size.without()));
    }

    /** What it would cost without one of those here. */
    public String absence(WhatIf.Absence absence, Aim.Kind aim) {
        return words.sentence("lineup.absence", Map.of("player", absence.player(), "cost", cost(absence.cost(), aim)));
    }

    /** What the captain should know of the plan of a day. */
    public List<String> plan(DayPlan plan) {
        List<String> said = new ArrayList<>();
        plan.missing()
                .forEach((player, rubbers) ->
                        said.add(words.sentence("lineup.day-missing", Map.of("player", player, "rubbers", rubbers))));
        plan.tooMany()
                .forEach((player, ties) ->
                        said.add(words.sentence("lineup.day-in-a-row", Map.of("player", player, "ties", ties))));
        boolean all = plan.proven() && plan.allSheets();
        said.add(words.sentence(
                "lineup." + (said.isEmpty() ? "day-kept" : all ? "day-none-keeps" : "day-none-found"), Map.of()));
        String how = !plan.allSheets() ? "day-part" : plan.proven() ? "day-proven" : "day-searched";
        said.add(words.sentence("lineup." + how, Map.of()));
        return said;
    }

    /**
     * How a promise to one player stands.
     *
     * @param ties the names of the ties ahead in which the player is to rest
     * @param mayGoOn another tie may come
     */
    public String promise(PlayingDay.Line line, List<String> ties, boolean mayGoOn) {
        Map<String, Object> data = Map.of(
                "player",
                line.player(),
                "promised",
                line.promised(),
                "had",
                line.had(),
                "missing",
                line.missing(),
                "named",
                line.named(),
                "left",
                line.left(),
                "granted",
                line.granted(),
                "ties",
                ties);
        List<String> codes = new ArrayList<>(List.of("promised"));
        if (line.named() > 0) {
            codes.add("promised-named");
        }
        codes.add("promised-" + line.standing().code());
        if (line.standing() == PlayingDay.Standing.GONE && mayGoOn) {
            codes.add("promised-perhaps");
        }
        return codes.stream()
                .map(code -> words.sentence("lineup." + code, data))
                .collect(Collectors.joining(" "));
    }

    /** More is promised in all than can be played; empty where it is not. */
    public Optional<String> beyond(PlayingDay day) {
        return day.beyond() == 0
                ? Optional.empty()
                : Optional.of(words.sentence("lineup.promised-beyond", Map.of("rubbers", day.beyond())));
    }

    private static final int MIX_SHOWN = 5;

    /** The draw of a sheet, and what a reading of the other club is worth. */
    public List<String> order(OrderAdvice advice, Aim.Kind aim, long seed) {
        List<String> said = new ArrayList<>();
        advice.game()
                .ifPresentOrElse(
                        game -> game(game, aim, said),
                        () -> said.add(words.sentence("lineup.order-too-many", Map.of())));
        advice.drawn()
                .ifPresent(sheet -> said.add(words.sentence(
                        "lineup.order-drawn", Map.of("seed", Long.toString(seed), "pairs", pairs(sheet)))));
        said.add(habit(advice.habit()));
        said.add(words.sentence(
                "lineup.order-straight",
                Map.of(
                        "pairs",
                        pairs(advice.ifStraight().sheet()),
                        "worth",
                        worth(advice.ifStraight().worth(), aim),
                        "gain",
                        cost(advice.ifStraight().gain(), aim))));
        if (advice.habit().sheets() > 0) {
            said.add(words.sentence(
                    "lineup.order-as-before",
                    Map.of(
                            "pairs",
                            pairs(advice.ifAsBefore().sheet()),
                            "gain",
                            cost(advice.ifAsBefore().gain(), aim))));
        }
        return said;
    }

    private void game(BlindGame game, Aim.Kind aim, List<String> said) {
        said.add(words.sentence(
                game.interchangeable() ? "lineup.order-fair" : "lineup.order-counts",
                Map.of("worth", worth(game.value(), aim))));
        said.add(words.sentence(
                "lineup.order-sure",
                Map.of(
                        "worth",
                        worth(game.guarantee(), aim),
                        "gap",
                        String.format(Locale.ROOT, "%.5f", game.gap()),
                        "ours",
                        game.ourSheets(),
                        "theirs",
                        game.theirSheets())));
        game.mix().stream()
                .limit(MIX_SHOWN)
                .forEach(one -> said.add(words.sentence(
                        "lineup.order-mix", Map.of("chance", percent(one.weight()), "pairs", pairs(one.sheet())))));
        if (game.mix().size() > MIX_SHOWN) {
            said.add(words.sentence(
                    "lineup.order-rest", Map.of("sheets", game.mix().size() - MIX_SHOWN)));
        }
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
                        percent(habit.low()),
                        "high",
                        percent(habit.high()),
                        "chance",
                        percent(habit.byChance())));
    }

    private static List<Pair> pairs(Sheet sheet) {
        return sheet.pairs().values().stream().flatMap(Optional::stream).toList();
    }

    /** How much of an aim, in its unit. */
    public static String worth(double worth, Aim.Kind aim) {
        return switch (aim) {
            case WIN -> percent(worth) + " to win";
            case RUBBERS -> String.format(Locale.ROOT, "%+.2f rubbers", withoutRounding(worth));
            case QUALIFY -> percent(worth) + " to go through";
        };
    }

    public String verdict(DeciderAdvice.Verdict verdict) {
        return words.sentence("lineup.verdict." + verdict.code(), Map.of());
    }

    /** What is given away of an aim, in its unit. */
    public static String cost(double cost, Aim.Kind aim) {
        return switch (aim) {
            case WIN -> points(cost);
            case RUBBERS -> String.format(Locale.ROOT, "%.2f rubbers", withoutRounding(cost));
            case QUALIFY -> points(cost) + " of the chance to go through";
        };
    }

    private Object said(Object value) {
        if (value instanceof Wish wish) {
            return wish(wish);
        }
        if (value instanceof Estimate estimate) {
            return String.format(
                    Locale.ROOT, "%+.1f (%+.1f to %+.1f)", estimate.mean(), estimate.low(), estimate.high());
        }
        if (value instanceof Double share) {
            return percent(share);
        }
        return value;
    }

    /** A chance, such as 31.3 %. */
    public static String percent(double chance) {
        return String.format(Locale.ROOT, "%.1f %%", 100 * withoutRounding(chance));
    }

    /** A difference of two chances, such as 1.2 points. */
    public static String points(double difference) {
        return String.format(Locale.ROOT, "%.1f points", 100 * withoutRounding(difference));
    }

    /** To a billionth, so that 0.1875 is not read as a hair less. */
    private static double withoutRounding(double share) {
        return Math.round(share * 1e9) / 1e9;
    }
}
