package tiewright.conditions;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Every setting: where it is printed, what it may be, what each preset says, and whether the software obeys it today. */
public enum Setting {
    RUBBERS(Heading.RUBBERS, new Domain.Whole(1, 12), "4", "4", "4", "3", true),
    RUBBER_KINDS(Heading.RUBBERS, new Domain.Kinds(), "open", true),
    RUBBER_WEIGHTS(Heading.RUBBERS, new Domain.Weights(), "equal", true),
    MAX_RUBBERS_PER_PLAYER(Heading.RUBBERS, new Domain.Whole(1, 12), "1", "1", "1", "2", true),
    TIE_PLAY(
            Heading.RUBBERS,
            new Domain.Choice(List.of("side-by-side", "rubber-by-rubber")),
            "side-by-side",
            "side-by-side",
            "side-by-side",
            "rubber-by-rubber",
            true),
    STOP_WHEN_DECIDED(
            Heading.STOPPING,
            new Domain.Choice(List.of("none", "knockout", "all")),
            "knockout",
            "knockout",
            "none",
            "none",
            true),
    SHEET_DEADLINE_MINUTES(Heading.SHEET_DEADLINE, new Domain.Whole(0, 600), "15", "30", "15", "5", true),
    LATE_SHEET(
            Heading.SHEET_DEADLINE,
            new Domain.Choice(List.of(
                    "grace",
                    "desk-receipt",
                    "shown-receipt",
                    "last-legal",
                    "strength-order",
                    "referee-fills",
                    "forfeit")),
            "grace",
            "forfeit",
            "referee-fills",
            "last-legal",
            true),
    GRACE_MINUTES(Heading.SHEET_DEADLINE, new Domain.Whole(0, 60), "5", "0", "0", "0", true),
    EXCHANGE(
            Heading.EXCHANGE,
            new Domain.Choice(List.of("sealed-together", "captains-swap", "home-first", "visitors-pair-hosts-match")),
            "sealed-together",
            true),
    ORDER_OF_STRENGTH(
            Heading.ORDER_OF_STRENGTH,
            new Domain.Choice(List.of("none", "rank-sum", "strongest-first")),
            "none",
            "rank-sum",
            "none",
            "none",
            true),
    CHALLENGE_TO_ORDER(
            Heading.CHALLENGE,
            new Domain.Choice(List.of("none", "before-play-to-referee")),
            "none",
            "before-play-to-referee",
            "none",
            "none",
            false),
    WRONG_ORDER_LATE(
            Heading.WRONG_ORDER,
            new Domain.Choice(List.of("fix-or-stands", "re-score-in-order", "forfeit-rubbers", "lose-tie")),
            "fix-or-stands",
            "forfeit-rubbers",
            "fix-or-stands",
            "fix-or-stands",
            false),
    CHANGES_AFTER_OPENING(
            Heading.CHANGES,
            new Domain.Choice(List.of("injury-illness-no-show", "referee-and-doctor", "free-substitution", "none")),
            "injury-illness-no-show",
            "referee-and-doctor",
            "free-substitution",
            "injury-illness-no-show",
            true),
    SHORT_SQUAD(
            Heading.SHORT_SQUAD,
            new Domain.Choice(List.of("bottom-empty", "move-up")),
            "bottom-empty",
            "move-up",
            "bottom-empty",
            "bottom-empty",
            true),
    LEAST_PLAYERS(Heading.SHORT_SQUAD, new Domain.Whole(2, 24), "4", "6", "4", "4", false),
    BOTH_SHORT(
            Heading.BOTH_SHORT,
            new Domain.Choice(List.of("shrink-target", "double-default")),
            "shrink-target",
            "double-default",
            "shrink-target",
            "shrink-target",
            true),
    LATE_MINUTES(Heading.LATENESS, new Domain.Whole(1, 120), "10", "10", "15", "5", true),
    LATE_LOSS(
            Heading.LATENESS,
            new Domain.Choice(List.of("rubber-claimable", "ladder-one-rubber-each-15", "game-then-rubber")),
            "rubber-claimable",
            "rubber-claimable",
            "ladder-one-rubber-each-15",
            "game-then-rubber",
            true),
    CLOCK_STARTS(
            Heading.CLOCK,
            new Domain.Choice(List.of("call", "schedule", "court-free")),
            "call",
            "schedule",
            "call",
            "schedule",
            true),
    WALKOVER_SCORE(Heading.WALKOVER, new Domain.Choice(List.of("target-0", "0-0")), "target-0", true),
    RETIREMENT_SCORE(
            Heading.RETIREMENT,
            new Domain.Choice(List.of("keep-points", "zero", "as-it-stood")),
            "keep-points",
            "keep-points",
            "keep-points",
            "as-it-stood",
            true),
    WITHDRAWAL(
            Heading.WITHDRAWAL,
            new Domain.Choice(List.of("annul", "keep", "award")),
            "annul",
            "award",
            "annul",
            "annul",
            true),
    TIE_POINTS(Heading.TIE_POINTS, new Domain.Points(), "1/0/0", "2/1/0", "2/1/0", "2/1/0", true),
    UNPLAYED_TIE(Heading.TIE_POINTS, new Domain.Unplayed(), "as-rubbers", true),
    LEVEL_TEAMS(
            Heading.LEVEL_TEAMS,
            new Domain.Level(),
            "overall-difference",
            "among-level-ratio",
            "rubbers-won",
            "head-to-head-points",
            true),
    AFTER_SEPARATION(
            Heading.SEPARATED, new Domain.Choice(List.of("as-the-procedure-says")), "as-the-procedure-says", true),
    OVERTIME_POINTS(
            Heading.OVERTIME,
            new Domain.Choice(List.of("as-played", "capped")),
            "as-played",
            "as-played",
            "capped",
            "as-played",
            true),
    DECIDER(
            Heading.DECIDER,
            new Domain.Choice(List.of("none", "any-two", "one-from-each", "singles-turns")),
            "any-two",
            "any-two",
            "none",
            "one-from-each",
            true),
    DECIDER_SCORING(
            Heading.DECIDER, new Domain.Scoring(), "side-out-11", "side-out-11", "side-out-11", "rally-11", true),
    DECIDER_MINUTES(Heading.DECIDER, new Domain.Whole(1, 60), "5", "10", "5", "5", true),
    SCORING(Heading.SCORING, new Domain.Scoring(), "side-out-11", "side-out-11", "rally-15", "rally-21-cap-30", true),
    BEST_OF(Heading.SCORING, new Domain.Choice(List.of("1", "3", "5")), "1", "3", "1", "1", true),
    CHANGE_ENDS(
            Heading.SCORING,
            new Domain.Choice(List.of("none", "half-way", "deciding-game")),
            "half-way",
            "deciding-game",
            "half-way",
            "none",
            false),
    REST_MINUTES(Heading.REST, new Domain.Whole(0, 240), "10", "30", "10", "5", true),
    WARM_UP_MINUTES(Heading.WARM_UP, new Domain.Whole(0, 60), "5", "5", "5", "3", false),
    MEDICAL_MINUTES(Heading.MEDICAL, new Domain.Whole(0, 60), "15", "10", "15", "15", true),
    WEATHER(
            Heading.WEATHER,
            new Domain.Choice(List.of("play-on-shorter", "wait-30-minutes", "time-box", "share-points", "next-day")),
            "play-on-shorter",
            "wait-30-minutes",
            "play-on-shorter",
            "time-box",
            false),
    FREEZE_MINUTES(Heading.WEATHER, new Domain.Whole(0, 180), "20", "30", "20", "10", true),
    HEAT_CAUTION_WBGT(Heading.HEAT, new Domain.Degrees(10, 45), "28", "28", "25", "28", true),
    HEAT_STOP_WBGT(Heading.HEAT, new Domain.Degrees(10, 50), "31", "31", "31", "31", true),
    HEAT_CAUTION_AIR(Heading.HEAT, new Domain.Degrees(10, 55), "35", "35", "32", "35", true),
    HEAT_STOP_AIR(Heading.HEAT, new Domain.Degrees(10, 60), "38", "36", "36", "38", true),
    CONFIRM_CARDS(
            Heading.REPORTING,
            new Domain.Choice(List.of("both-sign", "desk-reads", "next-day-14")),
            "both-sign",
            "both-sign",
            "desk-reads",
            "both-sign",
            false),
    CORRECTION(
            Heading.CORRECTION,
            new Domain.Choice(List.of("both-captains-then-ruling", "ruling-only")),
            "both-captains-then-ruling",
            "ruling-only",
            "both-captains-then-ruling",
            "ruling-only",
            false),
    PROTEST(
            Heading.PROTEST,
            new Domain.Choice(List.of("on-the-spot", "within-24-hours", "within-7-days")),
            "on-the-spot",
            "within-24-hours",
            "on-the-spot",
            "on-the-spot",
            false),
    OBJECTION_MINUTES(Heading.PROTEST, new Domain.Whole(0, 240), "15", "30", "15", "10", true),
    ELIGIBILITY_TIES(Heading.ELIGIBILITY, new Domain.Whole(0, 20), "0", "1", "0", "0", true),
    DRAW_SEPARATION(Heading.DRAW, new Domain.Choice(List.of("none", "town")), "town", "none", "town", "town", true),
    SEEDING(Heading.DRAW, new Domain.Choice(List.of("tennis", "halves")), "tennis", "halves", "tennis", "tennis", true),
    PENALTIES(
            Heading.PENALTIES,
            new Domain.Choice(List.of("none", "minor-fines")),
            "none",
            "minor-fines",
            "none",
            "none",
            false),
    WHO_ACTS(
            Heading.WHO_ACTS,
            new Domain.Choice(List.of("captain-deputy", "captain-deputy-coach")),
            "captain-deputy",
            "captain-deputy-coach",
            "captain-deputy",
            "captain-deputy",
            false);

    /** Values that people apply although the software acts on the other values of their setting. */
    private static final Set<String> BY_HAND = Set.of(
            "exchange=captains-swap",
            "exchange=home-first",
            "exchange=visitors-pair-hosts-match",
            "both_short=double-default",
            "decider=singles-turns");

    private final Heading heading;
    private final Domain domain;
    private final List<String> byPreset;
    private final boolean obeyed;

    Setting(
            Heading heading,
            Domain domain,
            String clubDay,
            String strictOrder,
            String everyonePlays,
            String timed,
            boolean obeyed) {
        this.heading = heading;
        this.domain = domain;
        this.byPreset = List.of(clubDay, strictOrder, everyonePlays, timed);
        this.obeyed = obeyed;
    }

    /** The same value in every preset. */
    Setting(Heading heading, Domain domain, String everywhere, boolean obeyed) {
        this(heading, domain, everywhere, everywhere, everywhere, everywhere, obeyed);
    }

    /** The name in {@code conditions.csv}. */
    public String code() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }

    public Heading heading() {
        return heading;
    }

    public Domain domain() {
        return domain;
    }

    /** False: printed for everybody, and a person applies it. */
    public boolean isObeyed() {
        return obeyed;
    }

    /** The same for one value: the software knows only some values of a few settings. */
    public boolean isObeyed(String value) {
        return obeyed && !BY_HAND.contains(code() + "=" + value);
    }

    public String of(Preset preset) {
        return byPreset.get(preset.ordinal());
    }

    public static Optional<Setting> parse(String code) {
        return Arrays.stream(values())
                .filter(setting -> setting.code().equals(code))
                .findFirst();
    }

    public static List<Setting> under(Heading heading) {
        return Arrays.stream(values())
                .filter(setting -> setting.heading == heading)
                .toList();
    }
}
