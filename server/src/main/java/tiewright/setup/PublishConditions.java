package tiewright.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import tiewright.conditions.Conditions;
import tiewright.conditions.Setting;
import tiewright.conditions.SettingFault;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.FactKind;
import tiewright.event.OfficialFact;
import tiewright.event.Refusal;
import tiewright.event.Saying;
import tiewright.event.SetUpFact;

/**
 * Puts the conditions of play in force, each time under the next version. Free until the first sheet is sealed; then only
 * with a reason and a name, which become a numbered ruling and a notice.
 */
public record PublishConditions(Conditions conditions, Optional<SignedReason> ruling) implements Decision {
    @Override
    public Outcome decide(Event event, Given given) {
        boolean first = event.conditionsVersion() == 0;
        Conditions before = event.conditions();
        boolean rubbersInPlay = !conditions.tieRubbers().equals(before.tieRubbers()) && !first && isAnythingOpen(event);
        Checks checks = Checks.byOrganiser(given)
                .refuseIf(
                        !first && conditions.equals(before),
                        Refusal.of("setup.conditions-unchanged").with("version", event.conditionsVersion()))
                .refuseIf(
                        event.isFrozen() && ruling.isEmpty(),
                        Refusal.of("setup.conditions-frozen").at("ruling"))
                .refuseIf(rubbersInPlay, Refusal.of("setup.rubbers-in-play").at(Setting.RUBBERS.code()))
                .refuseAll(conditions.clashes().stream()
                        .map(PublishConditions::refusal)
                        .toList());
        ruling.ifPresent(signed -> checks.reason("reason", signed.reason()).line("by", signed.by()));
        return checks.then(() -> facts(event));
    }

    private static Refusal refusal(SettingFault clash) {
        boolean heat = clash.kind() == SettingFault.Kind.STOP_BELOW_CAUTION;
        String least = clash.allowed().get(0);
        return heat
                ? Refusal.of("setup.heat-stop-below-caution")
                        .with("stop", clash.value())
                        .with("caution", least)
                        .at(clash.setting())
                : Refusal.of(
                                clash.kind() == SettingFault.Kind.KINDS_FOR_OTHER_RUBBERS
                                        ? "setup.kinds-for-other-rubbers"
                                        : "setup.weights-for-other-rubbers")
                        .with("given", least)
                        .with("rubbers", clash.allowed().get(1))
                        .at(clash.setting());
    }

    /** A sheet that was sealed or ruled for so many rubbers, or a card. */
    private static boolean isAnythingOpen(Event event) {
        return event.ties().values().stream().anyMatch(event::hasBegun);
    }

    private List<Fact> facts(Event event) {
        int version = event.conditionsVersion() + 1;
        List<Fact> facts = new ArrayList<>();
        ruling.ifPresent(signed -> facts.add(new OfficialFact.RulingStated(
                Notices.nextRuling(event),
                Saying.of("notices.the-conditions"),
                Saying.of("notices.version-holds").with("version", version),
                Plain.of(signed.reason()),
                Plain.of(signed.by()))));
        OptionalInt number = ruling.isPresent() ? OptionalInt.of(Notices.nextRuling(event)) : OptionalInt.empty();
        facts.add(new SetUpFact.ConditionsPublished(version, conditions, number));
        ruling.ifPresent(signed -> facts.add(new OfficialFact.NoticeStated(
                Notices.nextNotice(event),
                Saying.of("notices.conditions").with("version", version),
                Optional.empty(),
                Optional.of(values(event, event.conditions())),
                Optional.of(values(event, conditions)),
                Saying.typed(Plain.of(signed.reason())))));
        return facts;
    }

    private Saying values(Event event, Conditions which) {
        List<Saying> values = Stream.of(Setting.values())
                .filter(setting ->
                        !conditions.value(setting).equals(event.conditions().value(setting)))
                .map(setting -> Saying.of("notices.value")
                        .with("setting", setting.code())
                        .with("called", setting.code().replace('_', ' '))
                        .with("value", which.value(setting)))
                .toList();
        return Saying.of("notices.values").with("values", values);
    }

    /** A form made from one version never replaces the next unseen. */
    @Override
    public boolean isStaledBy(Fact fact) {
        return fact.kind() == FactKind.CONDITIONS_PUBLISHED;
    }
}
