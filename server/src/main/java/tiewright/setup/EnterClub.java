package tiewright.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import tiewright.event.Club;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.Refusal;
import tiewright.event.SameName;
import tiewright.event.Saying;
import tiewright.event.SetUpFact;

/**
 * Enters a club, or alters the one that has this code. After the first sealed sheet no club is added, and a change of a name
 * is a numbered notice.
 */
public record EnterClub(ClubId club, String name, Optional<String> town, OptionalInt seed) implements Decision {
    private static final int LAST_SEED = 64;

    @Override
    public Outcome decide(Event event, Given given) {
        Optional<Club> before = event.club(club);

        Checks checks = ofItself(event, given);
        event.clubs().values().stream()
                .filter(other -> !other.id().equals(club))
                .forEach(other -> beside(checks, other, before.isEmpty()));
        return checks.then(() -> facts(event, before));
    }

    private void beside(Checks checks, Club other, boolean isNew) {
        checks.refuseIf(
                        isNew && likeCode(other),
                        Refusal.of("setup.code-taken").with("club", other.id()).at("club"))
                .refuseIf(
                        SameName.of(name).is(SameName.of(other.name())),
                        Refusal.of("setup.club-name-taken")
                                .with("code", other.id().code())
                                .at("name"))
                .refuseIf(
                        seed.isPresent() && seed.equals(other.seed()),
                        Refusal.of("setup.seed-taken")
                                .with("seed", seed.orElse(0))
                                .with("club", other.id())
                                .at("seed"));
    }

    private Checks ofItself(Event event, Given given) {
        boolean isNew = event.club(club).isEmpty();
        boolean seedWrong = seed.isPresent() && (seed.getAsInt() < 1 || seed.getAsInt() > LAST_SEED);
        return Checks.byOrganiser(given)
                .line("name", name)
                .line("town", town)
                .refuseIf(
                        seedWrong,
                        Refusal.of("setup.not-a-seed").with("most", LAST_SEED).at("seed"))
                .refuseIf(
                        isNew && !ClubId.isFit(club.code()),
                        Refusal.of("setup.not-a-club-code")
                                .with("code", club.code())
                                .at("club"))
                .refuseIf(
                        event.isFrozen() && isNew,
                        Refusal.of("setup.entries-closed").at("club"));
    }

    private boolean likeCode(Club other) {
        return other.id().code().equalsIgnoreCase(club.code());
    }

    private List<Fact> facts(Event event, Optional<Club> before) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new SetUpFact.ClubEntered(club, Plain.of(name), Plain.of(town), seed));
        before.filter(old -> event.isFrozen() && !old.name().equals(Plain.of(name)))
                .ifPresent(old -> facts.add(Notices.changed(
                        event,
                        Saying.of("notices.club-name").with("club", club),
                        Saying.typed(old.name()),
                        Saying.typed(Plain.of(name)))));
        return facts;
    }

    /** The same club as somebody else entered meanwhile. */
    @Override
    public boolean isStaledBy(Fact fact) {
        return fact instanceof SetUpFact.ClubEntered other && other.club().equals(club);
    }
}
