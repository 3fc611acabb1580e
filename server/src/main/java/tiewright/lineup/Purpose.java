package tiewright.lineup;

/**
 * What the captain asks of a sheet beyond its wishes, in order: the aim; then playing time; then, if wanted, what the tie
 * would teach of pairs that nobody knows well.
 */
public record Purpose(Aim aim, PlayingTime playingTime, boolean learning) {
    public static final Purpose WIN = new Purpose(Aim.WIN, PlayingTime.NOTHING_PROMISED, false);
}
