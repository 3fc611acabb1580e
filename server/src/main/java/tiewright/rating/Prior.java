package tiewright.rating;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;

/**
 * What is believed of players and pairs before any game is counted: the captains' own ratings, and for everybody else an
 * even game with wide doubt.
 *
 * @param forms players that somebody has rated
 * @param extras pairs that somebody has rated: what they win together beyond the mean of their forms
 */
public record Prior(Map<PlayerId, Estimate> forms, Map<Pair, Estimate> extras) {
    /** Doubt of a captain's rating of a player when the captain gives none (assumption of ours, no source). */
    public static final double RATED_FORM_SD = 4;

    /** A player that nobody has rated (assumption of ours, no source). */
    public static final Estimate UNRATED_FORM = Estimate.of(0, 6);

    /** Chemistry is small: three rallies in a hundred is already much (common practice, no source). */
    public static final double EXTRA_SD = 3;

    /**
     * What serving is worth, in rallies won per 100 beyond the usual rate of {@link RallyModel}: the serving side wins 39 to 55
     * of 100 in nineteen of twenty places to play (assumption of ours, no source). Film narrows it.
     */
    static final Estimate SERVE = Estimate.of(0, 4);

    private static final Estimate UNRATED_EXTRA = Estimate.of(0, EXTRA_SD);

    public Prior {
        forms = Map.copyOf(forms);
        extras = Map.copyOf(extras);
    }

    /** What captains noted; a later note about the same replaces an earlier one, notes about anything else are passed over. */
    public static Prior of(Collection<? extends PrivateNote> notes) {
        Map<PlayerId, Estimate> forms = new HashMap<>();
        Map<Pair, Estimate> extras = new HashMap<>();
        for (PrivateNote note : notes) {
            if (note instanceof PrivateNote.FormJudged form) {
                forms.put(form.player(), form(form.form(), form.sd()));
            } else if (note instanceof PrivateNote.ChemistryJudged chemistry) {
                extras.put(chemistry.pair(), extra(chemistry.extra(), chemistry.sd()));
            }
        }
        return new Prior(forms, extras);
    }

    public static Prior none() {
        return new Prior(Map.of(), Map.of());
    }

    /** The rating of a player as a captain writes it down; what is not given takes the values above. */
    public static Estimate form(OptionalDouble form, OptionalDouble sd) {
        if (form.isEmpty()) {
            return Estimate.of(0, sd.orElse(UNRATED_FORM.sd()));
        }
        return Estimate.of(form.getAsDouble(), sd.orElse(RATED_FORM_SD));
    }

    /** The rating of a pair as a captain writes it down. */
    public static Estimate extra(double extra, OptionalDouble sd) {
        return Estimate.of(extra, sd.orElse(EXTRA_SD));
    }

    Estimate form(PlayerId player) {
        return forms.getOrDefault(player, UNRATED_FORM);
    }

    Estimate extra(Pair pair) {
        return extras.getOrDefault(pair, UNRATED_EXTRA);
    }
}
