package tiewright.event;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import tiewright.event.PrivateNote.FilmKept;

/** What a club has noted, as tests of private decisions need it, and who asks. */
public final class Notes {
    private Notes() {}

    public static Noted nothing(String club) {
        return new Noted(
                ClubId.of(club),
                new ClubNotes(Map.of(), Map.of(), Map.of(), Map.of(), OptionalInt.empty()),
                List.of(),
                List.of(),
                Set.of());
    }

    public static Noted games(String club, KeptGame... games) {
        Noted nothing = nothing(club);
        return new Noted(nothing.club(), nothing.notes(), List.of(), List.of(games), Set.of());
    }

    public static Noted films(String club, String... games) {
        Noted nothing = nothing(club);
        List<FilmKept> films = Arrays.stream(games)
                .map(game -> new FilmKept(nothing.club(), game, "about", "rallies"))
                .toList();
        return new Noted(nothing.club(), nothing.notes(), films, List.of(), Set.of());
    }

    public static Noted of(String club, PrivateNote... notes) {
        Noted nothing = nothing(club);
        Map<PlayerId, PrivateNote.FormJudged> forms = new HashMap<>();
        Map<TieId, PrivateNote.TieWish> wishes = new HashMap<>();
        for (PrivateNote note : notes) {
            if (note instanceof PrivateNote.FormJudged form) {
                forms.put(form.player(), form);
            } else {
                PrivateNote.TieWish wish = (PrivateNote.TieWish) note;
                wishes.put(wish.tie(), wish);
            }
        }
        return new Noted(
                nothing.club(),
                new ClubNotes(forms, Map.of(), wishes, Map.of(), OptionalInt.empty()),
                List.of(),
                List.of(),
                Set.of());
    }

    public static Actor captain(String club) {
        return new Actor(Role.CAPTAIN, Optional.of(ClubId.of(club)), "captain " + club, "phone");
    }

    /** Codes of the reasons; none if it is kept. */
    public static List<String> refused(PrivateDecision.Outcome outcome) {
        return outcome instanceof PrivateDecision.Refused refused
                ? refused.reasons().stream().map(Refusal::code).toList()
                : List.of();
    }

    /** What is kept; nothing if it is refused. */
    public static List<PrivateNote> kept(PrivateDecision.Outcome outcome) {
        return outcome instanceof PrivateDecision.Kept kept ? kept.notes() : List.of();
    }
}
