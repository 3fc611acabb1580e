package tiewright.event;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import tiewright.conditions.Conditions;
import tiewright.conditions.Preset;

/**
 * What was published of the event itself: what it is, the conditions it is played by, where help is, when private data go.
 *
 * @param about empty until it is described
 * @param conditionsVersion 0 = none were published: then those of a club day hold
 * @param conditionsRead the last version that each club's captain ticked
 * @param opening how sheets are opened where an organiser is also a captain
 */
public record Prospectus(
        Optional<SetUpFact.EventDescribed> about,
        int conditionsVersion,
        Conditions conditions,
        Map<ClubId, Integer> conditionsRead,
        Optional<SetUpFact.OpeningChosen> opening,
        SetUpFact.SafetyDescribed safety,
        Deletion deletion) {
    static final Prospectus NONE = new Prospectus(
            Optional.empty(),
            0,
            Conditions.of(Preset.CLUB_DAY),
            Map.of(),
            Optional.empty(),
            SetUpFact.SafetyDescribed.NOTHING,
            Deletion.NONE);

    public Prospectus {
        conditionsRead = Frozen.copy(conditionsRead);
    }

    Prospectus with(SetUpFact.EventDescribed fact) {
        return new Prospectus(
                Optional.of(fact), conditionsVersion, conditions, conditionsRead, opening, safety, deletion);
    }

    Prospectus with(SetUpFact.ConditionsPublished fact) {
        return new Prospectus(about, fact.version(), fact.conditions(), conditionsRead, opening, safety, deletion);
    }

    /** An older version ticked late does not take a newer tick away. */
    Prospectus with(SetUpFact.ConditionsRead fact) {
        int last = Math.max(fact.version(), conditionsRead.getOrDefault(fact.club(), 0));
        return new Prospectus(
                about,
                conditionsVersion,
                conditions,
                Frozen.with(conditionsRead, fact.club(), last),
                opening,
                safety,
                deletion);
    }

    Prospectus with(SetUpFact.OpeningChosen fact) {
        return new Prospectus(
                about, conditionsVersion, conditions, conditionsRead, Optional.of(fact), safety, deletion);
    }

    Prospectus with(SetUpFact.SafetyDescribed fact) {
        return new Prospectus(about, conditionsVersion, conditions, conditionsRead, opening, fact, deletion);
    }

    Prospectus with(SetUpFact.DeletionDated fact) {
        return with(deletion.dated(fact));
    }

    Prospectus erased(Instant at) {
        return with(deletion.erased(at));
    }

    private Prospectus with(Deletion now) {
        return new Prospectus(about, conditionsVersion, conditions, conditionsRead, opening, safety, now);
    }
}
