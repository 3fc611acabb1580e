package tiewright.lineup.tie;

import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;

/** The name and the weight of every constraint on a sheet: first what must hold, then the aim, then promises, then learning. */
final class LineupWeights {
    static final String TOO_OFTEN = "A player in more rubbers than the conditions allow";
    static final String BESIDE_THEMSELVES = "A player in both seats of a rubber";
    static final String ABSENT = "A player who is not present";
    static final String WRONG_KIND = "A pair in a rubber that is not for these two";
    static final String APART = "Two players together who are to stay apart";
    static final String TOGETHER = "One of two players without the other";
    static final String MUST_PLAY = "A player left out who must play";
    static final String MUST_REST = "A player named who must rest";
    static final String ORDER = "Two pairs against the order of strength";
    static final String GAP = "A rubber filled below an empty seat";
    static final String HALF = "A rubber with one player only";
    static final String NOT_FULL = "A rubber empty that the squad could fill";
    static final String TIE_CHANCE = "What the captain wants of the tie";
    static final String PROMISE = "Promised rubbers that are left unkept";

    static final String LEARNING = "What the tie would teach";

    /** One breach of the conditions or of a wish. */
    static final HardMediumSoftLongScore BREACH = HardMediumSoftLongScore.ONE_HARD;

    /** A billionth of the aim. */
    static final HardMediumSoftLongScore BILLIONTH = HardMediumSoftLongScore.ONE_MEDIUM;

    /** A rubber that somebody was promised. */
    static final HardMediumSoftLongScore RUBBER = HardMediumSoftLongScore.ofSoft(1_000_000);

    /** A thousandth of a bit: no sheet teaches a thousand bits, so that promises always come first. */
    static final HardMediumSoftLongScore BIT_THOUSANDTH = HardMediumSoftLongScore.ONE_SOFT;

    private LineupWeights() {}
}
