package tiewright.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import tiewright.draw.DrawFault;
import tiewright.draw.KnockoutDraw;
import tiewright.draw.KnockoutResult;
import tiewright.draw.PlannedTie;
import tiewright.event.ClubId;
import tiewright.event.DrawFact;
import tiewright.event.Event;
import tiewright.event.ExchangeId;
import tiewright.event.Fact;
import tiewright.event.OfficialFact;
import tiewright.event.Refusal;
import tiewright.event.Saying;
import tiewright.event.Side;
import tiewright.event.Slot;
import tiewright.event.SlotSource;
import tiewright.event.Stage;
import tiewright.event.Tie;
import tiewright.event.TieId;

/** What both draws share: when it is too late, what a fault is called, and the knockout as facts. */
final class Draws {
    private Draws() {}

    /** The first tie of this stage for which a sheet was ever sealed or ruled, or a card written. */
    static Optional<TieId> begun(Event event, Stage stage) {
        return event.ties().values().stream()
                .filter(tie -> tie.stage() == stage)
                .filter(tie -> tie.isUnderWay()
                        || Stream.of(ExchangeId.sheets(tie.id()), ExchangeId.decider(tie.id()))
                                .anyMatch(id -> event.exchange(id).wasEverBegun()))
                .map(Tie::id)
                .findFirst();
    }

    /** {@code draw.pool-too-small} and so on, beside the field that it is about. */
    static Refusal refusal(DrawFault fault) {
        Refusal refusal = Refusal.of(
                        "draw." + fault.code().name().toLowerCase(Locale.ROOT).replace('_', '-'))
                .with("given", fault.given())
                .with("limit", fault.limit())
                .with("subject", fault.subject());
        return switch (fault.code()) {
            case NO_SPOKEN_SEED -> refusal.at("spokenSeed");
            case CLUB_TWICE, SEED_TWICE, SEED_BELOW_ONE -> refusal.with("club", ClubId.of(fault.subject()));
            case NO_POOL, TOO_MANY_POOLS, POOL_TOO_SMALL, POOL_TOO_LARGE -> refusal.at("pools");
            case POOL_TWICE, NOT_A_POOL_NAME -> refusal;
            case NO_QUALIFIER, TOO_MANY_FROM_A_POOL, TOO_FEW_QUALIFIERS, TOO_MANY_QUALIFIERS ->
                refusal.at("fromEachPool");
            case TOO_MANY_CASES -> refusal;
        };
    }

    /** The knockout laid out over these pools, or every reason why not. */
    record LaidOut(List<Fact> facts, List<Refusal> refusals) {}

    /**
     * What is wished of a knockout.
     *
     * @param fromEach how many of each pool go on
     * @param spokenSeed the words spoken in public, from which its lots come
     */
    record KnockoutWish(int fromEach, boolean thirdPlace, String spokenSeed, String witness) {}

    /** @param poolTies the ties that will stand beside those of the knockout */
    static LaidOut knockout(Event event, Map<String, List<ClubId>> pools, KnockoutWish wish, List<TieId> poolTies) {
        List<Refusal> refusals = new ArrayList<>(tooFew(pools, wish.fromEach()));
        KnockoutDraw.Shape shape = new KnockoutDraw.Shape(
                List.copyOf(pools.keySet()), wish.fromEach(), event.conditions().seeding(), wish.thirdPlace());
        KnockoutResult result = KnockoutDraw.draw(shape, wish.spokenSeed());
        if (result instanceof KnockoutResult.Refused refused) {
            refused.faults().forEach(fault -> refusals.add(refusal(fault)));
            return new LaidOut(List.of(), refusals);
        }
        List<PlannedTie> ties = ((KnockoutResult.Planned) result).plan().ties();
        ties.stream()
                .map(PlannedTie::tie)
                .filter(poolTies::contains)
                .forEach(tie -> refusals.add(Refusal.of("setup.tie-code-taken").with("tie", tie)));
        List<Fact> facts = new ArrayList<>();
        facts.add(new DrawFact.KnockoutDrawn(Plain.of(wish.spokenSeed()), Plain.of(wish.witness())));
        ties.forEach(tie -> facts.add(new DrawFact.TieArranged(
                tie.tie(),
                Stage.KNOCKOUT,
                Optional.empty(),
                tie.round(),
                Slot.from(tie.homeFrom()),
                Slot.from(tie.awayFrom()))));
        return new LaidOut(facts, refusals);
    }

    private static List<Refusal> tooFew(Map<String, List<ClubId>> pools, int fromEach) {
        List<Refusal> refusals = new ArrayList<>();
        pools.forEach((pool, clubs) -> {
            if (clubs.size() < fromEach) {
                refusals.add(Refusal.of("setup.pool-has-too-few")
                        .with("pool", pool)
                        .with("clubs", clubs.size())
                        .with("fromEach", fromEach)
                        .at("fromEachPool"));
            }
        });
        return refusals;
    }

    static boolean has(Event event, Stage stage) {
        return event.ties().values().stream().anyMatch(tie -> tie.stage() == stage);
    }

    /** How many of each pool the knockout that stands takes; 0 where none was laid out. */
    static int fromEach(Event event) {
        return sources(event)
                .filter(source -> source.kind() == SlotSource.Kind.POOL_PLACE)
                .mapToInt(SlotSource::place)
                .max()
                .orElse(0);
    }

    static boolean hasThirdPlace(Event event) {
        return sources(event).anyMatch(source -> source.kind() == SlotSource.Kind.LOSER);
    }

    private static Stream<SlotSource> sources(Event event) {
        return event.ties().values().stream()
                .filter(tie -> tie.stage() == Stage.KNOCKOUT)
                .flatMap(tie -> Stream.of(Side.values()).map(tie::slot))
                .flatMap(slot -> slot.from().stream());
    }

    static OfficialFact.NoticeStated redrawn(Event event, Saying what, String witness) {
        return Notices.because(event, what, Saying.of("notices.drawn-again").with("witness", Plain.of(witness)));
    }
}
