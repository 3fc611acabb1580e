package tiewright.film;

import java.util.Optional;
import tiewright.event.PlayerId;

/**
 * What may be noted of a rally besides its ending; empty is not noted, which is unknown and never nothing.
 *
 * @param where the last ball went: net, long, wide, fault, serve (the serve was missed), return (the return was missed)
 * @param serve deep, short or other
 * @param returned deep or short
 * @param third soft, hard, lob, or none where the rally ended before
 * @param thirdTo who received the third ball
 * @param signal of the receiving pair before the serve: stay, switch, crossed
 * @param call somebody called out
 * @param callEnd accepted, questioned, withdrawn
 * @param mark such as time-out, stop, strain
 * @param filmTime where the rally begins on the film
 */
public record Detail(
        Optional<String> where,
        Optional<String> serve,
        Optional<String> returned,
        Optional<String> third,
        Optional<PlayerId> thirdTo,
        Optional<String> signal,
        Optional<String> call,
        Optional<PlayerId> callBy,
        Optional<String> callEnd,
        Optional<String> mark,
        Optional<String> filmTime) {
    public static final Detail NONE = new Detail(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
}
