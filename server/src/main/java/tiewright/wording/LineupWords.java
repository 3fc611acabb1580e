package tiewright.wording;

import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import tiewright.lineup.Aim;
import tiewright.lineup.Reason;
import tiewright.lineup.Wish;
import tiewright.lineup.decider.DeciderAdvice;
import tiewright.lineup.tie.WhatIf;
import tiewright.rating.Basis;
import tiewright.rating.Estimate;

/** The advice to a captain in sentences, one for each reason. */
public final class LineupWords {
    private final Words words;
    private final boolean wholes;

    public LineupWords(Words words) {
        this(words, false);
    }

    private LineupWords(Words words, boolean wholes) {
        this.words = words;
        this.wholes = wholes;
    }

    /** For pages: chances and differences without decimals, which would claim more than is known. */
    public static LineupWords inWholes(Words words) {
        return new LineupWords(words, true);
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
                        name, name.equals("cost") && value instanceof Double cost ? costOf(cost, aim) : said(value)));
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
                        wholes && aim == Aim.Kind.WIN ? whole(size.worth()) + " to win" : worth(size.worth(), aim),
                        "cost",
                        costOf(size.cost(), aim),
                        "without",
                        size.without()));
    }

    /** What it would cost without one of those here. */
    public String absence(WhatIf.Absence absence, Aim.Kind aim) {
        return words.sentence(
                "lineup.absence", Map.of("player", absence.player(), "cost", costOf(absence.cost(), aim)));
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

    /** What is given away, as these words say numbers. */
    public String costOf(double cost, Aim.Kind aim) {
        if (!wholes || aim == Aim.Kind.RUBBERS) {
            return cost(cost, aim);
        }
        long points = Math.round(100 * withoutRounding(cost));
        String said = points == 0 ? "less than a point" : points == 1 ? "1 point" : points + " points";
        return aim == Aim.Kind.QUALIFY ? said + " of the chance to go through" : said;
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
            return wholes ? whole(share) : percent(share);
        }
        return value;
    }

    /** A chance, such as 31.3 %. */
    public static String percent(double chance) {
        return String.format(Locale.ROOT, "%.1f %%", 100 * withoutRounding(chance));
    }

    /** For pages, where a decimal would claim more than is known: 50 %. */
    public static String whole(double chance) {
        return bare(chance) + " %";
    }

    /** The same without its sign, for the ends of a range. */
    public static String bare(double chance) {
        return Long.toString(Math.round(100 * withoutRounding(chance)));
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
