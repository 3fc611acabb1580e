package tiewright.http.organiser;

import java.util.ArrayList;
import java.util.List;
import tiewright.event.Club;
import tiewright.event.Role;
import tiewright.event.Stage;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.EntryAnswers;
import tiewright.http.views.OrganiserView.Step;
import tiewright.http.visit.Addresses;
import tiewright.http.visit.OpeningWords;
import tiewright.http.visit.Visit;
import tiewright.wording.DeletionWords;

/** The steps from nothing to a published day, in the order in which they are best done, and how each stands. */
final class SetUpSteps {
    private final Visit visit;
    private final VisibleEvent event;
    private final List<Step> toDo = new ArrayList<>();
    private final List<Step> done = new ArrayList<>();

    SetUpSteps(Visit visit) {
        this.visit = visit;
        this.event = visit.event();
        beforeTheDraw();
        fromTheDrawOn();
    }

    /** What is left, first things first. */
    List<Step> toDo() {
        return toDo;
    }

    List<Step> done() {
        return done;
    }

    private void beforeTheDraw() {
        add(
                "event",
                event.about()
                        .map(about -> say(
                                "page-organiser.is.event",
                                "date",
                                visit.words().weekdayAndDate(about.date()),
                                "venue",
                                about.venue(),
                                "starts",
                                about.starts()))
                        .orElse(""),
                "/organiser/event");
        add("help", SafetyInfoPage.stands(visit), "/organiser/help");
        add(
                "conditions",
                event.conditionsVersion() == 0
                        ? ""
                        : say(
                                "page-organiser.is.conditions",
                                "version",
                                event.conditionsVersion(),
                                "preset",
                                event.conditions().base().printed(),
                                "read",
                                read(),
                                "clubs",
                                event.clubs().size()),
                "/organiser/conditions");
        add(
                "courts",
                event.courts().isEmpty()
                        ? ""
                        : say(
                                "page-organiser.is.courts",
                                "count",
                                event.courts().size()),
                "/organiser/courts");
        add("clubs", clubs(), "/organiser/clubs");
        int warnings = visit.ask(EntryAnswers::new).entryWarnings().size();
        if (warnings > 0) {
            toDo.add(step(
                    "warnings",
                    say("page-organiser.warnings", "count", warnings),
                    "/organiser/clubs#part-warnings",
                    ""));
        }
        add("opening", opening(), "/organiser/opening");
    }

    private String opening() {
        return event.opening()
                .map(chosen -> OpeningWords.of(visit.words(), chosen))
                .orElse("");
    }

    private void fromTheDrawOn() {
        boolean drawn = !event.pools().isEmpty();
        add(
                "draw",
                drawn ? say("page-organiser.is.draw", "count", event.pools().size()) : "",
                "/organiser/draw",
                event.clubs().size() < 2 ? "clubs" : "");
        boolean knockout = event.ties().stream().anyMatch(tie -> tie.stage() == Stage.KNOCKOUT);
        if (drawn) {
            Step step = step("knockout", say("page-organiser.needed-only"), "/organiser/knockout", "");
            (knockout ? done : toDo).add(knockout ? change("knockout", knockouts(), "/organiser/knockout") : step);
        }
        boolean timed = !event.ties().isEmpty()
                && event.ties().stream().allMatch(tie -> tie.start().isPresent());
        add("plan", timed ? plan() : "", Addresses.PLAN, drawn ? "" : "draw");
        if (drawn && !timed) {
            toDo.add(step("times", times(), "/organiser/times", ""));
        } else if (timed) {
            add("times", times(), "/organiser/times");
        }
        add(
                "private",
                event.deletion()
                        .promised()
                        .map(one -> DeletionWords.day(one.date()))
                        .orElse(""),
                PrivateDataPage.HERE);
        List<String> without = withoutLink();
        add(
                "links",
                event.clubs().isEmpty() || !without.isEmpty() ? "" : links(),
                "/organiser/links",
                event.clubs().isEmpty() ? "clubs" : "");
    }

    private void add(String key, String stands, String href) {
        add(key, stands, href, "");
    }

    /** Done where it can be said how it stands. */
    private void add(String key, String stands, String href, String waitsFor) {
        if (stands.isEmpty()) {
            toDo.add(step(key, say("page-organiser.because." + key), href, waitsFor));
        } else {
            done.add(change(key, stands, href));
        }
    }

    private Step step(String key, String detail, String href, String waitsFor) {
        return new Step(
                say("page-organiser.do." + key),
                detail,
                href,
                say("page-organiser.press." + key),
                waitsFor.isEmpty() ? "" : say("page-organiser.after." + waitsFor));
    }

    private Step change(String key, String stands, String href) {
        return new Step(say("page-organiser.done." + key), stands, href, say("page-organiser.change"), "");
    }

    private long read() {
        return event.clubs().stream()
                .filter(club -> event.conditionsRead(club.id()) == event.conditionsVersion())
                .count();
    }

    private String clubs() {
        boolean all = event.clubs().size() > 1
                && event.clubs().stream()
                        .noneMatch(club -> event.squad(club.id()).isEmpty());
        return all
                ? say(
                        "page-organiser.is.clubs",
                        "clubs",
                        event.clubs().size(),
                        "players",
                        event.players().size())
                : "";
    }

    private String plan() {
        return event.order()
                .plan()
                .map(plan -> say("page-organiser.is.plan", "version", plan.version(), "notice", plan.notice()))
                .orElseGet(() -> say("page-organiser.is.by-hand"));
    }

    private String times() {
        long timed =
                event.ties().stream().filter(tie -> tie.start().isPresent()).count();
        return say(
                "page-organiser.is.times", "timed", timed, "all", event.ties().size());
    }

    private String knockouts() {
        return say("page-organiser.is.knockout", "count", (int) event.ties().stream()
                .filter((Tie tie) -> tie.stage() == Stage.KNOCKOUT)
                .count());
    }

    private String links() {
        return say("page-organiser.is.links", "count", (int)
                event.links().stream().filter(link -> !link.revoked()).count());
    }

    /** The clubs whose captain has no link that holds. */
    private List<String> withoutLink() {
        return event.clubs().stream()
                .filter(club -> event.links().stream()
                        .noneMatch(link -> !link.revoked()
                                && link.role() == Role.CAPTAIN
                                && link.club().filter(club.id()::equals).isPresent()))
                .map(Club::name)
                .toList();
    }

    private String say(String code, Object... facts) {
        return visit.say(code, facts);
    }
}
