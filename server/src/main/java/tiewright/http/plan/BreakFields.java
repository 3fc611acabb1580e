package tiewright.http.plan;

import java.time.Duration;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import tiewright.event.ClubId;
import tiewright.event.Court;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.ChoiceList;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.HiddenField;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.TextField;
import tiewright.http.visit.Fields;
import tiewright.http.visit.TextOrder;
import tiewright.http.visit.Tried;
import tiewright.timetable.Pace;
import tiewright.wording.Words;

/** What is asked about something that went wrong: only what its kind needs, and the rest behind a fold. */
final class BreakFields {
    /** How long play stands still before anybody knows better. Our own guess, to be typed over. */
    private static final Duration A_SHOWER = Duration.ofMinutes(30);

    private final VisibleEvent event;
    private final Words words;
    private final Fields fields;
    private final Tried tried;
    private final BreakAsk.What what;
    private final Before before;
    private final Optional<BreakAsk> last;

    /**
     * What was asked before.
     *
     * @param last the last break: what is its own stands there again if it was of the same kind
     * @param pace of the last break, else of the last plan
     * @param slotMinutes of the last break, else of the plan that is published
     */
    record Before(Optional<BreakAsk> last, Pace pace, OptionalInt slotMinutes) {
        static Before of(Planning planning, VisibleEvent event) {
            Optional<BreakAsk> last = planning.replan().map(Planning.Search::asked);
            Optional<PlanAsk> plan = planning.plan().map(Planning.Search::asked);
            Pace pace =
                    last.map(BreakAsk::pace).or(() -> plan.map(PlanAsk::pace)).orElse(Pace.USUAL);
            OptionalInt published = event.order()
                    .plan()
                    .map(one -> OptionalInt.of(one.slotMinutes()))
                    .orElse(OptionalInt.empty());
            return new Before(last, pace, last.map(BreakAsk::slotMinutes).orElse(published));
        }
    }

    BreakFields(VisibleEvent event, Tried tried, BreakAsk.What what, Before before) {
        this.event = event;
        this.words = Words.of(event);
        this.fields = Fields.of(BreaksPage.LOOK, tried);
        this.tried = tried;
        this.what = what;
        this.before = before;
        this.last = before.last().filter(ask -> ask.what() == what);
    }

    List<FormField> asked() {
        List<FormField> all = new ArrayList<>(List.of(new HiddenField("what", what.code())));
        switch (what) {
            case COURT -> all.add(lost());
            case STOP ->
                all.add(fields.time(
                                "stopped",
                                words.say("page-plan.play-stopped-at"),
                                last.map(BreakAsk::stopped).orElse(Optional.of(now())))
                        .mustBeFilled()
                        .withHint(words.say("page-plan.for-a-stop-after-up")));
            case LATE -> {
                all.add(club());
                all.add(time("ready", "page-plan.it-is-ready-at", BreakAsk::ready));
            }
            case CLOSING -> all.add(time("closes", "page-plan.the-venue-closes-at", BreakAsk::closes));
            case INJURY -> {}
        }
        all.add(from());
        return all;
    }

    private FormField from() {
        return fields.time(
                        "from",
                        words.say("page-plan.play-goes-on-from"),
                        last.map(BreakAsk::from).or(() -> Optional.of(goesOn())))
                .withHint(words.say(
                        what == BreakAsk.What.STOP ? "page-plan.a-guess-is-enough" : "page-plan.now-or-later",
                        "freezeMinutes",
                        event.conditions().freezeMinutes()));
    }

    List<FormField> more() {
        List<FormField> all = new ArrayList<>(List.of(PlanAsk.earlierField(
                fields, event, last.filter(BreakAsk::earlier).isPresent())));
        all.addAll(PlanAsk.paceFields(words, fields, before.pace()));
        all.add(fields.number("slot", words.say("page-plan.minutes-from-one-rubber-to"), before.slotMinutes())
                .withHint(words.say("page-plan.empty-play-by-the-conditions")));
        all.add(fields.text(
                "seed",
                TextField.Kind.LINE,
                words.say("page-plan.seed-a-number-or-any"),
                Long.toString(last.map(BreakAsk::seed).orElse(1L))));
        return all;
    }

    private LocalTime now() {
        return event.clock(event.now());
    }

    /** When play goes on, before anybody has said so: at once, but for a stop that has just begun. */
    private LocalTime goesOn() {
        LocalTime later = now().plus(A_SHOWER);
        return what == BreakAsk.What.STOP && later.isAfter(now()) ? later : now();
    }

    private TextField time(String id, String label, Function<BreakAsk, Optional<LocalTime>> stood) {
        return fields.time(id, words.say(label), last.flatMap(stood)).mustBeFilled();
    }

    private FormField club() {
        return fields.select(
                "club",
                words.say("page-plan.the-club-that-is-late"),
                words.say("page-plan.no-club"),
                last.flatMap(BreakAsk::club).map(ClubId::code).orElse(""),
                event.clubs().stream()
                        .map(club -> Option.of(club.id().code(), club.name(), false))
                        .toList());
    }

    private FormField lost() {
        Tried own = tried.typed().text(Fields.FORM).equals(BreaksPage.LOOK) ? tried : Tried.NOTHING;
        List<Option> courts = event.courts().stream()
                .filter(Court::usable)
                .map(Court::name)
                .sorted(TextOrder.NUMBERS_BY_VALUE)
                .map(name -> Option.of(
                        name,
                        words.say("page-plan.court", "value", name),
                        own.isChosen(
                                "lost",
                                name,
                                last.filter(ask -> ask.lost().contains(name)).isPresent())))
                .toList();
        return new ChoiceList(
                "lost", words.say("page-plan.courts-that-cannot-be-used"), "", own.error("lost"), true, courts);
    }
}
