package tiewright.event;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import tiewright.event.PrivateNote.ChemistryJudged;
import tiewright.event.PrivateNote.FormJudged;
import tiewright.event.PrivateNote.RubbersPromised;
import tiewright.event.PrivateNote.TieWish;

/**
 * What a club's captain noted about the own squad; for nobody else. In code order.
 *
 * @param halfLife days after which a game counts half in the own ratings
 */
public record ClubNotes(
        Map<PlayerId, FormJudged> forms,
        Map<Pair, ChemistryJudged> chemistry,
        Map<TieId, TieWish> tieWishes,
        Map<PlayerId, RubbersPromised> promises,
        OptionalInt halfLife) {
    public ClubNotes {
        forms = Collections.unmodifiableMap(new TreeMap<>(forms));
        chemistry = Collections.unmodifiableMap(new TreeMap<>(chemistry));
        tieWishes = Collections.unmodifiableMap(new TreeMap<>(tieWishes));
        promises = Collections.unmodifiableMap(new TreeMap<>(promises));
    }

    /** Everything that advice to the captain is made from. */
    public List<PrivateNote> all(ClubId club) {
        List<PrivateNote> all = new ArrayList<>(forms.values());
        all.addAll(chemistry.values());
        all.addAll(tieWishes.values());
        all.addAll(promises.values());
        all.add(new PrivateNote.HalfLifeChosen(club, halfLife));
        return all;
    }
}
