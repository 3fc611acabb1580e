package tiewright.rating;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;

/**
 * What is believed of players and pairs before any game is counted: the captains' own ratings, and for everybody else an
 * even game with wide doubt.
 *
 * @param forms players that somebody has rated
 * @param extras pairs that somebody has rated: what they win together beyond the mean of their forms
 * @param guesses the same without a doubt stated: it is then that of any pair
 */
public record Prior(Map<PlayerId, Estimate> forms, Map<Pair, Estimate> extras, Map<Pair, Double> guesses) {
    /** Doubt of a captain's rating of a player when the captain gives none (assumption of ours, no source). */
    public static final double RATED_FORM_SD = 4;

    /**
     * What serving is worth, in rallies won per 100 beyond the usual rate of {@link RallyModel}: the serving side wins 39 to 55
     * of 100 in nineteen of twenty places to play (assumption of ours, no source). Film narrows it.
     */
    static final Estimate SERVE = Estimate.of(0, 4);

    public Prior {
        forms = Map.copyOf(forms);
        extras = Map.copyOf(extras);
        guesses = Map.copyOf(guesses);
    }

    /** With a doubt for every rating. */
    public Prior(Map<PlayerId, Estimate> forms, Map<Pair, Estimate> extras) {
        this(forms, extras, Map.of());
    }

    /** What captains noted; a later note about the same replaces an earlier one, notes about anything else are passed over. */
    public static Prior of(Collection<? extends PrivateNote> notes) {
        Map<PlayerId, Estimate> forms = new HashMap<>();
        Map<Pair, PrivateNote.ChemistryJudged> pairs = new HashMap<>();
        for (PrivateNote note : notes) {
            if (note instanceof PrivateNote.FormJudged form) {
                form(form).ifPresentOrElse(given -> forms.put(form.player(), given), () -> forms.remove(form.player()));
            } else if (note instanceof PrivateNote.ChemistryJudged chemistry) {
                pairs.put(chemistry.pair(), chemistry);
            }
        }
        return of(forms, pairs.values());
    }

    /** Forms as they were rated, and pairs as a captain wrote them down. */
    public static Prior of(Map<PlayerId, Estimate> forms, Collection<PrivateNote.ChemistryJudged> pairs) {
        Map<Pair, Estimate> extras = new HashMap<>();
        Map<Pair, Double> guesses = new HashMap<>();
        for (PrivateNote.ChemistryJudged judged : pairs) {
            if (judged.sd().isPresent()) {
                extras.put(
                        judged.pair(), Estimate.of(judged.extra(), judged.sd().getAsDouble()));
            } else {
                guesses.put(judged.pair(), judged.extra());
            }
        }
        return new Prior(forms, extras, guesses);
    }

    public static Prior none() {
        return new Prior(Map.of(), Map.of());
    }

    /** The rating of a player as a captain writes it down; empty where neither form nor doubt is. */
    public static Optional<Estimate> form(PrivateNote.FormJudged note) {
        return note.form().isEmpty() && note.sd().isEmpty()
                ? Optional.empty()
                : Optional.of(Estimate.of(note.form().orElse(0), note.sd().orElse(RATED_FORM_SD)));
    }

    /** Pairs that somebody has rated, with a doubt or without. */
    public Set<Pair> pairs() {
        Set<Pair> pairs = new HashSet<>(extras.keySet());
        pairs.addAll(guesses.keySet());
        return pairs;
    }

    boolean isRated(PlayerId player) {
        return forms.containsKey(player);
    }

    /** @param spread of players that nobody has rated */
    Estimate form(PlayerId player, double spread) {
        return forms.getOrDefault(player, Estimate.of(0, spread));
    }

    /** @param spread of pairs whose doubt nobody has stated */
    Estimate extra(Pair pair, double spread) {
        return extras.getOrDefault(pair, Estimate.of(guesses.getOrDefault(pair, 0.0), spread));
    }
}
