package tiewright.plainfiles;

import java.util.Collection;
import java.util.List;
import tiewright.event.PrivateNote;

/** What a club noted about the own squad, as an export with that club's link adds it; nobody else's export has it. */
public record OwnNotes(
        List<PrivateNote.FormJudged> forms,
        List<PrivateNote.ChemistryJudged> chemistry,
        List<PrivateNote.RubbersPromised> promises,
        List<PrivateNote.FilmKept> films,
        List<PrivateNote.PastGame> games) {
    /** A plain export. */
    public static final OwnNotes NONE = new OwnNotes(List.of(), List.of(), List.of(), List.of(), List.of());

    public OwnNotes {
        forms = List.copyOf(forms);
        chemistry = List.copyOf(chemistry);
        promises = List.copyOf(promises);
        films = List.copyOf(films);
        games = List.copyOf(games);
    }

    public static OwnNotes of(
            Collection<PrivateNote.FormJudged> forms, Collection<PrivateNote.ChemistryJudged> chemistry) {
        return new OwnNotes(List.copyOf(forms), List.copyOf(chemistry), List.of(), List.of(), List.of());
    }

    /** With the playing time that the captain promised. */
    public OwnNotes promising(Collection<PrivateNote.RubbersPromised> promised) {
        return new OwnNotes(forms, chemistry, List.copyOf(promised), films, games);
    }

    /** With what the club noted from film. */
    public OwnNotes filmed(Collection<PrivateNote.FilmKept> kept) {
        return new OwnNotes(forms, chemistry, promises, List.copyOf(kept), games);
    }

    /** With the earlier games that the club keeps for itself. */
    public OwnNotes played(Collection<PrivateNote.PastGame> kept) {
        return new OwnNotes(forms, chemistry, promises, films, List.copyOf(kept));
    }
}
