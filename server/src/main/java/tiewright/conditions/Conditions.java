package tiewright.conditions;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import tiewright.scoring.Format;
import tiewright.scoring.Score;
import tiewright.scoring.SideNo;

/**
 * The conditions of play of an event: a value for every setting, all legal.
 *
 * @param base the preset they started from; only what differs from it needs to be written down
 */
public record Conditions(Preset base, Map<Setting, String> values) {
    public Conditions {
        EnumMap<Setting, String> copy = new EnumMap<>(Setting.class);
        copy.putAll(values);
        for (Setting setting : Setting.values()) {
            String value = copy.computeIfAbsent(setting, presetOf(base));
            if (!setting.domain().allows(value)) {
                throw new IllegalArgumentException(setting.code() + " cannot be \"" + value + "\"");
            }
        }
        values = Collections.unmodifiableMap(copy);
    }

    private static Function<Setting, String> presetOf(Preset base) {
        return setting -> setting.of(base);
    }

    public static Conditions of(Preset preset) {
        return new Conditions(preset, Map.of());
    }

    /** These conditions with one value changed; the value must be allowed, ask its domain first. */
    public Conditions with(Setting setting, String value) {
        EnumMap<Setting, String> changed = new EnumMap<>(Setting.class);
        changed.putAll(values);
        changed.put(setting, value);
        return new Conditions(base, changed);
    }

    /**
     * Reads settings by their names as {@code conditions.csv} holds them, {@code preset} among them; without one the
     * preset is Club day.
     */
    public static ConditionsReading read(Map<String, String> lines) {
        return ConditionsReading.of(lines);
    }

    /** What makes these values impossible together; such conditions are not to be published. Empty when all is well. */
    public List<SettingFault> clashes() {
        return ConditionsClashes.of(this);
    }

    /** Settings that are legal one by one and go badly together; empty when there is nothing to say. */
    public List<ConditionsNote> notes() {
        return ConditionsNotes.of(this);
    }

    public String value(Setting setting) {
        return Objects.requireNonNull(values.get(setting));
    }

    /** The settings that differ from the preset, in printed order. */
    public Map<Setting, String> differences() {
        EnumMap<Setting, String> different = new EnumMap<>(Setting.class);
        values.forEach((setting, value) -> {
            if (!setting.of(base).equals(value)) {
                different.put(setting, value);
            }
        });
        return different;
    }

    /** Every value on a line of its own, for the ledger: {@code preset=Club day}, {@code rubbers=4}, … */
    public String text() {
        return ConditionsText.of(this);
    }

    /** Reads {@link #text()}; settings that it does not know of are those of its preset. */
    public static Conditions ofText(String text) {
        return ConditionsText.read(text);
    }

    /** What the rubbers of a tie are. */
    public TieRubbers tieRubbers() {
        return new TieRubbers(
                rubbers(),
                RubberWeights.parse(value(Setting.RUBBER_WEIGHTS)).orElseThrow(),
                RubberKinds.parse(value(Setting.RUBBER_KINDS)).orElseThrow());
    }

    /** Nothing is gained or lost by the order in which the same pairs are named. */
    public boolean isOrderFree() {
        return orderOfStrength() == OrderOfStrength.NONE && tieRubbers().areAlike();
    }

    public int rubbers() {
        return number(Setting.RUBBERS);
    }

    public int maxRubbersPerPlayer() {
        return number(Setting.MAX_RUBBERS_PER_PLAYER);
    }

    public TiePlay tiePlay() {
        return TiePlay.parse(value(Setting.TIE_PLAY)).orElseThrow();
    }

    public Format scoring() {
        return Format.parse(value(Setting.SCORING)).orElseThrow();
    }

    public int bestOf() {
        return number(Setting.BEST_OF);
    }

    public TiePoints tiePoints() {
        return TiePoints.parse(value(Setting.TIE_POINTS)).orElseThrow();
    }

    public OrderOfStrength orderOfStrength() {
        return OrderOfStrength.parse(value(Setting.ORDER_OF_STRENGTH)).orElseThrow();
    }

    /** Empty where such a tie counts by its rubbers, as any other. */
    public Optional<UnplayedTie> unplayedTie() {
        return UnplayedTie.parse(value(Setting.UNPLAYED_TIE));
    }

    public Withdrawal withdrawal() {
        return Withdrawal.parse(value(Setting.WITHDRAWAL)).orElseThrow();
    }

    public ShortSquad shortSquad() {
        return ShortSquad.parse(value(Setting.SHORT_SQUAD)).orElseThrow();
    }

    public BothShort bothShort() {
        return BothShort.parse(value(Setting.BOTH_SHORT)).orElseThrow();
    }

    public DeciderKind decider() {
        return DeciderKind.parse(value(Setting.DECIDER)).orElseThrow();
    }

    /** A tie whose rubbers end level is parted by a decider. */
    public boolean hasDecider() {
        return decider() != DeciderKind.NONE;
    }

    /** The rubbers of a tie can end level without one of them being void. */
    public boolean canEndLevel() {
        return tieRubbers().canBeLevel();
    }

    /** Deciders are to be reckoned with: ties can end level and are parted then. */
    public boolean expectsDeciders() {
        return hasDecider() && canEndLevel();
    }

    /** A tie can stay drawn without a void rubber. */
    public boolean leavesTiesDrawn() {
        return canEndLevel() && !hasDecider();
    }

    public Format deciderScoring() {
        return Format.parse(value(Setting.DECIDER_SCORING)).orElseThrow();
    }

    /** Minutes after the last card of a level tie by which both decider pairs must be named. */
    public int deciderMinutes() {
        return number(Setting.DECIDER_MINUTES);
    }

    /** Minutes before the published start by which sheets must be sealed. */
    public int sheetDeadlineMinutes() {
        return number(Setting.SHEET_DEADLINE_MINUTES);
    }

    public LateSheet lateSheet() {
        return LateSheet.parse(value(Setting.LATE_SHEET)).orElseThrow();
    }

    public int graceMinutes() {
        return number(Setting.GRACE_MINUTES);
    }

    public StopWhenDecided stopWhenDecided() {
        return StopWhenDecided.parse(value(Setting.STOP_WHEN_DECIDED)).orElseThrow();
    }

    public WalkoverScore walkoverScore() {
        return WalkoverScore.parse(value(Setting.WALKOVER_SCORE)).orElseThrow();
    }

    /** The games that the table holds of a rubber for which one side did not come. */
    public List<Score> walkover(boolean decider, SideNo missing) {
        return walkoverScore().of(decider ? deciderScoring() : scoring(), decider ? 1 : bestOf(), missing);
    }

    public RetirementScore retirementScore() {
        return RetirementScore.parse(value(Setting.RETIREMENT_SCORE)).orElseThrow();
    }

    public Seeding seeding() {
        return Seeding.parse(value(Setting.SEEDING)).orElseThrow();
    }

    public DrawSeparation drawSeparation() {
        return DrawSeparation.parse(value(Setting.DRAW_SEPARATION)).orElseThrow();
    }

    /** One of the four named procedures or steps joined by {@code >}. */
    public String levelTeams() {
        return value(Setting.LEVEL_TEAMS);
    }

    public OvertimePoints overtimePoints() {
        return OvertimePoints.parse(value(Setting.OVERTIME_POINTS)).orElseThrow();
    }

    public int restMinutes() {
        return number(Setting.REST_MINUTES);
    }

    public ClockStarts clockStarts() {
        return ClockStarts.parse(value(Setting.CLOCK_STARTS)).orElseThrow();
    }

    public int lateMinutes() {
        return number(Setting.LATE_MINUTES);
    }

    /** A published start that is nearer than this stays, whatever else is planned anew. */
    public int freezeMinutes() {
        return number(Setting.FREEZE_MINUTES);
    }

    public int medicalMinutes() {
        return number(Setting.MEDICAL_MINUTES);
    }

    /** Minutes after the last card of a pool in which captains can object to its table; 0 = none are promised. */
    public int objectionMinutes() {
        return number(Setting.OBJECTION_MINUTES);
    }

    public LateLoss lateLoss() {
        return LateLoss.parse(value(Setting.LATE_LOSS)).orElseThrow();
    }

    /** Earlier ties that a player of the knockout must have played. */
    public int eligibilityTies() {
        return number(Setting.ELIGIBILITY_TIES);
    }

    private int number(Setting setting) {
        return Integer.parseInt(value(setting));
    }
}
