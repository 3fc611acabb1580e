package tiewright.event;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** Gathers the reasons against a private decision, so that all of them are told at once. */
public final class NoteChecks {
    private final Event event;
    private final ClubId club;
    private final List<Refusal> reasons = new ArrayList<>();

    private NoteChecks(Event event, ClubId club) {
        this.event = event;
        this.club = club;
    }

    /** What only a captain of the club notes. */
    public static NoteChecks byCaptain(Event event, Noted noted, Actor by) {
        return of(event, noted).refuseIf(!isCaptain(noted.club(), by), Refusal.of("notes.captain-only"));
    }

    /** What a captain of the club notes, or an official for it. */
    public static NoteChecks byCaptainOrOfficial(Event event, Noted noted, Actor by) {
        return of(event, noted)
                .refuseIf(!isCaptain(noted.club(), by) && !by.role().isOfficial(), Refusal.of("notes.captain-only"));
    }

    /** What the service notes for the club by itself. */
    public static NoteChecks of(Event event, Noted noted) {
        return new NoteChecks(event, noted.club())
                .refuseIf(
                        event.club(noted.club()).isEmpty(),
                        Refusal.of("notes.club-gone").with("club", noted.club()));
    }

    private static boolean isCaptain(ClubId club, Actor by) {
        return by.role() == Role.CAPTAIN && by.club().filter(club::equals).isPresent();
    }

    /** @param field the form field that named the player */
    public NoteChecks ownPlayer(PlayerId player, String field) {
        boolean own =
                event.player(player).filter(one -> one.club().equals(club)).isPresent();
        return refuseIf(
                !own,
                Refusal.of("notes.not-own-player")
                        .with("player", player)
                        .with("club", club)
                        .at(field));
    }

    public NoteChecks ownTie(TieId tie) {
        return refuseIf(
                event.tie(tie).filter(one -> one.has(club)).isEmpty(),
                Refusal.of("notes.not-own-tie").with("tie", tie).with("club", club));
    }

    public NoteChecks refuseIf(boolean wrong, Refusal reason) {
        if (wrong) {
            reasons.add(reason);
        }
        return this;
    }

    /** Kept if nothing speaks against it. */
    public PrivateDecision.Outcome kept(Supplier<List<? extends PrivateNote>> notes) {
        return reasons.isEmpty()
                ? new PrivateDecision.Kept(List.copyOf(notes.get()))
                : new PrivateDecision.Refused(reasons);
    }
}
